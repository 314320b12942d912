package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static wisp.statistics.ReferenceFile.assertClose;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class GeneralisedEstimatingEquationsTest {

    @Test
    void agreesWithGeeglmOnTheBacteriaTrial() {
        // R 4.2.2, geepack 1.3.9: geeglm(y ~ week + active + hi, binomial, id, corstr = "exchangeable")
        ReferenceFile file = ReferenceFile.read("gee-bacteria");
        GeneralisedEstimatingEquations fit = GeneralisedEstimatingEquations.exchangeable(
                Columns.outcome(file, "y"),
                file.integers("input/data/id"),
                Columns.design(file, "week", "active", "hi"));
        String[] terms = {"(Intercept)", "week", "active", "hi"};
        for (int j = 0; j < 4; j++) {
            double expected = file.number("expected/exchangeable/coef/" + terms[j]);
            assertClose(expected, fit.coefficients().values()[j], 1e-6, terms[j]);
            double se = file.number("expected/exchangeable/se_robust/" + j);
            assertClose(se, fit.coefficients().standardError(j), 1e-6, terms[j]);
        }
        assertClose(file.number("expected/exchangeable/alpha"), fit.correlation(), 1e-6, "alpha");
        assertClose(file.number("expected/exchangeable/scale"), fit.scale(), 1e-6, "scale");
        assertEquals(
                "GEE, exchangeable, robust, 50 clusters", fit.coefficients().method());
    }

    @Test
    void agreesWithGeeglmOnHerdsWithPleuropneumonia() {
        // R 4.2.2, geepack 1.3.9: rows of lme4::cbpp expanded to single animals, exchangeable by herd
        ReferenceFile file = ReferenceFile.read("gee-cbpp");
        int[] sizes = file.integers("input/data/size");
        int[] cases = file.integers("input/data/incidence");
        int[] herds = file.integers("input/data/herd");
        int[] periods = file.integers("input/data/period");
        int n = Arrays.stream(sizes).sum();
        boolean[] outcomes = new boolean[n];
        int[] clusters = new int[n];
        double[][] design = new double[n][];
        int at = 0;
        for (int i = 0; i < sizes.length; i++) {
            for (int k = 0; k < sizes[i]; k++) {
                outcomes[at] = k < cases[i];
                clusters[at] = herds[i];
                design[at++] =
                        new double[] {1, periods[i] == 2 ? 1 : 0, periods[i] == 3 ? 1 : 0, periods[i] == 4 ? 1 : 0};
            }
        }
        GeneralisedEstimatingEquations fit = GeneralisedEstimatingEquations.exchangeable(outcomes, clusters, design);
        String[] terms = {"(Intercept)", "period2", "period3", "period4"};
        for (int j = 0; j < 4; j++) {
            assertClose(
                    file.number("expected/coef/" + terms[j]), fit.coefficients().values()[j], 1e-6, terms[j]);
            assertClose(
                    file.number("expected/se_robust/" + j), fit.coefficients().standardError(j), 1e-6, terms[j]);
        }
        assertClose(file.number("expected/alpha"), fit.correlation(), 1e-6, "alpha");
    }

    @Test
    void withEqualClustersAndOnlyAnInterceptItIsClusterSampling() {
        // Cochran 1977, Sampling Techniques, section 9.2: the proportion, its variance from the cluster totals; Liang
        // and Zeger 1986, section 3: with m a cluster alpha cancels
        boolean[] outcomes = new boolean[20];
        int[] totals = {3, 0, 1, 4, 2};
        int[] clusters = new int[20];
        double[][] design = new double[20][];
        for (int i = 0; i < 20; i++) {
            clusters[i] = i / 4;
            outcomes[i] = i % 4 < totals[i / 4];
            design[i] = new double[] {1};
        }
        GeneralisedEstimatingEquations fit = GeneralisedEstimatingEquations.exchangeable(outcomes, clusters, design);
        double p = 0.5;
        double sum = Arrays.stream(totals)
                .mapToDouble(t -> (t - 4 * p) * (t - 4 * p))
                .sum();
        assertEquals(0, fit.coefficients().values()[0], 1e-10);
        assertEquals(Math.sqrt(sum) / 20 / (p * (1 - p)), fit.coefficients().standardError(0), 1e-10);
        CannotEstimate single = assertThrows(
                CannotEstimate.class, () -> GeneralisedEstimatingEquations.exchangeable(outcomes, new int[20], design));
        assertEquals(
                "The estimating equations cannot be estimated because there is only one cluster, or none with two rows.",
                single.getMessage());
    }
}
