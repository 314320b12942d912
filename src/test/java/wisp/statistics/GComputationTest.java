package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wisp.statistics.ReferenceFile.assertClose;

import org.junit.jupiter.api.Test;

class GComputationTest {

    @Test
    void agreesWithTheDeltaMethodWrittenOutInR() {
        // R 4.2.2: glm(low ~ smoke + age + lwt, binomial, MASS::birthwt), averaged over the rows
        ReferenceFile file = ReferenceFile.read("g-computation-birthwt");
        double[][] design = Columns.design(file, "smoke", "age", "lwt");
        RegressionFit fit = Logistic.fit(Columns.outcome(file, "low"), design);
        GComputation risks =
                GComputation.of(fit.coefficients(), Design.with(design, 1, 1), Design.with(design, 1, 0), 0.95);
        assertClose(file.number("expected/risk1"), risks.exposed().value(), 1e-8, "exposed");
        assertClose(file.number("expected/risk0"), risks.unexposed().value(), 1e-8, "unexposed");
        assertClose(file.number("expected/rd"), risks.difference().value(), 1e-8, "difference");
        assertClose(file.number("expected/rr"), risks.ratio().value(), 1e-8, "ratio");
        double z = 1.959963984540054;
        double halfDifference = (risks.difference().high() - risks.difference().low()) / 2;
        double halfLogRatio = Math.log(risks.ratio().high() / risks.ratio().low()) / 2;
        assertClose(file.number("expected/rd_se"), halfDifference / z, 1e-6, "se of the difference");
        assertClose(file.number("expected/log_rr_se"), halfLogRatio / z, 1e-6, "se of the log ratio");
    }

    @Test
    void withoutCovariatesItIsTheTwoByTwoTable() {
        // Willeberg 1977, cats on dry food 13 of 2176 against 5 of 3354: risk ratio 4.008 (1.431-11.225), Katz, as
        // printed by the epiR manual; the delta method on the log scale is Katz's there
        double[][] design = {{1, 1}, {1, 0}};
        RegressionFit fit = Logistic.fitGrouped(new double[] {13, 5}, new double[] {2176, 3354}, design);
        GComputation risks =
                GComputation.of(fit.coefficients(), Design.with(design, 1, 1), Design.with(design, 1, 0), 0.95);
        assertEquals(13.0 / 2176, risks.exposed().value(), 1e-9);
        assertEquals(4.008, risks.ratio().value(), 5e-4);
        assertEquals(1.431, risks.ratio().low(), 5e-4);
        assertEquals(11.225, risks.ratio().high(), 5e-4);
    }
}
