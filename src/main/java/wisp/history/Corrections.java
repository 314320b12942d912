package wisp.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wisp.event.Amended;
import wisp.event.Event;
import wisp.event.EventReader;
import wisp.event.Fault;
import wisp.event.Retracted;
import wisp.log.StoredEvent;

/**
 * Works out which events of one subject stand: an event with a standing retraction is withdrawn; otherwise the standing
 * amendment that is last in sequence replaces it. A correction stands unless a standing retraction withdraws it.
 */
final class Corrections {

    /**
     * What is left of a subject's events.
     *
     * @param standing events as they count, in no particular order
     * @param marks corrections that could not be carried out
     * @param withdrawn retracted events and the first forms of amended ones
     */
    record Resolved(List<LifeEvent> standing, List<Mark> marks, List<Withdrawn> withdrawn) {}

    private record Name(String source, String id) {}

    private final Map<Name, StoredEvent> named = new HashMap<>();
    private final Map<Name, List<StoredEvent>> correctionsOf = new HashMap<>();
    private final Set<StoredEvent> circular = new HashSet<>();

    private Corrections(List<StoredEvent> events) {
        for (StoredEvent stored : events) {
            named.put(name(stored), stored);
            Name target = target(stored);
            if (target != null) {
                correctionsOf.computeIfAbsent(target, t -> new ArrayList<>()).add(stored);
            }
        }
        events.stream().filter(this::inCircle).forEach(circular::add);
    }

    /** A correction has one target, so that a circle is met by following targets. */
    private boolean inCircle(StoredEvent start) {
        Set<StoredEvent> passed = new HashSet<>();
        StoredEvent next = start;
        while (next != null && next.event().type().isCorrection() && passed.add(next)) {
            next = named.get(target(next));
            if (start.equals(next)) {
                return true;
            }
        }
        return false;
    }

    /** Resolves the corrections among one subject's events. */
    static Resolved resolve(List<StoredEvent> events) {
        boolean none = events.stream().noneMatch(e -> e.event().type().isCorrection());
        if (none) {
            return new Resolved(events.stream().map(Corrections::asRecorded).toList(), List.of(), List.of());
        }
        return new Corrections(events).resolveAll(events);
    }

    private Resolved resolveAll(List<StoredEvent> events) {
        List<LifeEvent> standing = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        List<Withdrawn> withdrawn = new ArrayList<>();
        for (StoredEvent stored : events) {
            if (stored.event().type().isCorrection()) {
                markCorrection(stored, marks);
                if (!stands(stored)) {
                    standingRetraction(stored).ifPresent(by -> withdrawn.add(Withdrawn.of(stored, by)));
                }
            } else {
                resolveOne(stored, standing, withdrawn);
            }
        }
        return new Resolved(standing, marks, withdrawn);
    }

    private void resolveOne(StoredEvent stored, List<LifeEvent> standing, List<Withdrawn> withdrawn) {
        var retraction = standingRetraction(stored);
        if (retraction.isPresent()) {
            withdrawn.add(Withdrawn.of(stored, retraction.get()));
            return;
        }
        StoredEvent last = null;
        for (StoredEvent correction : correctionsOf.getOrDefault(name(stored), List.of())) {
            boolean amends = correction.event().data() instanceof Amended;
            boolean later = last == null || correction.sequence() > last.sequence();
            if (amends
                    && later
                    && stands(correction)
                    && faults(stored, correction).isEmpty()) {
                last = correction;
            }
        }
        if (last == null) {
            standing.add(asRecorded(stored));
        } else {
            standing.add(amended(stored, last));
            withdrawn.add(Withdrawn.of(stored, last));
        }
    }

    private Optional<StoredEvent> standingRetraction(StoredEvent stored) {
        return correctionsOf.getOrDefault(name(stored), List.of()).stream()
                .filter(c -> c.event().data() instanceof Retracted && stands(c))
                .findFirst();
    }

    /** Whether a correction stands; those in a circle do not. */
    private boolean stands(StoredEvent correction) {
        return !circular.contains(correction) && standingRetraction(correction).isEmpty();
    }

    private void markCorrection(StoredEvent stored, List<Mark> marks) {
        boolean stands = stands(stored);
        StoredEvent target = named.get(target(stored));
        if (circular.contains(stored)) {
            marks.add(new Mark(asRecorded(stored), Mark.Kind.CIRCULAR_CORRECTION, ""));
        } else if (target == null) {
            marks.add(new Mark(asRecorded(stored), Mark.Kind.CORRECTION_WITHOUT_TARGET, ""));
        } else if (stands && stored.event().data() instanceof Amended) {
            if (target.event().type().isCorrection()) {
                marks.add(new Mark(asRecorded(stored), Mark.Kind.AMENDS_A_CORRECTION, ""));
            } else {
                List<Fault> faults = faults(target, stored);
                if (!faults.isEmpty()) {
                    String detail = String.join(
                            " ", faults.stream().map(Fault::toString).toList());
                    marks.add(new Mark(asRecorded(stored), Mark.Kind.AMENDMENT_DOES_NOT_FIT, detail));
                }
            }
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
