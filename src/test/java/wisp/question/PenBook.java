package wisp.question;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.indicator.Definitions;
import wisp.indicator.Selection;
import wisp.testing.Calf;
import wisp.testing.Events;

/** A notebook of calves born a quarter of an hour apart, each scored an hour later, for tests of the pens' answer. */
final class PenBook {
    static final Definitions SHIPPED = Definitions.load(null);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    private final Events events = Events.london();
    private LocalDateTime next;
    private int calves;

    PenBook() {
        this(2026);
    }

    /** A notebook that starts on the second of January of a year. */
    PenBook(int year) {
        next = LocalDateTime.of(year, 1, 2, 6, 0);
    }

    Events events() {
        return events;
    }

    /** Calves born in a pen and scored 2, and others born there and scored 0. */
    PenBook pen(String name, int dirty, int n) {
        for (int i = 0; i < n; i++) {
            scored(name, i < dirty ? 2 : 0);
        }
        return this;
    }

    /** A calf born in a pen (null: nobody wrote down where) and scored there. */
    Calf scored(String pen, int score) {
        Calf calf = born(pen);
        calf.aged(Duration.ofHours(1), "cleanliness-scored", "score: " + score);
        return calf;
    }

    /** A calf born in a pen and not scored. */
    Calf born(String pen) {
        next = next.plusMinutes(15);
        return new Calf(events, "calf-" + ++calves)
                .born(MINUTE.format(next), pen == null ? "alive: true" : "alive: true, pen: " + pen);
    }

    /** From here on calves are born from a day on. */
    PenBook from(String day) {
        next = LocalDateTime.parse(day + "T06:00");
        return this;
    }

    Cohort cohort() {
        Herd herd = Herd.following();
        herd.apply(events.all());
        return herd.cohort();
    }

    PensAnswer answer() {
        return new PensQuestion(SHIPPED).of(cohort(), Selection.NEWEST);
    }
}
