package wisp.statistics;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * What a significance test found.
 *
 * @param statistic the test statistic, such as a chi-square
 * @param degreesOfFreedom its degrees of freedom
 * @param pValue the probability of a statistic at least as large if the tested hypothesis holds, 0 to 1
 * @param method the textbook name of the test, such as "Pearson chi-square"
 */
public record TestResult(double statistic, int degreesOfFreedom, double pValue, String method) {

    /** A chi-square statistic with its upper tail. */
    static TestResult chiSquare(double statistic, int degreesOfFreedom, String method) {
        double p = ChiSquaredDistribution.of(degreesOfFreedom).survivalProbability(statistic);
        return new TestResult(statistic, degreesOfFreedom, p, method);
    }
}
