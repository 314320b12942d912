package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.statistics.ReferenceFile.assertClose;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProportionalOddsTest {
    private static final String[] TERMS = {
        "InflMedium", "InflHigh", "TypeApartment", "TypeAtrium", "TypeTerrace", "ContHigh"
    };

    private static ProportionalOdds housing() {
        ReferenceFile file = ReferenceFile.read("proportional-odds-housing");
        String[] influence = file.texts("input/data/Infl");
        String[] type = file.texts("input/data/Type");
        double[][] withOnes = Design.withIntercept(
                Columns.indicator(influence, "Medium"),
                Columns.indicator(influence, "High"),
                Columns.indicator(type, "Apartment"),
                Columns.indicator(type, "Atrium"),
                Columns.indicator(type, "Terrace"),
                Columns.indicator(file.texts("input/data/Cont"), "High"));
        double[][] design = Arrays.stream(withOnes)
                .map(row -> Arrays.copyOfRange(row, 1, row.length))
                .toArray(double[][]::new);
        int[] satisfaction = Arrays.stream(file.texts("input/data/Sat"))
                .mapToInt(List.of("Low", "Medium", "High")::indexOf)
                .toArray();
        return ProportionalOdds.fitWeighted(satisfaction, file.numbers("input/data/Freq"), design);
    }

    @Test
    void agreesWithPolrOnHousing() {
        // R 4.2.2, MASS 7.3.58.2: polr(Sat ~ Infl + Type + Cont, housing, weights = Freq)
        ReferenceFile file = ReferenceFile.read("proportional-odds-housing");
        ProportionalOdds fit = housing();
        for (int j = 0; j < TERMS.length; j++) {
            assertClose(
                    file.number("expected/coef/" + TERMS[j]), fit.coefficients().values()[j], 1e-5, TERMS[j]);
            // polr's standard errors come from a numerical Hessian, good to seven digits here
            assertClose(
                    file.number("expected/se/" + TERMS[j]), fit.coefficients().standardError(j), 1e-6, TERMS[j]);
        }
        assertClose(file.number("expected/zeta/Low|Medium"), fit.thresholds()[0], 1e-5, "first threshold");
        assertClose(file.number("expected/zeta/Medium|High"), fit.thresholds()[1], 1e-5, "second threshold");
        assertClose(file.number("expected/se/Medium|High"), fit.coefficients().standardError(7), 1e-6, "its error");
        assertClose(file.number("expected/deviance"), fit.deviance(), 1e-9, "deviance");
    }

    @Test
    void agreesWithThePrintedFitOfVenablesAndRipley() {
        // Printed values quoted from memory:
        // Venables and Ripley 2002, Modern Applied Statistics with S, section 7.3
        ProportionalOdds fit = housing();
        double[] printed = {0.566, 1.289, -0.572, -0.366, -1.091, 0.360};
        for (int j = 0; j < printed.length; j++) {
            assertEquals(printed[j], fit.coefficients().values()[j], 5e-4);
        }
        assertEquals(3479.15, fit.deviance(), 0.005);
    }

    @Test
    void withTwoCategoriesItIsLogisticRegression() {
        ReferenceFile births = ReferenceFile.read("logistic-birthwt");
        double[] age = births.numbers("input/data/age");
        double[] smoke = births.numbers("input/data/smoke");
        double[][] design = new double[age.length][];
        Arrays.setAll(design, i -> new double[] {age[i], smoke[i]});
        ProportionalOdds ordered = ProportionalOdds.fit(births.integers("input/data/low"), design);
        RegressionFit logistic = Logistic.fit(Columns.outcome(births, "low"), Columns.design(births, "age", "smoke"));
        Coefficients expected = logistic.coefficients();
        assertEquals(expected.values()[1], ordered.coefficients().values()[0], 1e-8);
        assertEquals(expected.standardError(2), ordered.coefficients().standardError(1), 1e-8);
        assertEquals(-expected.values()[0], ordered.thresholds()[0], 1e-8);
        assertEquals(logistic.fitted()[0], ordered.probabilities(design[0])[1], 1e-9);
    }

    @Test
    void withoutEffectTheProbabilitiesAreTheShares() {
        int[] categories = {0, 0, 1, 1, 1, 1, 2, 2, 0, 0, 1, 1, 1, 1, 2, 2};
        double[][] design = new double[16][];
        Arrays.setAll(design, i -> new double[] {i < 8 ? 0 : 1});
        ProportionalOdds fit = ProportionalOdds.fit(categories, design);
        assertArrayEquals(new double[] {0.25, 0.5, 0.25}, fit.probabilities(new double[] {1}), 1e-9);
    }

    @Test
    void badInputIsRefused() {
        CannotEstimate empty = assertThrows(
                CannotEstimate.class, () -> ProportionalOdds.fit(new int[] {0, 2}, new double[][] {{1}, {2}}));
        assertEquals(
                "The proportional odds regression cannot be estimated because category 1 was never seen; number those "
                        + "seen from 0 up.",
                empty.getMessage());
        CannotEstimate separated = assertThrows(
                CannotEstimate.class,
                () -> ProportionalOdds.fit(new int[] {0, 0, 1, 1}, new double[][] {{1}, {2}, {3}, {4}}));
        assertTrue(separated.getMessage().endsWith("a column may separate the categories."));
    }
}
