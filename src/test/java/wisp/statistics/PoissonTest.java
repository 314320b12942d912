package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static wisp.statistics.ReferenceFile.assertClose;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class PoissonTest {

    private static RegressionFit ships(ReferenceFile ships) {
        String[] type = ships.texts("input/data/type");
        String[] year = Arrays.stream(ships.integers("input/data/year"))
                .mapToObj(String::valueOf)
                .toArray(String[]::new);
        String[] period = Arrays.stream(ships.integers("input/data/period"))
                .mapToObj(String::valueOf)
                .toArray(String[]::new);
        double[][] design = Design.withIntercept(
                Columns.indicator(type, "B"),
                Columns.indicator(type, "C"),
                Columns.indicator(type, "D"),
                Columns.indicator(type, "E"),
                Columns.indicator(year, "65"),
                Columns.indicator(year, "70"),
                Columns.indicator(year, "75"),
                Columns.indicator(period, "75"));
        return Poisson.fit(ships.numbers("input/data/incidents"), ships.numbers("input/data/service"), design);
    }

    @Test
    void agreesWithGlmOnShipDamage() {
        // R 4.2.2: glm(incidents ~ type + year + period + offset(log(service)), poisson, MASS::ships)
        ReferenceFile file = ReferenceFile.read("poisson-ships");
        RegressionFit fit = ships(file);
        Columns.holds(file, "expected", fit.coefficients());
        assertClose(file.number("expected/deviance"), fit.deviance(), 1e-9, "deviance");
        assertClose(file.number("expected/pearson"), fit.pearson(), 1e-8, "Pearson");
        assertEquals(file.integer("expected/df"), fit.residualDegreesOfFreedom());
    }

    @Test
    void agreesWithThePrintedTableOfMcCullaghAndNelder() {
        // Printed values quoted from memory:
        // McCullagh and Nelder 1989, Generalized Linear Models, section 6.3.2: deviance 38.7 on 25, Pearson 42.3
        RegressionFit fit = ships(ReferenceFile.read("poisson-ships"));
        double[] printed = {-6.41, -0.54, -0.69, -0.08, 0.33, 0.70, 0.82, 0.45, 0.38};
        for (int j = 0; j < printed.length; j++) {
            assertEquals(printed[j], fit.coefficients().values()[j], 0.005);
        }
        assertEquals(38.7, fit.deviance(), 0.05);
        assertEquals(42.3, fit.pearson(), 0.05);
    }

    @Test
    void oneIndicatorIsTheRateRatio() {
        // Printed values quoted from memory:
        // Freireich and others 1963: 9 relapses in 359 person-weeks against 21 in 182
        RegressionFit fit = Poisson.fit(new double[] {9, 21}, new double[] {359, 182}, new double[][] {{1, 1}, {1, 0}});
        assertEquals(9.0 / 359 / (21.0 / 182), fit.coefficients().ratio(1, 0.95).value(), 1e-9);
        assertEquals(Math.sqrt(1.0 / 9 + 1.0 / 21), fit.coefficients().standardError(1), 1e-9);
    }

    @Test
    void aProfileOfOneRateComesFromTheLikelihoodItself() {
        // 2 (y log(y / m) - (y - m)) is 3.8415 at both limits
        RegressionFit fit = Poisson.fit(new double[] {10}, new double[] {100}, new double[][] {{1}});
        Interval limits = fit.profile(0, 0.95);
        for (double log : new double[] {limits.low(), limits.high()}) {
            double mean = 100 * Math.exp(log);
            assertEquals(3.841458820694124, 2 * (10 * Math.log(10 / mean) - (10 - mean)), 1e-6);
        }
    }

    @Test
    void aGroupWithoutEventsIsRefused() {
        CannotEstimate refusal = assertThrows(
                CannotEstimate.class,
                () -> Poisson.fit(new double[] {0, 21}, new double[] {359, 182}, new double[][] {{1, 1}, {1, 0}}));
        assertEquals(
                "The Poisson regression cannot be estimated because the rows of some column have no event, so its rate "
                        + "ratio has no bound.",
                refusal.getMessage());
        CannotEstimate none = assertThrows(
                CannotEstimate.class, () -> Poisson.fit(new double[] {0}, new double[] {3}, new double[][] {{1}}));
        assertEquals("The Poisson regression cannot be estimated because no event was counted.", none.getMessage());
    }
}
