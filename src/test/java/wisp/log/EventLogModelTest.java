package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wisp.log.Notes.NOW;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wisp.event.Event;
import wisp.event.Noted;
import wisp.log.Appended.Outcome;
import wisp.testing.OwnPostgres;
import wisp.testing.PostgresServer;

/** Random commands go to a log and to a plain model of it, a list; a seed that fails can be run again by itself. */
@ExtendWith(OwnPostgres.class)
class EventLogModelTest {
    private static final List<String> OTHER_TIMES = List.of("2026-02-01T00:00:00Z", "2026-02-01T00:00:00+00:00");

    @TempDir
    private Path folder;

    /** One event as the model knows it; {@code recorded} null is "not said". */
    private record Said(String source, String id, String text, String recorded) {
        Event event() {
            var json = Notes.json(source, id, text);
            return Notes.event(recorded == null ? json : json.put("recordedtime", recorded));
        }

        boolean isNamedAs(Said other) {
            return source.equals(other.source) && id.equals(other.id);
        }

        boolean repeats(Said kept) {
            return text.equals(kept.text) && (recorded == null || recorded.equals(kept.recorded));
        }

        Said kept() {
            return new Said(source, id, text, recorded == null ? NOW : recorded);
        }

        static Said random(Random random) {
            String recorded = random.nextInt(3) > 0
                    ? null
                    : random.nextBoolean() ? NOW : OTHER_TIMES.get(random.nextInt(OTHER_TIMES.size()));
            return new Said(
                    "phone" + random.nextInt(2), "id" + random.nextInt(60), "text" + random.nextInt(8) / 7, recorded);
        }
    }

    private static List<Outcome> offer(List<Said> model, List<Said> batch, boolean whole) {
        List<Said> with = new ArrayList<>(model);
        List<Outcome> outcomes = new ArrayList<>();
        Set<Integer> fresh = new HashSet<>();
        for (Said said : batch) {
            Said there = with.stream().filter(said::isNamedAs).findFirst().orElse(null);
            if (there == null) {
                with.add(said.kept());
                outcomes.add(Outcome.ACCEPTED);
            } else {
                outcomes.add(said.repeats(there) ? Outcome.DUPLICATE : Outcome.CONFLICT);
            }
            if (model.stream().noneMatch(said::isNamedAs)) {
                fresh.add(outcomes.size() - 1);
            }
        }
        if (whole && outcomes.contains(Outcome.CONFLICT)) {
            fresh.stream()
                    .filter(i -> outcomes.get(i) != Outcome.CONFLICT)
                    .forEach(i -> outcomes.set(i, Outcome.HELD_BACK));
            return outcomes;
        }
        model.clear();
        model.addAll(with);
        return outcomes;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void theSqliteLogDoesWhatTheModelDoes(long seed) {
        doesWhatTheModelDoes(seed, () -> SqliteLog.open(folder, Notes.CLOCK));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void thePostgresLogDoesWhatTheModelDoes(long seed, PostgresServer server) {
        String address = server.newSchema();
        doesWhatTheModelDoes(seed, () -> Logs.open(address, Notes.CLOCK));
    }

    private static void doesWhatTheModelDoes(long seed, Supplier<EventLog> opened) {
        System.out.println("seed of the random commands: " + seed);
        Random random = new Random(seed);
        List<Said> model = new ArrayList<>();
        EventLog log = opened.get();
        MemoryLog memory = new MemoryLog(Notes.CLOCK);
        try {
            for (int step = 0; step < 120; step++) {
                if (random.nextInt(15) == 0) {
                    log.close();
                    log = opened.get();
                }
                List<Said> batch = new ArrayList<>();
                for (int i = random.nextInt(6); i >= 0; i--) {
                    batch.add(Said.random(random));
                }
                boolean whole = random.nextBoolean();
                List<Outcome> expected = offer(model, batch, whole);
                List<Event> events = batch.stream().map(Said::event).toList();
                Appended appended = log.append(events, whole);
                assertEquals(expected, appended.outcomes(), "step " + step + " of seed " + seed + ": " + batch);
                assertEquals(appended, memory.append(events, whole));
                assertEquals(model.size(), appended.last());
                long after = random.nextInt(model.size() + 2);
                assertEquals(memory.read(after, 9), log.read(after, 9));
            }
            assertEquals(
                    model,
                    log.read(0, 1_000).stream().map(EventLogModelTest::said).toList());
            assertEquals(memory.verify(), log.verify());
            assertEquals("", log.verify().problem());
        } finally {
            log.close();
        }
    }

    private static Said said(StoredEvent stored) {
        Event event = stored.event();
        String recorded = event.json().replaceAll(".*\"recordedtime\":\"([^\"]*)\".*", "$1");
        return new Said(event.source(), event.id(), ((Noted) event.data()).text(), recorded);
    }
}
