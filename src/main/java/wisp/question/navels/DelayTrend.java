package wisp.question.navels;

import java.util.Arrays;
import java.util.List;
import wisp.cohort.NavelDelay;
import wisp.statistics.CochranArmitage;
import wisp.statistics.TestResult;
import wisp.statistics.TrendTest;

/** Whether risk rises steadily over the five treated classes, scored 1 to 5: the Cochran–Armitage test. */
final class DelayTrend {
    private static final int TREATED_CLASSES = NavelDelay.NONE_BY_24_H.ordinal();

    private DelayTrend() {}

    /** The signed z as statistic; a positive one says that risk rises with delay. */
    static Tested of(List<DelayClass> classes) {
        int[] cases = new int[TREATED_CLASSES];
        int[] totals = new int[TREATED_CLASSES];
        double[] scores = new double[TREATED_CLASSES];
        for (int i = 0; i < TREATED_CLASSES; i++) {
            cases[i] = classes.get(i).risk().cases();
            totals[i] = classes.get(i).risk().n();
            scores[i] = i + 1.0;
        }
        int sick = Arrays.stream(cases).sum();
        if (sick == 0 || sick == Arrays.stream(totals).sum()) {
            return Tested.none((sick == 0 ? "No" : "Every") + " calf treated by 24 hours fell ill.");
        }
        if (Arrays.stream(totals).filter(n -> n > 0).count() < 2) {
            return Tested.none("All calves treated by 24 hours are of one class.");
        }
        return Tested.of(() -> {
            TrendTest trend = CochranArmitage.normal(cases, totals, scores);
            return new TestResult(trend.z(), 1, trend.pValue(), trend.method());
        });
    }
}
