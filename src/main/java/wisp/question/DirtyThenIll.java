package wisp.question;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
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
 * @param behind the calves of those counts, and the scored ones that cannot be judged: too young, left before 21 days,
 *     or ill before the scoring
 * @param crude risk ratio, Koopman's score interval; null where it cannot be estimated
 * @param byPen risk ratio within pens, Mantel and Haenszel; null where it cannot be estimated
 * @param p of no association within pens (Cochran, Mantel and Haenszel), not a number where there is none
 * @param adjustedP Holm's adjustment for the illnesses looked at one by one; the same as {@code p} for any illness
 * @param why why a ratio is missing, null where both stand
 */
public record DirtyThenIll(
        String outcome,
        TwoByTwoTable table,
        IllCalves behind,
        Interval crude,
        Interval byPen,
        double p,
        double adjustedP,
        String why) {
    /** The name of all illnesses together. */
    public static final String ANY = "any illness";

    private static final Duration SPAN = Duration.ofDays(21);

    /** How many scored calves cannot be judged. */
    public int leftOut() {
        return behind.leftOut().count();
    }

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
        return new DirtyThenIll(outcome, table, behind, crude, byPen, p, value, why);
    }

    private static DirtyThenIll of(String outcome, String condition, List<ScoredCalf> calves, Instant cut) {
        List<ScoredCalf> ill = new ArrayList<>();
        List<ScoredCalf> judged = new ArrayList<>();
        List<ScoredCalf> leftOut = new ArrayList<>();
        for (ScoredCalf calf : calves) {
            Boolean fell = ill(calf, condition, cut);
            (fell == null ? leftOut : judged).add(calf);
            if (Boolean.TRUE.equals(fell)) {
                ill.add(calf);
            }
        }
        String id = "ill." + (condition == null ? "any" : condition) + ".";
        String had = ": " + outcome + " by 21 days";
        IllCalves behind = new IllCalves(
                list(id + "dirty-ill", "Dirty calves" + had, ill, true),
                list(id + "dirty", "Dirty calves that can be judged" + had, judged, true),
                list(id + "clean-ill", "Clean calves" + had, ill, false),
                list(id + "clean", "Clean calves that can be judged" + had, judged, false),
                new ScoredCalves(id + "left-out", "Scored calves that cannot be judged" + had, leftOut));
        return estimated(outcome, behind);
    }

    private static ScoredCalves list(String id, String title, List<ScoredCalf> calves, boolean dirty) {
        return new ScoredCalves(
                id, title, calves.stream().filter(calf -> calf.dirty() == dirty).toList());
    }

    private static TwoByTwoTable table(IllCalves behind, Predicate<ScoredCalf> in) {
        int dirtyIll = count(behind.dirtyIll(), in);
        int cleanIll = count(behind.cleanIll(), in);
        return TwoByTwoTable.ofGroups(dirtyIll, count(behind.dirty(), in), cleanIll, count(behind.clean(), in));
    }

    private static int count(ScoredCalves calves, Predicate<ScoredCalf> in) {
        return (int) calves.calves().stream().filter(in).count();
    }

    private static DirtyThenIll estimated(String outcome, IllCalves behind) {
        TwoByTwoTable table = table(behind, calf -> true);
        List<TwoByTwoTable> strata = Stream.concat(behind.dirty().calves().stream(), behind.clean().calves().stream())
                .map(ScoredCalf::pen)
                .distinct()
                .sorted()
                .map(pen -> table(behind, calf -> calf.pen().equals(pen)))
                .toList();
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
        return new DirtyThenIll(outcome, table, behind, crude, byPen, p, p, why);
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
