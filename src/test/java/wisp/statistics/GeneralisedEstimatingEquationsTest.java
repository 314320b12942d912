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

    /**
     * The exchangeable fits of the Ohio children that the help of R's gee and geepack prints, from memory, to all its
     * digits. (A tutorial on the web prints others for the same call; its naive standard errors cannot be those of a
     * logistic regression of these rows, so it was not followed.)
     */
    @Test
    void agreesWithThePrintedFitsOfTheOhioChildren() {
        Ohio plain = Ohio.read(false);
        holds(
                new double[][] {{-1.88043, 0.11389}, {-0.11338, 0.04386}, {0.26508, 0.17775}},
                GeneralisedEstimatingEquations.exchangeable(plain.wheeze(), plain.child(), plain.design()),
                5e-6);
        Ohio product = Ohio.read(true);
        holds(
                new double[][] {{-1.90050, 0.11909}, {-0.14124, 0.05820}, {0.31383, 0.18784}, {0.07083, 0.08828}},
                GeneralisedEstimatingEquations.exchangeable(product.wheeze(), product.child(), product.design()),
                6e-6);
    }

    /**
     * Sixteen children of the Six Cities study (Lipsitz and others 1994), data as listed in the SAS/STAT user's guide,
     * GENMOD, "Generalized Estimating Equations"; its printed estimates from memory, up to their common sign, which is
     * that of the outcome modelled. SAS divides the moments by rows less columns and geepack, followed here, does not:
     * that moves the third or fourth decimal, and the correlation from 0.165 to 0.169.
     */
    @Test
    void isNearThePrintedFitOfSixteenChildren() {
        // city (1 Kingston), then smoking and wheeze at 9, 10, 11 and 12 years
        String[] children = {
            "0 01010100", "1 11212020", "1 01001010", "0 00010110", "1 00101010", "0 00101010", "1 10100000",
                    "0 10101020",
            "0 21201010", "1 00000010", "1 11000101", "0 10000000", "1 10011111", "0 10201021", "1 10101021",
                    "0 11112010"
        };
        boolean[] none = new boolean[64];
        int[] child = new int[64];
        double[][] design = new double[64][];
        for (int row = 0; row < 64; row++) {
            String own = children[row / 4];
            int at = 2 + 2 * (row % 4);
            child[row] = row / 4;
            design[row] = new double[] {1, own.charAt(0) - '0', 9 + row % 4, own.charAt(at) - '0'};
            none[row] = own.charAt(at + 1) == '0';
        }
        holds(
                new double[][] {{-1.2751, 3.0561}, {-0.1223, 0.6882}, {0.2036, 0.2789}, {0.0935, 0.3613}},
                GeneralisedEstimatingEquations.exchangeable(none, child, design),
                1e-3);
    }

    private static void holds(double[][] printed, GeneralisedEstimatingEquations fit, double tolerance) {
        for (int j = 0; j < printed.length; j++) {
            assertEquals(printed[j][0], fit.coefficients().values()[j], tolerance);
            assertEquals(printed[j][1], fit.coefficients().standardError(j), tolerance);
        }
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
