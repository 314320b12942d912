package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static wisp.statistics.ReferenceFile.assertClose;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import wisp.statistics.CoxRegression.Ties;

class CoxRegressionTest {

    @ParameterizedTest
    @EnumSource(Ties.class)
    void agreesWithCoxphOnTheVeteranTrial(Ties ties) {
        // R 4.2.2, survival 3.5.3: coxph(Surv(time, status) ~ trt + karno + age, veteran, ties = ...)
        ReferenceFile file = ReferenceFile.read("cox-veteran");
        double[] times = file.numbers("input/time");
        double[][] columns = {file.numbers("input/trt"), file.numbers("input/karno"), file.numbers("input/age")};
        double[][] design = new double[times.length][];
        Arrays.setAll(design, i -> new double[] {columns[0][i], columns[1][i], columns[2][i]});
        boolean[] events = new boolean[times.length];
        for (int i = 0; i < events.length; i++) {
            events[i] = file.numbers("input/status")[i] == 1;
        }
        CoxRegression fit = CoxRegression.stratified(times, events, new int[times.length], design, ties);
        String path = "expected/" + (ties == Ties.EFRON ? "efron" : "breslow");
        String[] terms = {"trt", "karno", "age"};
        for (int j = 0; j < 3; j++) {
            assertClose(
                    file.number(path + "/coef/" + terms[j]), fit.coefficients().values()[j], 1e-7, terms[j]);
            assertClose(
                    file.number(path + "/se/" + terms[j]), fit.coefficients().standardError(j), 1e-7, terms[j]);
        }
        assertClose(file.number(path + "/loglik/0"), fit.nullLogLikelihood(), 1e-10, "null");
        assertClose(file.number(path + "/loglik/1"), fit.logLikelihood(), 1e-10, "log likelihood");
    }

    @Test
    void agreesWithThePrintedFitOfFreireich() {
        // Kleinbaum and Klein, Survival Analysis, section 3.I, model 1: 1.509 (0.410) by Breslow in the 2nd edition,
        // 1.572 (0.412) by Efron in the 3rd
        double[][] placebo = new double[42][];
        Arrays.setAll(placebo, i -> new double[] {i < 21 ? 0 : 1});
        Coefficients breslow = CoxRegression.stratified(
                        Freireich.times(), Freireich.events(), new int[42], placebo, Ties.BRESLOW)
                .coefficients();
        Coefficients efron = CoxRegression.fit(Freireich.times(), Freireich.events(), placebo)
                .coefficients();
        assertEquals(1.509, breslow.values()[0], 5e-4);
        assertEquals(0.410, breslow.standardError(0), 5e-4);
        assertEquals(1.572, efron.values()[0], 5e-4);
        assertEquals(0.412, efron.standardError(0), 5e-4);
    }

    @ParameterizedTest
    @ValueSource(longs = {81, 82})
    void atZeroTheScoreTestIsTheLogRankTestAndOrderDoesNotMatter(long seed) {
        // Cox 1972: without ties the score test of one indicator is the log-rank test
        Lives lives = Lives.drawn(seed, 60);
        double[] untied = new double[60];
        Arrays.setAll(untied, i -> lives.times()[i] + i / 1000.0);
        int[] halves = Arrays.stream(lives.groups()).map(g -> g == 0 ? 0 : 1).toArray();
        double[][] design = new double[60][];
        Arrays.setAll(design, i -> new double[] {halves[i]});
        PartialLikelihood.Point zero = PartialLikelihood.of(untied, lives.anyEvent(), new int[60], design, Ties.EFRON)
                .at(new double[1]);
        CurveComparison logRank = LogRank.of(untied, lives.anyEvent(), halves);
        assertClose(
                logRank.chiSquare(), zero.score()[0] * zero.score()[0] / zero.information()[0][0], 1e-9, "score test");
        Lives other = lives.reversed().scaled(10);
        double[][] reversed = new double[60][];
        Arrays.setAll(reversed, i -> new double[] {100.0 * halves[59 - i]});
        CoxRegression fit =
                CoxRegression.stratified(lives.times(), lives.anyEvent(), lives.strata(), design, Ties.EFRON);
        CoxRegression same =
                CoxRegression.stratified(other.times(), other.anyEvent(), other.strata(), reversed, Ties.EFRON);
        assertClose(fit.coefficients().values()[0], 100 * same.coefficients().values()[0], 1e-7, "coefficient");
        assertClose(fit.likelihoodRatio(), same.likelihoodRatio(), 1e-7, "likelihood ratio");
    }

    @Test
    void aGroupWithoutEventIsRefused() {
        CannotEstimate refusal = assertThrows(
                CannotEstimate.class,
                () -> CoxRegression.fit(
                        new double[] {1, 2, 3, 4},
                        new boolean[] {true, true, false, false},
                        new double[][] {{1}, {1}, {0}, {0}}));
        assertEquals(
                "The Cox regression cannot be estimated because the likelihood did not settle: some column has no event "
                        + "on one side and no finite ratio.",
                refusal.getMessage());
        CannotEstimate none = assertThrows(
                CannotEstimate.class,
                () -> CoxRegression.fit(new double[] {1, 2}, new boolean[2], new double[][] {{1}, {0}}));
        assertEquals("The Cox regression cannot be estimated because there is no event.", none.getMessage());
    }
}
