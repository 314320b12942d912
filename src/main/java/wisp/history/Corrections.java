package wisp.history;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wisp.event.Amended;
import wisp.event.Event;
import wisp.event.EventReader;
import wisp.event.Fault;
import wisp.event.Retracted;
import wisp.log.StoredEvent;

/**
 * Works out which events of one subject stand: an event with a standing retraction is withdrawn; otherwise the standing
 * amendment that is last in sequence and fits replaces it. A correction stands when every retraction of it has fallen,
 * and falls as soon as one retraction of it stands. Retractions that withdraw each other in a circle are left
 * undecided by that rule: none of them has an effect, until one from outside breaks the circle.
 */
final class Corrections {

    /**
     * What is left of a subject's events.
     *
     * @param standing events as they count, in order of sequence
     * @param marks corrections that could not be carried out, in order of sequence
     * @param withdrawn retracted events and the first forms of amended ones, in order of sequence
     */
    record Resolved(List<LifeEvent> standing, List<Mark> marks, List<Withdrawn> withdrawn) {}

    private record Name(String source, String id) {}

    private final List<StoredEvent> events;
    private final Map<Name, StoredEvent> named = new HashMap<>();
    private final Map<Name, List<StoredEvent>> amendmentsOf = new HashMap<>();
    private final Map<Name, Integer> retractionsLeft = new HashMap<>();
    private final Set<Long> standing = new HashSet<>();
    private final Map<Name, StoredEvent> fallen = new HashMap<>();

    private Corrections(List<StoredEvent> events) {
        this.events = events;
        for (StoredEvent stored : events) {
            named.put(name(stored), stored);
            if (stored.event().data() instanceof Amended) {
                amendmentsOf
                        .computeIfAbsent(target(stored), t -> new ArrayList<>())
                        .add(stored);
            } else if (stored.event().data() instanceof Retracted) {
                retractionsLeft.merge(target(stored), 1, Integer::sum);
            }
        }
        decide();
    }

    /** Resolves the corrections among one subject's events. */
    static Resolved resolve(List<StoredEvent> events) {
        List<StoredEvent> ordered = events.stream()
                .sorted(Comparator.comparing(StoredEvent::sequence))
                .toList();
        boolean none = ordered.stream().noneMatch(e -> e.event().type().isCorrection());
        if (none) {
            return new Resolved(ordered.stream().map(Corrections::asRecorded).toList(), List.of(), List.of());
        }
        return new Corrections(ordered).resolveAll();
    }

    /** Decides from the corrections that nobody retracts towards those that they retract. */
    private void decide() {
        Deque<StoredEvent> decided = new ArrayDeque<>();
        for (StoredEvent stored : events) {
            if (stored.event().type().isCorrection() && !retractionsLeft.containsKey(name(stored))) {
                standing.add(stored.sequence());
                decided.add(stored);
            }
        }
        while (!decided.isEmpty()) {
            StoredEvent correction = decided.remove();
            if (correction.event().data() instanceof Retracted) {
                decideTarget(correction, decided);
            }
        }
    }

    private void decideTarget(StoredEvent retraction, Deque<StoredEvent> decided) {
        Name name = target(retraction);
        StoredEvent target = named.get(name);
        boolean correction = target != null && target.event().type().isCorrection();
        int left = retractionsLeft.merge(name, -1, Integer::sum);
        if (standing.contains(retraction.sequence())) {
            StoredEvent by = fallen.get(name);
            if (by == null && correction) {
                decided.add(target);
            }
            if (by == null || retraction.sequence() < by.sequence()) {
                fallen.put(name, retraction);
            }
        } else if (left == 0 && correction && !fallen.containsKey(name)) {
            standing.add(target.sequence());
            decided.add(target);
        }
    }

    private Resolved resolveAll() {
        List<LifeEvent> left = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        List<Withdrawn> withdrawn = new ArrayList<>();
        for (StoredEvent stored : events) {
            StoredEvent retraction = fallen.get(name(stored));
            if (retraction != null) {
                withdrawn.add(Withdrawn.of(stored, retraction));
            } else if (stored.event().type().isCorrection()) {
                markCorrection(stored, marks);
            } else {
                resolveOne(stored, left, withdrawn);
            }
        }
        return new Resolved(left, marks, withdrawn);
    }

    private void resolveOne(StoredEvent stored, List<LifeEvent> left, List<Withdrawn> withdrawn) {
        StoredEvent last = null;
        for (StoredEvent amendment : amendmentsOf.getOrDefault(name(stored), List.of())) {
            boolean fits = faults(stored, amendment).isEmpty();
            last = standing.contains(amendment.sequence()) && fits ? amendment : last;
        }
        if (last == null) {
            left.add(asRecorded(stored));
        } else {
            left.add(amended(stored, last));
            withdrawn.add(Withdrawn.of(stored, last));
        }
    }

    private void markCorrection(StoredEvent stored, List<Mark> marks) {
        StoredEvent target = named.get(target(stored));
        if (target == null) {
            marks.add(new Mark(asRecorded(stored), Mark.Kind.CORRECTION_WITHOUT_TARGET, ""));
        } else if (!standing.contains(stored.sequence())) {
            marks.add(new Mark(asRecorded(stored), Mark.Kind.CIRCULAR_CORRECTION, ""));
        } else if (stored.event().data() instanceof Amended) {
            markAmendment(target, stored, marks);
        }
    }

    private static void markAmendment(StoredEvent target, StoredEvent stored, List<Mark> marks) {
        if (target.event().type().isCorrection()) {
            marks.add(new Mark(asRecorded(stored), Mark.Kind.AMENDS_A_CORRECTION, ""));
            return;
        }
        List<Fault> faults = faults(target, stored);
        if (!faults.isEmpty()) {
            String detail =
                    String.join(" ", faults.stream().map(Fault::toString).toList());
            marks.add(new Mark(asRecorded(stored), Mark.Kind.AMENDMENT_DOES_NOT_FIT, detail));
        }
    }

    private static List<Fault> faults(StoredEvent target, StoredEvent amendment) {
        Amended amended = (Amended) amendment.event().data();
        return EventReader.readData(target.event().type(), amended.dataJson()).faults();
    }

    private static LifeEvent amended(StoredEvent first, StoredEvent amendment) {
        Amended amended = (Amended) amendment.event().data();
        var reading = EventReader.readData(first.event().type(), amended.dataJson());
        return new LifeEvent(
                first.sequence(),
                first.event().source(),
                first.event().id(),
                amended.time().toInstant(),
                reading.timeKnown(),
                recorded(amendment.event()),
                amendment.event().recordedBy(),
                true,
                reading.data());
    }

    static LifeEvent asRecorded(StoredEvent stored) {
        Event event = stored.event();
        return new LifeEvent(
                stored.sequence(),
                event.source(),
                event.id(),
                event.time().toInstant(),
                event.timeKnown(),
                recorded(event),
                event.recordedBy(),
                false,
                event.data());
    }

    private static Instant recorded(Event event) {
        return event.recordedTime().toInstant();
    }

    private static Name name(StoredEvent stored) {
        return new Name(stored.event().source(), stored.event().id());
    }

    private static Name target(StoredEvent stored) {
        if (stored.event().data() instanceof Retracted r) {
            return new Name(r.eventSource(), r.eventId());
        }
        if (stored.event().data() instanceof Amended a) {
            return new Name(a.eventSource(), a.eventId());
        }
        return null;
    }
}
