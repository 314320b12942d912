package wisp.statistics;

/**
 * The E-value: how strongly an unmeasured confounder would have to be tied to both exposure and outcome, as a risk
 * ratio with each, to explain away an observed risk ratio.
 *
 * <p>E = RR + sqrt(RR (RR - 1)); a ratio below 1 is inverted first (VanderWeele and Ding 2017, Ann Intern Med 167:268).
 * Of an interval, the limit nearer to 1 is taken, and E is 1 when the interval holds 1. An odds or rate ratio stands in
 * for a risk ratio only where the outcome is rare.
 *
 * @param estimate the E-value of the ratio itself
 * @param limit the E-value of the confidence limit nearer to 1
 */
public record EValue(double estimate, double limit) {

    /** The E-value of one risk ratio. */
    public static double of(double riskRatio) {
        Require.positive("The E-value", "the risk ratio", riskRatio);
        double away = riskRatio < 1 ? 1 / riskRatio : riskRatio;
        return away + Math.sqrt(away * (away - 1));
    }

    /** The E-values of a risk ratio and of its interval. */
    public static EValue of(Interval riskRatio) {
        double estimate = of(riskRatio.value());
        if (riskRatio.low() <= 1 && riskRatio.high() >= 1) {
            return new EValue(estimate, 1);
        }
        return new EValue(estimate, of(riskRatio.value() > 1 ? riskRatio.low() : riskRatio.high()));
    }
}
