package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.statistics.ReferenceFile.assertClose;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class NelsonAalenTest {

    @Test
    void agreesWithSurvfitOnTheAmlTrial() {
        // R 4.2.2, survival 3.5.3: survfit(...)$cumhaz and $std.chaz
        ReferenceFile aml = ReferenceFile.read("kaplan-meier-aml");
        int[] rows = IntStream.range(0, 11).toArray(); // the maintained arm comes first
        CumulativeHazardCurve curve = NelsonAalen.of(
                Arrays.stream(rows)
                        .mapToDouble(i -> aml.numbers("input/time")[i])
                        .toArray(),
                new boolean[] {true, true, false, true, true, false, true, true, false, true, false});
        for (int i = 0; i < curve.times().length; i++) {
            assertClose(aml.number("expected/cumhaz_nelson_aalen/" + i), curve.cumulativeHazard()[i], 1e-12, "H");
            assertClose(aml.number("expected/cumhaz_se/" + i), curve.standardErrors()[i], 1e-12, "se");
            Interval there = curve.at(curve.times()[i]);
            double z = 1.959963984540054;
            assertEquals(there.value() * Math.exp(z * curve.standardErrors()[i] / there.value()), there.high(), 1e-9);
            assertTrue(there.low() < there.value());
        }
    }

    @Test
    void agreesWithThePrintedTableOfKleinAndMoeschberger() {
        // Klein and Moeschberger 2003, Survival Analysis, table 4.2 (from memory): 6-MP arm, H and its variance
        CumulativeHazardCurve curve = NelsonAalen.of(Freireich.SIX_MP, Freireich.sixMpRelapses());
        double[] at = {6, 7, 10, 13, 16, 22, 23};
        double[] hazard = {0.1429, 0.2017, 0.2683, 0.3517, 0.4426, 0.5854, 0.7521};
        double[] variance = {0.0068, 0.0103, 0.0147, 0.0217, 0.0299, 0.0503, 0.0781};
        for (int i = 0; i < at.length; i++) {
            assertEquals(hazard[i], curve.at(at[i]).value(), 1e-4);
            double se = curve.standardErrors()[Arrays.binarySearch(curve.times(), at[i])];
            assertEquals(variance[i], se * se, 1e-4);
        }
    }

    @Test
    void withNoEventTheUpperLimitComesFromWilson() {
        CumulativeHazardCurve curve = NelsonAalen.of(new double[] {5, 5, 5, 5, 5, 5, 5, 5, 5, 5}, new boolean[10]);
        Interval there = curve.at(5);
        assertEquals(0, there.value());
        assertEquals(-Math.log(1 - 0.2775), there.high(), 1e-4);
        assertEquals("Nelson-Aalen, Wilson score on 10 of known state", there.method());
        CannotEstimate refusal = assertThrows(CannotEstimate.class, () -> curve.at(5.5));
        assertTrue(refusal.getMessage().startsWith("The Nelson-Aalen curve cannot be estimated because"));
    }

    @Test
    void oneLifeAtItsEventHasHazardOne() {
        CumulativeHazardCurve curve = NelsonAalen.of(new double[] {4}, new boolean[] {true});
        assertEquals(1, curve.at(4).value());
        assertEquals(
                "Nelson-Aalen, log, held from the last follow-up at 4.0",
                curve.at(7).method());
    }
}
