package wisp.question.navels;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import wisp.cohort.Cohort;
import wisp.cohort.NavelDelay;
import wisp.event.EventType;
import wisp.event.NavelTreated;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.indicator.Stratum;
import wisp.indicator.Verdict;

/**
 * A calf at risk at the landmark: alive, present and free of a navel case at 24 h. Where the hour of birth is not
 * known, its ages are counted from the midnight that begins the day of birth.
 *
 * @param verdict what it is to the definition: case or not, and for how long it was followed from 24 h on
 * @param delay the class of the delay from birth to the first navel treatment within 24 h
 * @param minutes that delay in minutes, NaN where there was none or its hour is not known
 * @param birthHourKnown whether the hour of birth is known, and not only its day
 * @param possible on which side of 60 minutes the delay can lie
 * @param season that it was born in
 * @param night born from 22 to 6 h by the farm's clock; false where the hour of birth is not known
 * @param pen where it was born, null where not recorded
 * @param cleanliness first score within 12 h of birth, 0 to 3; null where not recorded
 * @param ease calving ease, 1 to 5; null where not recorded
 * @param colostrumBy6h whether any colostrum is recorded by 6 h; null where no feeding of known time is recorded
 * @param product of the first treatment, null where not recorded
 * @param method of the first treatment, spray or dip; null where not recorded
 */
public record NavelCalf(
        Verdict verdict,
        NavelDelay delay,
        double minutes,
        boolean birthHourKnown,
        PossibleDelay possible,
        String season,
        boolean night,
        String pen,
        Integer cleanliness,
        Integer ease,
        Boolean colostrumBy6h,
        String product,
        String method) {
    private static final Duration COLOSTRUM_BY = Duration.ofHours(6);

    /** Common practice, no source: the hours when a yard sleeps. */
    private static final int NIGHT_FROM = 22;

    private static final int NIGHT_TO = 6;

    static NavelCalf of(Cohort cohort, Verdict verdict) {
        int row = verdict.row();
        Life life = cohort.lives().get(row);
        LifeEvent first = NavelDelay.firstTreatment(life);
        NavelTreated treated = first == null ? null : (NavelTreated) first.data();
        boolean unscored = cohort.table().intColumn("cleanliness_score").isMissing(row);
        return new NavelCalf(
                verdict,
                delay(cohort.table().stringColumn("navel_delay").get(row)),
                cohort.table().doubleColumn("navel_delay_minutes").getDouble(row),
                life.birthTimeKnown(),
                PossibleDelay.of(life),
                cohort.table().column("season").isMissing(row)
                        ? Stratum.NOT_RECORDED
                        : cohort.table().stringColumn("season").get(row),
                life.birthTimeKnown()
                        && night(life.born().time().atZone(life.farm().zone()).getHour()),
                life.birth().pen(),
                unscored ? null : cohort.table().intColumn("cleanliness_score").getInt(row),
                life.birth().ease(),
                colostrum(life),
                treated == null ? null : treated.product(),
                treated == null || treated.method() == null
                        ? null
                        : treated.method().word());
    }

    /** Whether it is a case. */
    public boolean sick() {
        return verdict.part() == Verdict.Part.CASE;
    }

    boolean known() {
        return delay != NavelDelay.UNKNOWN;
    }

    /** Treated after more than 60 minutes, or not by 24 h. */
    boolean late() {
        return known() && delay.compareTo(NavelDelay.TO_60_MIN) > 0;
    }

    /** Of unknown delay, which may have been on either side of 60 minutes. */
    boolean movable() {
        return !known() && possible == PossibleDelay.EITHER;
    }

    boolean early() {
        return known() && !late();
    }

    boolean treated() {
        return known() && delay != NavelDelay.NONE_BY_24_H;
    }

    static boolean night(int hour) {
        return hour >= NIGHT_FROM || hour < NIGHT_TO;
    }

    private static NavelDelay delay(String word) {
        return Arrays.stream(NavelDelay.values())
                .filter(delay -> delay.word().equals(word))
                .findFirst()
                .orElseThrow();
    }

    private static Boolean colostrum(Life life) {
        List<LifeEvent> timed = life.events().stream()
                .filter(event -> event.type() == EventType.COLOSTRUM_FED && event.timeKnown())
                .toList();
        return timed.isEmpty()
                ? null
                : timed.stream().anyMatch(event -> life.ageAt(event.time()).compareTo(COLOSTRUM_BY) <= 0);
    }
}
