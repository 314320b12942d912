package wisp.records;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.event.Event;
import wisp.event.EventReader;
import wisp.event.EventReader.Reading;
import wisp.event.Fault;
import wisp.history.Mark;
import wisp.indicator.Definitions;
import wisp.indicator.Figures;
import wisp.log.Appended;
import wisp.log.Appended.Outcome;
import wisp.log.DayHeads;
import wisp.log.EventLog;
import wisp.log.Logs;
import wisp.log.StoredEvent;

/**
 * A herd's records: the log and everything worked out from it. Safe for many threads. Another process may write to the
 * same log; every reading first catches up with it.
 */
public final class Records implements AutoCloseable {
    private static final int PAST_DAYS_KEPT = 4;
    private static final int BATCH = 5_000;

    private final EventLog log;
    private final Definitions definitions;
    private final Figures figures;
    private final EventReader reader;
    private final Clock clock;
    private final Herd herd = Herd.following();
    private final Map<Instant, FutureTask<Cohort>> past = new LinkedHashMap<>();
    private final Object dayHeadsLock = new Object();
    private DayHeads dayHeads = DayHeads.none(ZoneId.of("UTC"));
    private long followed;

    /** Records over an open log. */
    public Records(EventLog log, Definitions definitions, Clock clock) {
        this.log = log;
        this.definitions = definitions;
        this.figures = new Figures(definitions);
        this.reader = EventReader.offered(definitions.conditions().keys(), clock);
        this.clock = clock;
    }

    /**
     * Opens records, with the definitions of the data folder; a database has none of its own.
     *
     * @param data a data folder, or the JDBC address of a database
     */
    public static Records open(String data, Clock clock) {
        return open(
                data,
                Logs.folder(data).map(folder -> folder.resolve("analytics")).orElse(null),
                clock);
    }

    /**
     * Opens records.
     *
     * @param data a data folder, or the JDBC address of a database
     * @param analytics a folder of definitions that add to the shipped ones or replace them; null for none
     */
    public static Records open(String data, Path analytics, Clock clock) {
        Definitions definitions = Definitions.with(analytics);
        return new Records(Logs.open(data, clock), definitions, clock);
    }

    /** The log itself. */
    public EventLog log() {
        return log;
    }

    /** The definitions in use. */
    public Definitions definitions() {
        return definitions;
    }

    /** Works figures out over a cohort. */
    public Figures figures() {
        return figures;
    }

    /** Reads events that somebody offers. */
    public EventReader reader() {
        return reader;
    }

    /** The clock that tells what is the future. */
    public Clock clock() {
        return clock;
    }

    /** The cohort by everything that is recorded. */
    public synchronized Cohort cohort() {
        catchUp();
        return herd.cohort();
    }

    /** The cohort as it was known at a time; null stands for now. */
    public Cohort cohort(Instant asOf) {
        if (asOf == null) {
            return cohort();
        }
        FutureTask<Cohort> day;
        synchronized (this) {
            catchUp();
            day = past.computeIfAbsent(
                    asOf, time -> new FutureTask<>(() -> herd.before(time).cohort()));
            if (past.size() > PAST_DAYS_KEPT) {
                past.remove(past.keySet().iterator().next());
            }
        }
        // worked out once, by whoever asked first, while others go on writing
        day.run();
        try {
            return day.get();
        } catch (ExecutionException failed) {
            synchronized (this) {
                past.remove(asOf, day);
            }
            throw new IllegalStateException("The herd as of " + asOf + " cannot be worked out.", failed.getCause());
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the server stops while a past day is worked out", ended);
        }
    }

    /** The log's head at the end of each day of recording, by the farm's clocks. */
    public DayHeads dayHeads() {
        ZoneId zone = cohort().farm().latest().zone();
        // a lock of its own: the first time the whole log is read, and nobody who writes should wait for that
        synchronized (dayHeadsLock) {
            if (!dayHeads.zone().equals(zone)) {
                dayHeads = DayHeads.none(zone);
            }
            inBatches(dayHeads.head().sequence(), batch -> dayHeads = dayHeads.with(batch));
            return dayHeads;
        }
    }

    /**
     * Records events.
     *
     * @param readings what was read, in the order offered
     * @param partial true: the sound ones are recorded even where others are refused
     */
    public Intake take(List<Reading> readings, boolean partial) {
        List<Intake.Refused> refused = new ArrayList<>();
        List<Event> sound = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = readings.get(i);
            int place = i;
            reading.faults().forEach(fault -> refused.add(new Intake.Refused(place, fault)));
            if (reading.sound()) {
                sound.add(reading.event());
                places.add(i);
            }
        }
        if (!refused.isEmpty() && !partial) {
            return new Intake(0, 0, List.of(), refused, log.last());
        }
        Appended appended = log.append(sound, !partial);
        for (int i = 0; i < sound.size(); i++) {
            if (appended.outcomes().get(i) == Outcome.CONFLICT) {
                refused.add(new Intake.Refused(places.get(i), conflict(sound.get(i))));
            }
        }
        refused.sort(Comparator.comparingInt(Intake.Refused::index));
        boolean nothing = !refused.isEmpty() && !partial;
        int duplicate = nothing ? 0 : (int) appended.count(Outcome.DUPLICATE);
        List<Intake.Marked> marked = marked(sound, places, appended);
        return new Intake(appended.stored().size(), duplicate, marked, refused, appended.last());
    }

    private static Fault conflict(Event event) {
        String problem = "The log has another event of source " + event.source() + " and id " + event.id() + ".";
        return new Fault("id", problem, "Send a correction (amended or retracted), or give the new event its own id.");
    }

    private List<Intake.Marked> marked(List<Event> sound, List<Integer> places, Appended appended) {
        if (appended.stored().isEmpty()) {
            return List.of();
        }
        Set<String> subjects = new HashSet<>();
        appended.stored().forEach(stored -> subjects.add(stored.event().subject()));
        Map<Long, Mark> marks = marks(subjects);
        List<Intake.Marked> marked = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < sound.size(); i++) {
            if (appended.outcomes().get(i) == Outcome.ACCEPTED) {
                StoredEvent stored = appended.stored().get(next++);
                Mark mark = marks.get(stored.sequence());
                if (mark != null) {
                    marked.add(new Intake.Marked(places.get(i), stored.event().subject(), mark));
                }
            }
        }
        return marked;
    }

    private synchronized Map<Long, Mark> marks(Set<String> subjects) {
        catchUp();
        return herd.marks(subjects);
    }

    private void catchUp() {
        if (log.last() > followed) {
            inBatches(followed, this::follow);
        }
    }

    private void inBatches(long after, Consumer<List<StoredEvent>> reader) {
        List<StoredEvent> batch = new ArrayList<>();
        log.replay(after, stored -> {
            batch.add(stored);
            if (batch.size() == BATCH) {
                reader.accept(batch);
                batch.clear();
            }
        });
        if (!batch.isEmpty()) {
            reader.accept(batch);
        }
    }

    /** A past day stays as it was unless something new is said to have been known by then. */
    private void follow(List<StoredEvent> batch) {
        herd.apply(batch);
        followed = batch.get(batch.size() - 1).sequence();
        past.keySet().removeIf(asOf -> batch.stream().anyMatch(stored -> Herd.known(stored.event(), asOf)));
    }

    @Override
    public void close() {
        log.close();
    }
}
