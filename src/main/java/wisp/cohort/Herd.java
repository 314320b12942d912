package wisp.cohort;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import wisp.event.Event;
import wisp.event.EventType;
import wisp.event.SampleResult;
import wisp.history.Annals;
import wisp.history.FarmHistory;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.LifeFold;
import wisp.history.Mark;
import wisp.history.PenFold;
import wisp.history.TagRegister;
import wisp.log.StoredEvent;

/**
 * Keeps every animal's life current with the log. A new event refolds the one life that it belongs to, and those whose
 * tags it touches; a new description of the farm refolds all. Replaying the log into an empty herd gives the same.
 */
public final class Herd {
    private final Instant asOf;
    private final Map<String, List<StoredEvent>> bySubject = new HashMap<>();
    private final Map<String, Integer> rows = new LinkedHashMap<>();
    private final List<Life> lives = new ArrayList<>();
    private final CohortTable table = new CohortTable();
    /** Rows of animals that a sample's result once called anything but negative. */
    private final TreeSet<Integer> suspects = new TreeSet<>();
    /** Subjects with an event that is not of an animal alone: the pens, the farm, and animals with notes. */
    private final Set<String> places = new HashSet<>();

    private final TagRegister tags = new TagRegister();
    private FarmHistory farm = FarmHistory.UNDESCRIBED;
    private Instant newest = Instant.EPOCH;
    private long seen;
    private long sequence;
    private Cohort current;

    private Herd(Instant asOf) {
        this.asOf = asOf;
    }

    /** A herd that follows the log. */
    public static Herd following() {
        return new Herd(null);
    }

    /** A herd as it was known at a time: later records and later happenings are passed over. */
    public static Herd asOf(Instant time) {
        return new Herd(time);
    }

    /** This herd as it was known at a time, from the events that it holds; it can go on meanwhile. */
    public Herd before(Instant time) {
        Herd then = asOf(time);
        then.apply(events());
        return then;
    }

    private List<StoredEvent> events() {
        List<StoredEvent> events = new ArrayList<>();
        synchronized (this) {
            bySubject.values().forEach(events::addAll);
        }
        events.sort(Comparator.comparing(StoredEvent::sequence));
        return events;
    }

    /** Takes events in order of sequence. */
    public synchronized void apply(List<StoredEvent> events) {
        current = null;
        Set<String> touched = new HashSet<>();
        boolean farmTouched = false;
        for (StoredEvent stored : events) {
            if (stored.sequence() <= seen) {
                continue;
            }
            seen = stored.sequence();
            if (known(stored.event())) {
                sequence = seen;
                take(stored);
                touched.add(stored.event().subject());
                farmTouched |= stored.event().subject().equals(FarmHistory.SUBJECT);
            }
        }
        if (farmTouched && redescribed()) {
            touched.addAll(rows.keySet());
        }
        refold(touched);
    }

    /** The cohort as it stands now. */
    public synchronized Cohort cohort() {
        if (current == null) {
            Instant cut = asOf == null ? newest : asOf;
            List<Life> ofSuspects = suspects.stream().map(lives::get).toList();
            current = new Cohort(
                    table.copy(), List.copyOf(lives), ofSuspects, farm, pens(), annals(), strayMarks(), cut, sequence);
        }
        return current;
    }

    /** The marks of these subjects' events, by the event's sequence. */
    public synchronized Map<Long, Mark> marks(Set<String> subjects) {
        Map<Long, Mark> marks = new HashMap<>();
        for (String subject : subjects) {
            List<Mark> of = rows.containsKey(subject)
                    ? lives.get(rows.get(subject)).marks()
                    : PenFold.marks(bySubject.getOrDefault(subject, List.of()));
            of.forEach(mark -> marks.put(mark.event().sequence(), mark));
        }
        return marks;
    }

    private boolean redescribed() {
        FarmHistory before = farm;
        farm = FarmHistory.of(bySubject.get(FarmHistory.SUBJECT));
        return !farm.equals(before);
    }

    private boolean known(Event event) {
        return asOf == null || known(event, asOf);
    }

    /** Whether an event was known at a time: recorded by then, and said to have happened by then. */
    public static boolean known(Event event, Instant asOf) {
        return !(event.recordedTime().toInstant().isAfter(asOf)
                || event.time().toInstant().isAfter(asOf));
    }

    private void take(StoredEvent stored) {
        Event event = stored.event();
        Event slim = new Event(
                event.source(),
                event.id(),
                event.subject(),
                event.time(),
                event.timeKnown(),
                event.recordedTime(),
                event.recordedBy(),
                event.data(),
                "");
        StoredEvent kept = new StoredEvent(stored.sequence(), "", slim);
        bySubject.computeIfAbsent(event.subject(), s -> new ArrayList<>()).add(kept);
        if (event.time().toInstant().isAfter(newest)) {
            newest = event.time().toInstant();
        }
        if (!LifeFold.ofAnimal(event.type())) {
            places.add(event.subject());
        }
        if (LifeFold.ofAnimal(event.type()) && !rows.containsKey(event.subject())) {
            rows.put(event.subject(), rows.size());
            lives.add(null);
        }
    }

    private void refold(Set<String> touched) {
        Set<String> again = new HashSet<>();
        Map<String, Life> folded = new HashMap<>();
        for (String key : touched) {
            if (rows.containsKey(key)) {
                Life life = LifeFold.fold(key, bySubject.get(key), farm, Set.of());
                folded.put(key, life);
                again.add(key);
                again.addAll(tags.update(life));
            }
        }
        again.stream().sorted(Comparator.comparing(rows::get)).forEach(key -> {
            Set<Long> inUse = tags.inUse(key);
            Life life = inUse.isEmpty() ? folded.get(key) : null;
            if (life == null) {
                life = LifeFold.fold(key, bySubject.get(key), farm, inUse);
            }
            int row = rows.get(key);
            lives.set(row, life);
            table.put(row, CohortRow.of(life, farm));
            if (suspected(life)) {
                suspects.add(row);
            } else {
                suspects.remove(row);
            }
        });
    }

    private static boolean suspected(Life life) {
        return Stream.concat(life.events().stream(), life.marks().stream().map(Mark::event))
                .anyMatch(event ->
                        event.data() instanceof SampleResult result && result.result() != SampleResult.Result.NEGATIVE);
    }

    private Map<String, List<LifeEvent>> pens() {
        Map<String, List<LifeEvent>> pens = new TreeMap<>();
        places.forEach(subject -> {
            List<StoredEvent> events = bySubject.get(subject);
            List<LifeEvent> ofPen = subject.equals(FarmHistory.SUBJECT) ? List.of() : ofPen(subject, events);
            if (!ofPen.isEmpty()) {
                pens.put(subject, ofPen);
            }
        });
        return Collections.unmodifiableMap(pens);
    }

    /** A pen may bear the key of an animal; notes under that key are then the animal's. */
    private List<LifeEvent> ofPen(String subject, List<StoredEvent> events) {
        if (!rows.containsKey(subject)) {
            return PenFold.fold(events);
        }
        if (events.stream().allMatch(stored -> LifeFold.ofAnimal(stored.event().type()))) {
            return List.of();
        }
        return PenFold.fold(events).stream()
                .filter(event -> event.type() == EventType.PEN_BEDDED || event.type() == EventType.PEN_CLEANED)
                .toList();
    }

    private Map<String, Annals> annals() {
        Map<String, Annals> annals = new TreeMap<>();
        places.forEach(subject -> {
            List<StoredEvent> events = bySubject.get(subject);
            if (!rows.containsKey(subject)) {
                annals.put(subject, Annals.of(events));
            }
        });
        return Collections.unmodifiableMap(annals);
    }

    private List<Mark> strayMarks() {
        List<Mark> marks = new ArrayList<>();
        places.forEach(subject -> {
            List<StoredEvent> events = bySubject.get(subject);
            if (!rows.containsKey(subject)) {
                marks.addAll(PenFold.marks(events));
            }
        });
        marks.sort(Comparator.comparing(mark -> mark.event().sequence()));
        return List.copyOf(marks);
    }
}
