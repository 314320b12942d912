package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RiskDifferenceTest {

    // R 4.2.2, epiR 2.0.57: epi.2by2(method = "cohort.count")$massoc.detail$ARisk.strata.wald
    @ParameterizedTest
    @ValueSource(strings = {"two-by-two-birthwt", "two-by-two-epir-cats"})
    void theDifferenceIsThatOfEpiR(String name) {
        ReferenceFile reference = ReferenceFile.read(name);
        double[][] cells = reference.matrix("input/table");
        Interval interval = RiskDifference.wald(
                new TwoByTwoTable((int) cells[0][0], (int) cells[0][1], (int) cells[1][0], (int) cells[1][1]), 0.95);
        String path = "expected/ARisk.strata.wald";
        ReferenceFile.assertClose(reference.number(path + "/est"), interval.value(), 1e-6, "value");
        ReferenceFile.assertClose(reference.number(path + "/lower"), interval.low(), 1e-6, "low");
        ReferenceFile.assertClose(reference.number(path + "/upper"), interval.high(), 1e-6, "high");
    }

    // Printed values quoted from memory:
    // Newcombe 1998 Stat Med 17:873, Table II, method 1 (Wald), 56/70 less 48/80, printed 0.0575 to 0.3425.
    @Test
    void thePrintedExampleOfNewcombeIsMet() {
        Interval interval = RiskDifference.wald(TwoByTwoTable.ofGroups(56, 70, 48, 80), 0.95);
        assertEquals(0.0575, interval.low(), 0.00005);
        assertEquals(0.3425, interval.high(), 0.00005);
    }

    @Test
    void aStandardErrorOfZeroIsRefused() {
        assertEquals(
                "The Wald interval of the risk difference cannot be estimated because in each group all or none are"
                        + " cases, so that its standard error is 0 (Newcombe's exists).",
                assertThrows(CannotEstimate.class, () -> RiskDifference.wald(new TwoByTwoTable(0, 4, 5, 0), 0.95))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> RiskDifference.wald(new TwoByTwoTable(0, 0, 5, 1), 0.95));
    }
}
