package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.statistics.ReferenceFile.assertClose;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LogisticTest {

    @Test
    void agreesWithGlmOnBirthWeight() {
        // R 4.2.2: glm(low ~ age + lwt + black + other + smoke + ht, binomial, MASS::birthwt)
        ReferenceFile births = ReferenceFile.read("logistic-birthwt");
        RegressionFit fit = Logistic.fit(
                Columns.outcome(births, "low"), Columns.design(births, "age", "lwt", "black", "other", "smoke", "ht"));
        Columns.holds(births, "expected", fit.coefficients());
        assertClose(births.number("expected/deviance"), fit.deviance(), 1e-9, "deviance");
        assertClose(births.number("expected/null_deviance"), fit.nullDeviance(), 1e-9, "null deviance");
        assertClose(births.number("expected/loglik"), fit.logLikelihood(), 1e-9, "log likelihood");
        assertClose(births.number("expected/aic"), fit.aic(), 1e-9, "AIC");
        double[][] covariance = births.matrix("expected/vcov");
        // confint interpolates its profile and is good to four digits; here its equations are solved to 1e-14
        double[][] profile =
                ReferenceFile.read("logistic-birthwt-profile-tight").matrix("expected/profile");
        for (int j = 0; j < covariance.length; j++) {
            for (int k = 0; k < covariance.length; k++) {
                assertClose(covariance[j][k], fit.coefficients().covariance()[j][k], 1e-6, "covariance");
            }
            Interval limits = fit.profile(j, 0.95);
            assertClose(profile[j][0], limits.low(), 1e-5, "profile low " + j);
            assertClose(profile[j][1], limits.high(), 1e-5, "profile high " + j);
        }
        assertFalse(fit.penalised());
        assertEquals("maximum likelihood", fit.coefficients().method());
    }

    @Test
    void agreesWithThePrintedModelOfHosmerAndLemeshow() {
        // Printed values quoted from memory:
        // Hosmer and Lemeshow 2000, Applied Logistic Regression, table 2.4: low on lwt and race
        ReferenceFile births = ReferenceFile.read("logistic-birthwt");
        RegressionFit fit =
                Logistic.fit(Columns.outcome(births, "low"), Columns.design(births, "lwt", "black", "other"));
        double[] printed = {0.806, -0.015, 1.081, 0.481};
        double[] errors = {0.8452, 0.0064, 0.4881, 0.3567};
        for (int j = 0; j < 4; j++) {
            assertEquals(printed[j], fit.coefficients().values()[j], 5e-4);
            assertEquals(errors[j], fit.coefficients().standardError(j), 5e-5);
        }
        assertEquals(-111.630, fit.logLikelihood(), 5e-4);
    }

    @Test
    void agreesWithGlmOnGroupedCounts() {
        // R 4.2.2: glm(cbind(cases, controls) ~ age + alc + tob, binomial, esoph)
        ReferenceFile esoph = ReferenceFile.read("logistic-grouped-esoph");
        double[] cases = esoph.numbers("input/data/cases");
        double[] trials = esoph.numbers("input/data/controls");
        for (int i = 0; i < trials.length; i++) {
            trials[i] += cases[i];
        }
        RegressionFit fit = Logistic.fitGrouped(cases, trials, Columns.design(esoph, "age", "alc", "tob"));
        Columns.holds(esoph, "expected", fit.coefficients());
        assertClose(esoph.number("expected/deviance"), fit.deviance(), 1e-9, "deviance");
    }

    @Test
    void oneIndicatorIsTheOddsRatioOfTheTable() {
        // Doll and Hill 1950, BMJ 2:739: odds ratio (647 * 27) / (2 * 622) with Woolf's standard error
        RegressionFit fit = Logistic.fitGrouped(
                new double[] {647, 2}, new double[] {647 + 622, 2 + 27}, new double[][] {{1, 1}, {1, 0}});
        assertEquals(647.0 * 27 / (2 * 622), fit.coefficients().ratio(1, 0.95).value(), 1e-8);
        double woolf = Math.sqrt(1 / 647.0 + 1 / 2.0 + 1 / 622.0 + 1 / 27.0);
        assertEquals(woolf, fit.coefficients().standardError(1), 1e-9);
        assertEquals(0, fit.deviance(), 1e-8);
    }

    @Test
    void separationIsAnsweredByFirthsPenaltyAndSaid() {
        // Firth's modified scores written out in R 4.2.2, ten rows separated by x
        ReferenceFile separated = ReferenceFile.read("firth-separation");
        RegressionFit fit = Logistic.fit(Columns.outcome(separated, "y"), Columns.design(separated, "x", "z"));
        holdsFirth(separated, fit);
        assertTrue(fit.penalised());
        assertEquals(
                "Firth's penalised likelihood, because the columns separate the outcome",
                fit.coefficients().method());
        Interval x = fit.profile(1, 0.95);
        assertEquals("penalised profile likelihood", x.method());
        assertTrue(x.low() < x.value() && x.value() < x.high());
    }

    @Test
    void firthAgreesWithTheModifiedScoresOnBirthWeight() {
        ReferenceFile births = ReferenceFile.read("firth-birthwt");
        holdsFirth(births, Logistic.firth(Columns.outcome(births, "low"), Columns.design(births, "smoke", "ht", "ui")));
    }

    @Test
    void firthOfOneIndicatorAddsAHalfToEachCell() {
        // Firth 1993, section 3.3 (Haldane 1956, Anscombe 1956): 0 of 5 against 4 of 7
        boolean[] outcomes = new boolean[12];
        double[][] design = new double[12][];
        for (int i = 0; i < 12; i++) {
            outcomes[i] = i >= 8;
            design[i] = new double[] {1, i < 5 ? 0 : 1};
        }
        RegressionFit fit = Logistic.fit(outcomes, design);
        assertTrue(fit.penalised());
        assertEquals(Math.log(0.5 / 5.5), fit.coefficients().values()[0], 1e-7);
        assertEquals(
                Math.log(4.5 / 3.5),
                fit.coefficients().values()[0] + fit.coefficients().values()[1],
                1e-7);
    }

    @Test
    void aRareOutcomeIsNotTakenForSeparation() {
        RegressionFit fit = Logistic.fitGrouped(
                new double[] {1, 3}, new double[] {1_000_000, 1_000_000}, new double[][] {{1, 0}, {1, 1}});
        assertFalse(fit.penalised());
        assertEquals(Math.log(1 / 999_999.0), fit.coefficients().values()[0], 1e-8);
        assertEquals(Math.sqrt(1 + 1.0 / 3 + 2e-6), fit.coefficients().standardError(1), 1e-6);
    }

    @Test
    void aGroupWithoutCasesAmongManyRowsIsSeparation() {
        int n = 20_000;
        boolean[] outcomes = new boolean[n];
        double[][] design = new double[n][];
        for (int i = 0; i < n; i++) {
            design[i] = new double[] {1, i % 10 == 0 ? 1 : 0};
            outcomes[i] = i % 100 == 1;
        }
        RegressionFit fit = Logistic.fit(outcomes, design);
        assertTrue(fit.penalised());
        // 0 of 2,000 with a half added to each cell (Firth 1993, section 3.3)
        double logOdds = fit.coefficients().values()[0] + fit.coefficients().values()[1];
        assertEquals(Math.log(0.5 / 2000.5), logOdds, 1e-6);
    }

    @Test
    void badInputIsRefusedInWholeSentences() {
        double[][] design = {{1, 0}, {1, 1}, {1, 2}};
        refuses(
                "The logistic regression cannot be estimated because there are no observations.",
                new boolean[0],
                design);
        refuses(
                "The logistic regression cannot be estimated because the outcome does not vary: every row is a case.",
                new boolean[] {true, true, true},
                design);
        refuses(
                "The logistic regression cannot be estimated because row 2 holds NaN, not a finite number.",
                new boolean[] {true, false, true},
                new double[][] {{1, 0}, {1, Double.NaN}, {1, 2}});
        refuses(
                "The logistic regression cannot be estimated because column 3 is a combination of those before it "
                        + "(collinear, or all 0).",
                new boolean[] {true, false, true, false},
                new double[][] {{1, 0, 1}, {1, 1, 3}, {1, 2, 5}, {1, 5, 11}});
        refuses(
                "The logistic regression cannot be estimated because column 2 is a combination of those before it "
                        + "(collinear, or all 0).",
                new boolean[] {true},
                new double[][] {{1, 3}});
    }

    @ParameterizedTest
    @ValueSource(longs = {51, 52, 53})
    void neitherOrderNorUnitNorLabelMatters(long seed) {
        System.out.println("Logistic rows drawn with seed " + seed);
        Random random = new Random(seed);
        int n = 120;
        boolean[] outcomes = new boolean[n];
        boolean[] others = new boolean[n];
        double[][] design = new double[n][];
        double[][] other = new double[n][];
        for (int i = 0; i < n; i++) {
            double x = random.nextGaussian();
            design[i] = new double[] {1, x, random.nextInt(2)};
            outcomes[i] = random.nextDouble() < 1 / (1 + Math.exp(0.5 - x));
            others[n - 1 - i] = !outcomes[i];
            other[n - 1 - i] = new double[] {1, 1000 * x, design[i][2]};
        }
        RegressionFit fit = Logistic.fit(outcomes, design);
        RegressionFit turned = Logistic.fit(others, other);
        assertClose(
                fit.coefficients().values()[1], -1000 * turned.coefficients().values()[1], 1e-7, "slope");
        assertClose(
                fit.coefficients().standardError(1),
                1000 * turned.coefficients().standardError(1),
                1e-7,
                "se");
        assertClose(fit.deviance(), turned.deviance(), 1e-9, "deviance");
        Interval profile = fit.profile(1, 0.9);
        assertClose(profile.low(), -1000 * turned.profile(1, 0.9).high(), 1e-6, "profile");
        double sum = 0;
        for (double p : fit.fitted()) {
            sum += p;
        }
        double cases = 0;
        for (boolean y : outcomes) {
            cases += y ? 1 : 0;
        }
        assertEquals(cases, sum, 1e-6); // the score of the intercept is 0
    }

    private static void holdsFirth(ReferenceFile file, RegressionFit fit) {
        for (int j = 0; j < fit.coefficients().values().length; j++) {
            assertClose(file.number("expected/coef/" + j), fit.coefficients().values()[j], 1e-6, "coefficient " + j);
            assertClose(file.number("expected/se/" + j), fit.coefficients().standardError(j), 1e-6, "se " + j);
        }
        assertClose(file.number("expected/pen_loglik"), fit.logLikelihood(), 1e-8, "penalised log likelihood");
    }

    private static void refuses(String message, boolean[] outcomes, double[][] design) {
        CannotEstimate refusal = assertThrows(CannotEstimate.class, () -> Logistic.fit(outcomes, design));
        assertEquals(message, refusal.getMessage());
    }
}
