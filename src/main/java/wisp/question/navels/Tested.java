package wisp.question.navels;

import java.util.function.Supplier;
import wisp.statistics.CannotEstimate;
import wisp.statistics.TestResult;

/**
 * What a test found, or the reason why there was nothing to test.
 *
 * @param statistic its statistic, NaN where the test has none
 * @param p two-sided p-value, NaN where there was nothing to test
 * @param method the textbook name, empty where there was nothing to test
 * @param why a whole sentence, null where there is a p-value
 */
public record Tested(double statistic, double p, String method, String why) {

    static Tested p(String method, Supplier<Double> test) {
        try {
            return new Tested(Double.NaN, test.get(), method, null);
        } catch (CannotEstimate cannot) {
            return none(cannot.getMessage());
        }
    }

    static Tested of(Supplier<TestResult> test) {
        try {
            TestResult result = test.get();
            return new Tested(result.statistic(), result.pValue(), result.method(), null);
        } catch (CannotEstimate cannot) {
            return none(cannot.getMessage());
        }
    }

    static Tested none(String why) {
        return new Tested(Double.NaN, Double.NaN, "", why);
    }

    /** Whether there is a p-value. */
    public boolean known() {
        return why == null;
    }
}
