package wisp.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How many to observe. Sizes come out as fractions, to be rounded up by whoever reports them; a design effect, 1 + (m -
 * 1)ρ for clusters of m with intra-class correlation ρ (Kish 1965, Survey Sampling), multiplies them.
 *
 * <p>Two risks, equal groups, two-sided level α, without continuity correction (Fleiss, Statistical Methods for Rates
 * and Proportions, 2nd ed. 1981, ch. 3; as R's {@code power.prop.test} and epiR's {@code epi.sscohortc}), with p
 * the mean of the two:
 *
 * <pre>n = (z(1-α/2) √(2p(1-p)) + z(power) √(p1(1-p1) + p0(1-p0)))² / (p1 - p0)²</pre>
 *
 * <p>The chance of a significant result in the wrong direction is left out of the power, as in both packages.
 */
public final class SampleSize {

    private static final String WHAT = "The sample size";

    private static final String POWER = "The power";

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private SampleSize() {}

    /**
     * The size of each of two groups.
     *
     * @param exposedRisk p1, strictly between 0 and 1
     * @param unexposedRisk p0, strictly between 0 and 1, other than p1
     * @param level confidence level, 0.95 for a two-sided test at 0.05
     * @param power wanted chance of a significant result, strictly between 0 and 1
     * @param designEffect 1 for independent animals, more in clusters
     * @throws CannotEstimate if a number is out of its range or the risks are equal
     */
    public static double twoRisks(
            double exposedRisk, double unexposedRisk, double level, double power, double designEffect) {
        requireRisks(WHAT, exposedRisk, unexposedRisk);
        Require.fraction(WHAT, "the power", power);
        requireDesignEffect(WHAT, designEffect);
        double root = Require.normalQuantile(WHAT, level) * nullDeviation(exposedRisk, unexposedRisk)
                + NORMAL.inverseCumulativeProbability(power) * deviation(exposedRisk, unexposedRisk);
        double difference = exposedRisk - unexposedRisk;
        if (root <= 0) {
            throw new CannotEstimate(WHAT, "so little power, " + power + ", is had without any observation");
        }
        return designEffect * root * root / (difference * difference);
    }

    /**
     * The power of two groups of a given size.
     *
     * @param groupSize members of each group, above 0
     * @throws CannotEstimate if a number is out of its range or the risks are equal
     */
    public static double powerOfTwoRisks(
            double exposedRisk, double unexposedRisk, double level, double groupSize, double designEffect) {
        requireRisks(POWER, exposedRisk, unexposedRisk);
        Require.positive(POWER, "the size of a group", groupSize);
        requireDesignEffect(POWER, designEffect);
        double distance = Math.sqrt(groupSize / designEffect) * Math.abs(exposedRisk - unexposedRisk);
        double z = Require.normalQuantile(POWER, level);
        return NORMAL.cumulativeProbability(
                (distance - z * nullDeviation(exposedRisk, unexposedRisk)) / deviation(exposedRisk, unexposedRisk));
    }

    /**
     * How many to observe so that a risk is known within a margin, z² p(1-p)/d² (Lwanga &amp; Lemeshow, Sample Size
     * Determination in Health Studies, WHO 1991; as epiR's {@code epi.sssimpleestb}, absolute error).
     *
     * @param risk expected risk, strictly between 0 and 1; 0.5 asks for the most
     * @param margin d, half the width of the interval, strictly between 0 and 1
     * @throws CannotEstimate if a number is out of its range
     */
    public static double precisionOfRisk(double risk, double margin, double level, double designEffect) {
        Require.fraction(WHAT, "the expected risk", risk);
        Require.fraction(WHAT, "the margin", margin);
        requireDesignEffect(WHAT, designEffect);
        double z = Require.normalQuantile(WHAT, level);
        return designEffect * z * z * risk * (1 - risk) / (margin * margin);
    }

    /**
     * The design effect of clusters, 1 + (m - 1)ρ.
     *
     * @param clusterSize m, members of a cluster, at least 1
     * @param rho intra-class correlation, 0 to 1
     * @throws CannotEstimate if a number is out of its range
     */
    public static double designEffect(double clusterSize, double rho) {
        if (!(clusterSize >= 1 && Double.isFinite(clusterSize) && rho >= 0 && rho <= 1)) {
            throw new CannotEstimate(
                    "The design effect",
                    "clusters of " + clusterSize + " with correlation " + rho + " are not 1 or more with 0 to 1");
        }
        return 1 + (clusterSize - 1) * rho;
    }

    private static double nullDeviation(double p1, double p0) {
        double mean = (p1 + p0) / 2;
        return Math.sqrt(2 * mean * (1 - mean));
    }

    private static double deviation(double p1, double p0) {
        return Math.sqrt(p1 * (1 - p1) + p0 * (1 - p0));
    }

    private static void requireRisks(String what, double p1, double p0) {
        Require.fraction(what, "the exposed risk", p1);
        Require.fraction(what, "the unexposed risk", p0);
        if (p1 == p0) {
            throw new CannotEstimate(what, "the two risks are equal");
        }
    }

    private static void requireDesignEffect(String what, double designEffect) {
        if (!(designEffect >= 1 && Double.isFinite(designEffect))) {
            throw new CannotEstimate(what, "the design effect, " + designEffect + ", is below 1");
        }
    }
}
