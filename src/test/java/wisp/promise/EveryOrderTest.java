package wisp.promise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wisp.backup.Backup;
import wisp.backup.Restore;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.cohort.SameCohort;
import wisp.event.CanonicalJson;
import wisp.event.Weighed;
import wisp.log.HashChain;
import wisp.log.MemoryLog;
import wisp.log.StoredEvent;
import wisp.records.Records;
import wisp.testing.FewestSteps;

/**
 * Random commands go to the records and to a plain model of them: append, repeat, conflict, retract, amend, correct a
 * correction, ask as of a day, restart, back up and restore; after each, everything is compared. A seed gives the same
 * commands again, and a failure is shown with the fewest commands that still fail.
 */
class EveryOrderTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse(Said.LOG_TIME), ZoneOffset.UTC);
    private static final int STEPS = 40;
    private static final int EVER = 31;

    @TempDir
    private Path folder;

    private int places;

    private interface Step {}

    private record Offer(List<Said> batch, boolean whole) implements Step {}

    private record AskAsOf(int day) implements Step {}

    private record Restart() implements Step {}

    private record BackUpAndRestore() implements Step {}

    private static Step draw(Random random) {
        return switch (random.nextInt(10)) {
            case 0 -> new Restart();
            case 1 -> new BackUpAndRestore();
            case 2, 3 -> new AskAsOf(1 + random.nextInt(26));
            default -> {
                int size = 1 + random.nextInt(5);
                List<Said> batch = IntStream.range(0, size)
                        .mapToObj(i -> Said.draw(random))
                        .toList();
                yield new Offer(batch, random.nextBoolean());
            }
        };
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void recordsDoWhatThePlainModelDoes(long seed) {
        System.out.println("EveryOrderTest: seed " + seed);
        Random random = new Random(seed);
        List<Step> steps = IntStream.range(0, STEPS).mapToObj(i -> draw(random)).toList();
        Throwable failure = failure(steps);
        if (failure != null) {
            List<Step> fewest = FewestSteps.of(steps, some -> failure(some) != null);
            StringBuilder shown = new StringBuilder("seed " + seed + ", the fewest commands that fail:");
            fewest.forEach(step -> shown.append("\n  ").append(step));
            fail(shown.toString(), failure(fewest));
        }
    }

    private Throwable failure(List<Step> steps) {
        try {
            run(steps);
            return null;
        } catch (AssertionError | RuntimeException failed) {
            return failed;
        }
    }

    private void run(List<Step> steps) {
        Path place = folder.resolve("place" + places++);
        PlainLog model = new PlainLog();
        Records records = Records.open(place.toString(), CLOCK);
        try {
            records.log().append(List.of(Said.birth(0), Said.birth(1), Said.birth(2)), true);
            for (Step step : steps) {
                if (step instanceof Offer offer) {
                    assertEquals(
                            model.offer(offer.batch(), offer.whole()),
                            records.log()
                                    .append(
                                            offer.batch().stream()
                                                    .map(Said::event)
                                                    .toList(),
                                            offer.whole())
                                    .outcomes());
                } else if (step instanceof AskAsOf ask) {
                    Instant then = Instant.parse("2026-04-%02dT12:00:00Z".formatted(ask.day()));
                    assertEquals(model.weights(ask.day()), weights(records.cohort(then)));
                } else if (step instanceof Restart) {
                    records.close();
                    records = Records.open(place.toString(), CLOCK);
                } else {
                    Path other = folder.resolve("place" + places++);
                    records = restored(records, other);
                    place = other;
                }
                compare(model, records);
            }
        } finally {
            records.close();
        }
    }

    /** The records as a backup gives them back somewhere else; half of it gives half of the chain. */
    private Records restored(Records records, Path other) {
        Path file = folder.resolve("backup" + places++ + ".zip");
        new Backup(records.log(), null, CLOCK).write(file);
        long half = records.log().last() / 2;
        MemoryLog beginning = new MemoryLog(CLOCK);
        Restore.of(file, Long.toString(half)).into(beginning, null);
        assertEquals(records.log().read(0, (int) half), beginning.read(0, 1_000));
        records.close();
        Records back = Records.open(other.toString(), CLOCK);
        Restore.of(file, null).into(back.log(), null);
        return back;
    }

    private static void compare(PlainLog model, Records records) {
        List<StoredEvent> events = records.log().read(0, 1_000);
        assertEquals(model.kept().size() + 3, events.size());
        String head = HashChain.BEGINNING;
        for (int i = 0; i < events.size(); i++) {
            StoredEvent stored = events.get(i);
            head = HashChain.next(head, CanonicalJson.of(stored.event().json()));
            assertEquals(i + 1 + " " + head, stored.sequence() + " " + stored.hash());
            if (i >= 3) {
                Said said = model.kept().get(i - 3);
                assertEquals(Integer.toString(said.number()), stored.event().id());
                assertEquals(said.event().data(), stored.event().data());
                assertEquals(
                        Instant.parse(said.recorded()),
                        stored.event().recordedTime().toInstant());
            }
        }
        assertEquals(head, records.log().verify().head());
        assertEquals(model.weights(EVER), weights(records.cohort()));
        Herd herd = Herd.following();
        herd.apply(events);
        SameCohort.check(herd.cohort(), records.cohort(), "against a replay");
    }

    /** The weights that count, by number of their weighing. */
    private static Map<Integer, Integer> weights(Cohort cohort) {
        Map<Integer, Integer> weights = new TreeMap<>();
        cohort.lives()
                .forEach(life -> life.events().stream()
                        .filter(event -> event.data() instanceof Weighed)
                        .forEach(event ->
                                weights.put(Integer.valueOf(event.id()), (int) ((Weighed) event.data()).weightKg())));
        return weights;
    }
}
