package wisp.question;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wisp.history.Episode;
import wisp.history.Life;
import wisp.indicator.Conditions;
import wisp.statistics.CannotEstimate;
import wisp.statistics.Interval;
import wisp.statistics.MantelHaenszel;
import wisp.statistics.MultipleTesting;
import wisp.statistics.RiskRatio;
import wisp.statistics.TwoByTwoTable;

/**
 * Whether dirty calves fell ill more than clean ones of the same pen: a first episode after the scoring and by 21 days
 * of age, among calves whose 21 days are over or that died in them.
 *
 * @param outcome what the illness is
 * @param table dirty calves ill and not, clean calves ill and not
 * @param leftOut scored calves that cannot be judged: too young, left before 21 days, or ill before the scoring
 * @param crude risk ratio, Koopman's score interval; null where it cannot be estimated
 * @param byPen risk ratio within pens, Mantel and Haenszel; null where it cannot be estimated
 * @param p of no association within pens (Cochran, Mantel and Haenszel), not a number where there is none
 * @param adjustedP Holm's adjustment for the illnesses looked at one by one; the same as {@code p} for any illness
 * @param why why a ratio is missing, null where both stand
 */
public record DirtyThenIll(
        String outcome,
        TwoByTwoTable table,
        int leftOut,
        Interval crude,
        Interval byPen,
        double p,
        double adjustedP,
        String why) {
    /** The name of all illnesses together. */
    public static final String ANY = "any illness";

    private static final Duration SPAN = Duration.ofDays(21);

    /** Whether dirty calves fell ill more, or less, by more than chance. */
    public boolean moreThanChance() {
        return byPen != null && adjustedP < 0.05 && (byPen.low() > 1 || byPen.high() < 1);
    }

    /** Any illness first, then each illness that a calf had, in order of their names. */
    static List<DirtyThenIll> of(List<ScoredCalf> calves, Conditions conditions, Instant cut) {
        List<DirtyThenIll> each = new ArrayList<>();
        conditions.titles().forEach((key, title) -> {
            DirtyThenIll one = of(title, key, calves, cut);
            if (one.table.cases() > 0) {
                each.add(one);
            }
        });
        double[] p = each.stream()
                .mapToDouble(DirtyThenIll::p)
                .filter(value -> !Double.isNaN(value))
                .toArray();
        double[] adjusted = p.length == 0 ? p : MultipleTesting.holm(p);
        List<DirtyThenIll> all = new ArrayList<>();
        all.add(of(ANY, null, calves, cut));
        int next = 0;
        for (DirtyThenIll one : each) {
            all.add(Double.isNaN(one.p) ? one : one.adjusted(adjusted[next++]));
        }
        return all;
    }

    private DirtyThenIll adjusted(double value) {
        return new DirtyThenIll(outcome, table, leftOut, crude, byPen, p, value, why);
    }

    private static DirtyThenIll of(String outcome, String condition, List<ScoredCalf> calves, Instant cut) {
        Map<String, int[]> cells = new TreeMap<>();
        int leftOut = 0;
        for (ScoredCalf calf : calves) {
            Boolean ill = ill(calf, condition, cut);
            if (ill == null) {
                leftOut++;
            } else {
                cells.computeIfAbsent(calf.pen(), pen -> new int[4])[(calf.dirty() ? 0 : 2) + (ill ? 0 : 1)]++;
            }
        }
        int[] sums = new int[4];
        List<TwoByTwoTable> strata = new ArrayList<>();
        for (int[] pen : cells.values()) {
            strata.add(new TwoByTwoTable(pen[0], pen[1], pen[2], pen[3]));
            for (int i = 0; i < 4; i++) {
                sums[i] += pen[i];
            }
        }
        return estimated(outcome, new TwoByTwoTable(sums[0], sums[1], sums[2], sums[3]), strata, leftOut);
    }

    private static DirtyThenIll estimated(
            String outcome, TwoByTwoTable table, List<TwoByTwoTable> strata, int leftOut) {
        Interval crude = null;
        Interval byPen = null;
        double p = Double.NaN;
        String why = null;
        try {
            crude = RiskRatio.of(table, DirtyShare.LEVEL, RiskRatio.Method.KOOPMAN_SCORE);
            byPen = MantelHaenszel.riskRatio(strata, DirtyShare.LEVEL);
            p = MantelHaenszel.chiSquare(strata, true).pValue();
        } catch (CannotEstimate cannot) {
            why = cannot.getMessage();
        }
        return new DirtyThenIll(outcome, table, leftOut, crude, byPen, p, p, why);
    }

    /** Whether it fell ill; null where nobody can say. */
    private static Boolean ill(ScoredCalf calf, String condition, Instant cut) {
        Life life = calf.life();
        Instant end = life.born().time().plus(SPAN);
        boolean died = life.exit() != null && life.exit().death();
        boolean left = life.exit() != null && !died && life.exit().time().isBefore(end);
        boolean young = cut.isBefore(end) && !(died && !life.exit().time().isAfter(cut));
        if (left || young) {
            return null;
        }
        for (Episode episode : life.episodes()) {
            if ((condition == null || condition.equals(episode.condition()))
                    && !episode.opened().isAfter(end)
                    && !episode.opened().isAfter(cut)) {
                return episode.opened().isAfter(calf.scored()) ? Boolean.TRUE : null;
            }
        }
        return false;
    }
}
