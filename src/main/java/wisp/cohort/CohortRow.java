package wisp.cohort;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.Locale;
import wisp.event.Birth;
import wisp.event.CleanlinessScored;
import wisp.event.Named;
import wisp.history.FarmHistory;
import wisp.history.Life;
import wisp.history.LifeEvent;

/**
 * What the cohort's table says of one animal. Absent values are null; nothing here depends on the day of asking.
 *
 * @param bornAt time of birth
 * @param week ISO week of birth, such as 2026-W09
 * @param navelDelayMinutes minutes from birth to the first navel treatment within 24 h
 * @param cleanlinessScore of the first scoring at age 12 h or less, the hours of birth and scoring being known
 * @param cleanlinessPen the pen of that scoring, else of birth
 * @param exit died, left or born-dead
 */
record CohortRow(
        String calf,
        Instant bornAt,
        Boolean birthTimeKnown,
        LocalDate birthDate,
        String season,
        String week,
        String sex,
        Boolean bornAlive,
        String dam,
        String breed,
        String pen,
        Integer ease,
        Integer litterSize,
        Integer damParity,
        Double birthWeightKg,
        Double navelDelayMinutes,
        String navelDelay,
        Integer cleanlinessScore,
        String cleanlinessPen,
        String exit,
        Instant exitAt,
        int events,
        int marks) {

    private static final Duration CLEANLINESS_BY = Duration.ofHours(12);

    static CohortRow of(Life life, FarmHistory farm) {
        if (life.born() == null) {
            return new CohortRow(
                    life.key(),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    0,
                    life.marks().size());
        }
        Birth birth = life.birth();
        LifeEvent scored = firstScored(life);
        CleanlinessScored score = scored == null ? null : (CleanlinessScored) scored.data();
        double delay = NavelDelay.minutes(life);
        return new CohortRow(
                life.key(),
                life.born().time(),
                life.birthTimeKnown(),
                life.birthDate(),
                farm.seasonOf(life.birthDate()),
                week(life.birthDate()),
                word(birth.sex()),
                birth.alive(),
                birth.dam(),
                birth.breed(),
                birth.pen(),
                birth.ease(),
                birth.litterSize(),
                birth.damParity(),
                birth.weightKg(),
                Double.isNaN(delay) ? null : delay,
                NavelDelay.of(life).word(),
                score == null ? null : score.score(),
                score == null || score.pen() == null ? birth.pen() : score.pen(),
                life.exit() == null
                        ? null
                        : life.exit().kind().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                life.exit() == null ? null : life.exit().time(),
                life.events().size(),
                life.marks().size());
    }

    /** The ISO week of a date, such as 2026-W09. */
    static String week(LocalDate date) {
        return String.format(
                Locale.ROOT,
                "%d-W%02d",
                date.get(IsoFields.WEEK_BASED_YEAR),
                date.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    }

    private static LifeEvent firstScored(Life life) {
        if (!life.birthTimeKnown()) {
            return null;
        }
        return life.events().stream()
                .filter(event -> event.data() instanceof CleanlinessScored && event.timeKnown())
                .filter(event -> life.ageAt(event.time()).compareTo(CLEANLINESS_BY) <= 0)
                .findFirst()
                .orElse(null);
    }

    private static String word(Named choice) {
        return choice == null ? null : choice.word();
    }
}
