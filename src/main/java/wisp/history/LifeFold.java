package wisp.history;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wisp.event.Birth;
import wisp.event.EventType;
import wisp.log.StoredEvent;

/**
 * Folds one animal's events into its life: corrections first, then order, then what can be true beside what.
 *
 * <p>An event known only by date is held at the start of its day. It lies no earlier than a birth on that same day; a
 * death or leaving known only by date lies no earlier than the last event of known time on its day. An event at the
 * very time of birth or of exit is plausible.
 */
public final class LifeFold {
    /** Papers and laboratory work go on after an animal has gone; nothing about them is implausible then. */
    private static final Set<EventType> MAY_FOLLOW_EXIT = EnumSet.of(
            EventType.NOTED,
            EventType.SAMPLE_SENT,
            EventType.SAMPLE_RESULT,
            EventType.REGISTERED,
            EventType.TISSUE_SAMPLED);

    private final Farm farm;
    private final LifeEvent born;
    private final LocalDate birthDate;
    private final Set<Long> tagsInUse;
    private final List<LifeEvent> counting = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private Exit exit;

    private LifeFold(Farm farm, LifeEvent born, Set<Long> tagsInUse) {
        this.farm = farm;
        this.born = born;
        this.birthDate = dateOf(born);
        this.tagsInUse = tagsInUse;
    }

    /** Whether events of this type tell of an animal, and not of a pen or the farm. */
    public static boolean ofAnimal(EventType type) {
        return switch (type) {
            case PEN_BEDDED, PEN_CLEANED, FARM_DESCRIBED, NOTED, RETRACTED, AMENDED -> false;
            default -> true;
        };
    }

    /**
     * Folds a life.
     *
     * @param key the animal's key
     * @param events all its events, in any order
     * @param farm the farm through time
     * @param tagsInUse sequences of those {@code tag-fitted} events whose number another living animal had already
     */
    public static Life fold(String key, List<StoredEvent> events, FarmHistory farm, Set<Long> tagsInUse) {
        Corrections.Resolved resolved = Corrections.resolve(events);
        List<LifeEvent> standing = ofThisAnimal(resolved.standing(), farm);
        LifeEvent born = firstBirth(standing);
        List<Mark> marks = new ArrayList<>(resolved.marks());
        if (born == null) {
            standing.forEach(event -> marks.add(new Mark(event, Mark.Kind.NO_BIRTH, "")));
            return new Life(
                    key,
                    null,
                    farm.latest(),
                    null,
                    List.of(),
                    List.of(),
                    null,
                    List.copyOf(marks),
                    resolved.withdrawn());
        }
        LifeFold fold = new LifeFold(farm.at(born.time()), born, tagsInUse);
        fold.findExit(standing);
        standing.forEach(fold::place);
        fold.counting.sort(LifeEvent.ORDER);
        marks.addAll(fold.marks);
        List<Episode> episodes = Episodes.of(fold.counting, fold.exit == null ? null : fold.exit.time());
        return new Life(
                key,
                born,
                fold.farm,
                fold.birthDate,
                List.copyOf(fold.counting),
                episodes,
                fold.exit,
                List.copyOf(marks),
                resolved.withdrawn());
    }

    /** What tells of the animal; a pen or the farm may bear the same key. */
    private static List<LifeEvent> ofThisAnimal(List<LifeEvent> standing, FarmHistory farm) {
        List<LifeEvent> own = standing.stream()
                .filter(event -> ofAnimal(event.type()) || event.type() == EventType.NOTED)
                .sorted(LifeEvent.ORDER)
                .toList();
        LifeEvent born = firstBirth(own);
        if (born == null) {
            return own;
        }
        ZoneId zone = farm.at(born.time()).zone();
        return own.stream()
                .map(event -> event.timeKnown() ? event : event.at(startOfDay(event, farm, zone)))
                .sorted(LifeEvent.ORDER)
                .toList();
    }

    /** The date is that of the farm's clocks when it happened; the day is counted by those of the animal's birth. */
    private static Instant startOfDay(LifeEvent event, FarmHistory farm, ZoneId zone) {
        ZoneId then = farm.at(event.time()).zone();
        return event.time().atZone(then).toLocalDate().atStartOfDay(zone).toInstant();
    }

    private static LifeEvent firstBirth(List<LifeEvent> ordered) {
        return ordered.stream()
                .filter(event -> event.type() == EventType.BIRTH)
                .findFirst()
                .orElse(null);
    }

    /** An event known only by date cannot lie before a birth on that same day. */
    private LifeEvent notBeforeBirth(LifeEvent event) {
        boolean sameDay = !event.timeKnown() && dateOf(event).equals(birthDate);
        return sameDay && event.time().isBefore(born.time()) ? event.at(born.time()) : event;
    }

    private void findExit(List<LifeEvent> standing) {
        if (!((Birth) born.data()).alive()) {
            exit = new Exit(born.time(), born.timeKnown(), Exit.Kind.BORN_DEAD, born);
            return;
        }
        for (LifeEvent raw : standing) {
            LifeEvent event = notBeforeBirth(raw);
            boolean leaves = event.type() == EventType.LEFT;
            if ((leaves || event.type() == EventType.DIED) && !event.time().isBefore(born.time())) {
                Exit.Kind kind = leaves ? Exit.Kind.LEFT : Exit.Kind.DIED;
                Instant time = event.timeKnown() ? event.time() : lastSeen(event, standing);
                exit = new Exit(time, event.timeKnown(), kind, event.at(time));
                return;
            }
        }
    }

    /** An exit known only by date lies no earlier than the last event of known time on that day. */
    private Instant lastSeen(LifeEvent exitEvent, List<LifeEvent> standing) {
        Instant last = exitEvent.time();
        for (LifeEvent event : standing) {
            boolean sameDay = event.timeKnown() && dateOf(event).equals(dateOf(exitEvent));
            boolean seen = event.type() != EventType.BIRTH && !MAY_FOLLOW_EXIT.contains(event.type());
            if (sameDay && seen && event.time().isAfter(last)) {
                last = event.time();
            }
        }
        return last;
    }

    private void place(LifeEvent raw) {
        LifeEvent event = notBeforeBirth(raw);
        Mark.Kind kind = implausible(event);
        if (kind != null) {
            marks.add(new Mark(event, kind, ""));
        } else if (exit != null && event.sequence() == exit.event().sequence()) {
            counting.add(exit.event());
        } else {
            counting.add(event);
        }
    }

    private Mark.Kind implausible(LifeEvent event) {
        if (event.sequence() == born.sequence()) {
            return null;
        }
        if (event.type() == EventType.BIRTH) {
            return Mark.Kind.SECOND_BIRTH;
        }
        if (event.time().isBefore(born.time())) {
            return Mark.Kind.BEFORE_BIRTH;
        }
        if (exit != null && event.sequence() != exit.event().sequence()) {
            if (event.type() == EventType.DIED && exit.death()) {
                return Mark.Kind.SECOND_DEATH;
            }
            boolean exitAgain = event.type() == EventType.DIED || event.type() == EventType.LEFT;
            if (exitAgain || (event.time().isAfter(exit.time()) && !MAY_FOLLOW_EXIT.contains(event.type()))) {
                return Mark.Kind.AFTER_EXIT;
            }
        }
        if (event.type() == EventType.CASTRATED && ((Birth) born.data()).sex() == Birth.Sex.FEMALE) {
            return Mark.Kind.CASTRATED_FEMALE;
        }
        return tagsInUse.contains(event.sequence()) ? Mark.Kind.TAG_IN_USE : null;
    }

    private LocalDate dateOf(LifeEvent event) {
        return event.time().atZone(farm.zone()).toLocalDate();
    }
}
