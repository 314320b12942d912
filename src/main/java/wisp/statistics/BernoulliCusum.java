package wisp.statistics;

/**
 * The cumulative sum chart of single yes-or-no outcomes in their order, which signals a rise of the risk: Reynolds
 * &amp; Stoumbos (1999) J Qual Technol 31:87. From S = 0, each outcome gives S = max(0, S + step); an alarm is S at
 * the limit or above. The chart goes on after an alarm as it is; starting it anew is the reader's decision.
 *
 * @param up step of a case, above 0
 * @param down step of a non-case, below 0
 * @param limit where the alarm is, above 0
 */
public record BernoulliCusum(double up, double down, double limit) {

    private static final String WHAT = "The Bernoulli CUSUM";

    /**
     * Checks the steps.
     *
     * @throws CannotEstimate if up or limit are not above 0 or down is not below 0
     */
    public BernoulliCusum {
        Require.positive(WHAT, "the step of a case", up);
        Require.positive(WHAT, "the opposite of the step of a non-case", -down);
        Require.positive(WHAT, "its limit", limit);
    }

    /**
     * The likelihood-ratio chart: log(p1/p0) for a case, log((1-p1)/(1-p0)) for a non-case.
     *
     * @param acceptable p0, the risk in control
     * @param raised p1, the risk to be found soon, above p0
     * @throws CannotEstimate if not 0 &lt; p0 &lt; p1 &lt; 1 or the limit is not above 0
     */
    public static BernoulliCusum likelihoodRatio(double acceptable, double raised, double limit) {
        Require.fraction(WHAT, "the acceptable risk", acceptable);
        Require.fraction(WHAT, "the raised risk", raised);
        if (raised <= acceptable) {
            throw new CannotEstimate(
                    WHAT, "the raised risk, " + raised + ", is not above the acceptable one, " + acceptable);
        }
        return new BernoulliCusum(Math.log(raised / acceptable), Math.log1p(-raised) - Math.log1p(-acceptable), limit);
    }

    /**
     * The chart on whole numbers: a case adds so many points, a non-case takes one.
     *
     * @param points what a case adds, at least 1
     * @param limit the alarm, at least 1
     */
    public static BernoulliCusum wholeNumbers(int points, int limit) {
        return new BernoulliCusum(points, -1, limit);
    }

    /**
     * The likelihood-ratio chart with the smallest limit whose average run length in control is at least the wanted
     * one.
     *
     * @param averageRunLength observations between false alarms, above 1
     * @throws CannotEstimate if the risks or the length are out of range
     */
    public static BernoulliCusum withRunLength(double acceptable, double raised, double averageRunLength) {
        double limit = RunLength.limitFor(
                WHAT,
                averageRunLength,
                at -> likelihoodRatio(acceptable, raised, at).averageRunLength(acceptable));
        return likelihoodRatio(acceptable, raised, limit);
    }

    /** The sum after each outcome. */
    public double[] path(boolean[] outcomes) {
        double[] path = new double[outcomes.length];
        double sum = 0;
        for (int t = 0; t < path.length; t++) {
            sum = Math.max(0, sum + (outcomes[t] ? up : down));
            path[t] = sum;
        }
        return path;
    }

    /** The index of the first outcome with an alarm, counted from 0, or -1. */
    public int firstAlarm(boolean[] outcomes) {
        double[] path = path(outcomes);
        for (int t = 0; t < path.length; t++) {
            if (path[t] >= limit - RunLength.TIE) {
                return t;
            }
        }
        return -1;
    }

    /**
     * The average number of outcomes until an alarm at a constant risk, from S = 0; exact.
     *
     * @throws CannotEstimate if the risk is not in (0, 1), or an alarm is too unlikely to be counted
     */
    public double averageRunLength(double risk) {
        Require.fraction(WHAT, "the risk", risk);
        return RunLength.average(
                WHAT, y -> y == 0 ? 1 - risk : risk, y -> y == 0 ? 1 : y == 1 ? risk : 0, 1, up - down, -down, limit);
    }
}
