package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wisp.statistics.ClusterRobust.SmallSample;

class ClusterRobustTest {

    @Test
    void agreesWithVcovClOnTheBacteriaTrial() {
        // R 4.2.2, sandwich 3.0.2: vcovCL(glm(y ~ week + active + hi, binomial, MASS::bacteria), ID)
        ReferenceFile file = ReferenceFile.read("cluster-robust-bacteria");
        RegressionFit fit = Logistic.fit(Columns.outcome(file, "y"), Columns.design(file, "week", "active", "hi"));
        int[] children = file.integers("input/data/id");
        Columns.holds(file, "expected/model", fit.coefficients());
        Columns.holds(file, "expected/hc0_unadjusted", ClusterRobust.of(fit, children, SmallSample.NONE));
        Columns.holds(file, "expected/hc0_cadjust", ClusterRobust.of(fit, children, SmallSample.CLUSTERS));
        Coefficients hc1 = ClusterRobust.of(fit, children, SmallSample.CLUSTERS_AND_COLUMNS);
        Columns.holds(file, "expected/hc1", hc1);
        assertEquals("maximum likelihood, cluster-robust (HC1, 50 clusters)", hc1.method());
        int[] rows = IntStream.range(0, children.length).toArray();
        Columns.holds(file, "expected/hc_plain_nocluster", ClusterRobust.of(fit, rows, SmallSample.NONE));
    }

    @Test
    void agreesWithVcovClOnHerdsWithPleuropneumonia() {
        // R 4.2.2, sandwich 3.0.2: rows of lme4::cbpp expanded to single animals, clustered by herd
        ReferenceFile file = ReferenceFile.read("cluster-robust-cbpp");
        int[] sizes = file.integers("input/data/size");
        List<double[]> rows = new ArrayList<>();
        List<Boolean> outcomes = new ArrayList<>();
        List<Integer> herds = new ArrayList<>();
        for (int i = 0; i < sizes.length; i++) {
            int period = file.integers("input/data/period")[i];
            for (int k = 0; k < sizes[i]; k++) {
                rows.add(new double[] {1, period == 2 ? 1 : 0, period == 3 ? 1 : 0, period == 4 ? 1 : 0});
                outcomes.add(k < file.integers("input/data/incidence")[i]);
                herds.add(file.integers("input/data/herd")[i]);
            }
        }
        boolean[] cases = new boolean[outcomes.size()];
        for (int i = 0; i < cases.length; i++) {
            cases[i] = outcomes.get(i);
        }
        int[] clusters = herds.stream().mapToInt(Integer::intValue).toArray();
        RegressionFit fit = Logistic.fit(cases, rows.toArray(new double[0][]));
        Columns.holds(file, "expected/hc0_unadjusted", ClusterRobust.of(fit, clusters, SmallSample.NONE));
        Columns.holds(file, "expected/hc1", ClusterRobust.of(fit, clusters, SmallSample.CLUSTERS_AND_COLUMNS));
    }

    // Independence is the working correlation of a plain logistic fit; its robust covariance is HC0 by cluster (Liang
    // and Zeger 1986). R 4.2.2, geepack 1.3.9: geeglm(y ~ week + active + hi, binomial, id, corstr = "independence")
    @Test
    void isTheRobustCovarianceOfIndependenceEstimatingEquations() {
        ReferenceFile file = ReferenceFile.read("gee-bacteria");
        RegressionFit fit = Logistic.fit(Columns.outcome(file, "y"), Columns.design(file, "week", "active", "hi"));
        Coefficients robust = ClusterRobust.of(fit, file.integers("input/data/id"), SmallSample.NONE);
        String[] terms = {"(Intercept)", "week", "active", "hi"};
        for (int j = 0; j < 4; j++) {
            double expected = file.number("expected/independence/coef/" + terms[j]);
            ReferenceFile.assertClose(expected, robust.values()[j], 1e-6, terms[j]);
            double error = file.number("expected/independence/se_robust/" + j);
            ReferenceFile.assertClose(error, robust.standardError(j), 1e-6, terms[j]);
        }
    }

    /** The independence fit of the Ohio children, printed in the help of R's geepack, from memory. */
    @Test
    void agreesWithThePrintedErrorsOfTheOhioChildren() {
        Ohio ohio = Ohio.read(false);
        RegressionFit fit = Logistic.fit(ohio.wheeze(), ohio.design());
        Coefficients robust = ClusterRobust.of(fit, ohio.child(), SmallSample.NONE);
        double[][] printed = {{-1.8837, 0.0838, 0.1142}, {-0.1134, 0.0541, 0.0439}, {0.2721, 0.1235, 0.1780}};
        for (int j = 0; j < 3; j++) {
            assertEquals(printed[j][0], robust.values()[j], 6e-5);
            assertEquals(printed[j][1], fit.coefficients().standardError(j), 6e-5);
            assertEquals(printed[j][2], robust.standardError(j), 6e-5);
        }
    }

    @Test
    void clustersThatLeaveNoResidualAreRefused() {
        RegressionFit fit = Logistic.fit(new boolean[] {true, false, true, false}, new double[][] {{1}, {1}, {1}, {1}});
        CannotEstimate refusal = assertThrows(
                CannotEstimate.class, () -> ClusterRobust.of(fit, new int[] {1, 1, 2, 2}, SmallSample.CLUSTERS));
        assertEquals(
                "The cluster-robust covariance cannot be estimated because the residuals of every cluster add up to 0, "
                        + "or nearly so.",
                refusal.getMessage());
    }

    @Test
    void withOnlyAnInterceptItIsTheRatioEstimatorOfClusterSampling() {
        // Cochran 1977, Sampling Techniques, eq. 3.34; Rao and Scott 1992, Biometrics 48:577, eq. 1, without g/(g-1)
        double[] cases = {3, 0, 5, 2};
        double[] sizes = {10, 8, 12, 20};
        RegressionFit fit = Logistic.fitGrouped(cases, sizes, new double[][] {{1}, {1}, {1}, {1}});
        Coefficients robust = ClusterRobust.of(fit, new int[] {1, 2, 3, 4}, SmallSample.NONE);
        double p = 10.0 / 50;
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            sum += (cases[i] - p * sizes[i]) * (cases[i] - p * sizes[i]);
        }
        assertEquals(Math.sqrt(sum) / 50 / (p * (1 - p)), robust.standardError(0), 1e-9);
        assertEquals(
                robust.values()[0] + 3.182446305284263 * robust.standardError(0), // t 0.975 on 3, printed 3.182
                robust.waldT(0, 0.95, 3).high(),
                1e-9);
    }

    @Test
    void oneClusterIsRefused() {
        RegressionFit fit = Logistic.fit(new boolean[] {true, false}, new double[][] {{1}, {1}});
        CannotEstimate refusal =
                assertThrows(CannotEstimate.class, () -> ClusterRobust.of(fit, new int[2], SmallSample.NONE));
        assertEquals(
                "The cluster-robust covariance cannot be estimated because there is only one cluster.",
                refusal.getMessage());
    }
}
