package wisp.statistics;

/**
 * The outcome of a test for a linear trend of proportions over scores.
 *
 * @param z signed statistic: positive when the proportion rises with the score
 * @param pValue two-sided p-value
 * @param upperTail one-sided p-value of a rise
 * @param method the textbook name of the method
 */
public record TrendTest(double z, double pValue, double upperTail, String method) {

    /** z squared, to be held to chi-square on one degree of freedom. */
    public double chiSquare() {
        return z * z;
    }
}
