package wisp.indicator;

import java.util.List;
import java.util.Map;
import wisp.statistics.Interval;

/**
 * A figure as it is shown: never a value alone, but with its interval, its counts, what is still open, what was left
 * out, and every calf behind it.
 *
 * @param indicator the definition
 * @param name the stratum, empty for the whole
 * @param season the season asked for
 * @param numerator calves or episodes with the outcome
 * @param denominator calves or episodes; days for a rate
 * @param interval value and limits in the measure's unit, null where it cannot be computed
 * @param why why it cannot be computed, null where it can
 * @param pending calves that the cut of follow-up leaves open
 * @param excluded calves, or marked events, left out, by reason
 * @param attrition the steps from all calves asked for to those counted
 * @param verdicts what each calf is to it
 * @param strata the same for each stratum, empty where nothing was asked
 * @param comparison with the last season, or of a stratum with all others; null where there is none
 */
public record Estimate(
        Indicator indicator,
        String name,
        String season,
        int numerator,
        double denominator,
        Interval interval,
        String why,
        int pending,
        Map<String, Integer> excluded,
        List<Attrition> attrition,
        List<Verdict> verdicts,
        List<Estimate> strata,
        Comparison comparison) {

    /** From this many calves on it is not their number that leaves a target open. */
    private static final int ENOUGH_FOR_A_TARGET = 100;

    /**
     * One step in which calves drop out.
     *
     * @param reason why
     * @param before calves before the step
     * @param lost calves lost in it
     */
    public record Attrition(String reason, int before, int lost) {}

    /** How it stands to its published target, null without a target or an interval. */
    public Target.Standing standing() {
        return standing(indicator.target());
    }

    /** How it stands to a target, null without one or without an interval. */
    public Target.Standing standing(Target target) {
        return target == null || interval == null ? null : target.standing(interval.low(), interval.high());
    }

    /** Whether so few calves, or episodes, are counted that their number alone may leave a target open. */
    public boolean few() {
        return verdicts.stream().filter(Verdict::atRisk).count() < ENOUGH_FOR_A_TARGET;
    }

    Estimate with(List<Estimate> otherStrata, Comparison other) {
        return new Estimate(
                indicator,
                name,
                season,
                numerator,
                denominator,
                interval,
                why,
                pending,
                excluded,
                attrition,
                verdicts,
                otherStrata,
                other);
    }
}
