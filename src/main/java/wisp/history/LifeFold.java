package wisp.history;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wisp.event.Birth;
import wisp.event.EventType;
import wisp.log.StoredEvent;

/** Folds one animal's events into its life: corrections first, then order, then what can be true beside what. */
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
        List<LifeEvent> standing =
                resolved.standing().stream().sorted(LifeEvent.ORDER).toList();
        LifeEvent born = standing.stream()
                .filter(event -> event.type() == EventType.BIRTH)
                .findFirst()
                .orElse(null);
        List<Mark> marks = new ArrayList<>(resolved.marks());
        if (born == null) {
            standing.forEach(event -> marks.add(new Mark(event, Mark.Kind.NO_BIRTH, "")));
            return new Life(key, null, farm.latest(), null, List.of(), List.of(), null, marks, resolved.withdrawn());
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
            boolean seen = ofAnimal(event.type()) && !MAY_FOLLOW_EXIT.contains(event.type());
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
