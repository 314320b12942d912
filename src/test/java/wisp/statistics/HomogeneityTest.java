package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HomogeneityTest {

    // R 4.2.2: Breslow & Day 1980 eq. 4.30 and Tarone 1985 written out
    @ParameterizedTest
    @ValueSource(strings = {"breslow-day-tarone-birthwt", "breslow-day-tarone-ucb", "breslow-day-tarone-infert"})
    void breslowDayAndTaroneAreThoseWrittenOut(String name) {
        ReferenceFile reference = ReferenceFile.read(name);
        List<TwoByTwoTable> strata = Strata.read(reference);
        TestResult tarone = Homogeneity.breslowDayTarone(strata);
        ReferenceFile.assertClose(reference.number("expected/tarone"), tarone.statistic(), 1e-6, "Tarone");
        ReferenceFile.assertClose(reference.number("expected/p_tarone"), tarone.pValue(), 1e-6, "Tarone p");
        TestResult plain = Homogeneity.breslowDay(strata);
        ReferenceFile.assertClose(reference.number("expected/breslow_day"), plain.statistic(), 1e-6, "Breslow-Day");
        ReferenceFile.assertClose(reference.number("expected/p_breslow_day"), plain.pValue(), 1e-6, "p");
        assertEquals(reference.integer("expected/df"), plain.degreesOfFreedom());
    }

    // R 4.2.2, epiR 2.0.57: epi.2by2()$massoc.detail$wRR.homog is plain, $wOR.homog adds a half to every cell.
    @ParameterizedTest
    @ValueSource(strings = {"mantel-haenszel-birthwt-race", "mantel-haenszel-ucb"})
    void woolfIsThatOfEpiR(String name) {
        ReferenceFile reference = ReferenceFile.read(name);
        List<TwoByTwoTable> strata = Strata.read(reference);
        TestResult risk = Homogeneity.woolf(strata, Homogeneity.Measure.RISK_RATIO);
        ReferenceFile.assertClose(
                reference.number("expected/epi2by2/wRR.homog/test.statistic"), risk.statistic(), 1e-6, "risk ratio");
        TestResult odds = Homogeneity.woolfHaldaneAnscombe(strata);
        ReferenceFile.assertClose(
                reference.number("expected/epi2by2/wOR.homog/test.statistic"), odds.statistic(), 1e-6, "odds ratio");
        ReferenceFile.assertClose(
                reference.number("expected/epi2by2/wOR.homog/p.value"), odds.pValue(), 1e-6, "odds ratio p");
    }

    // The help page of R's mantelhaen.test prints p = 0.0034 for Woolf's test of Berkeley admissions.
    @Test
    void thePrintedBerkeleyExampleIsMet() {
        List<TwoByTwoTable> strata = Strata.read(ReferenceFile.read("mantel-haenszel-ucb"));
        assertEquals(0.0034, Homogeneity.woolfHaldaneAnscombe(strata).pValue(), 0.00005);
    }

    // Two strata by hand: logs 0 (all cells 10, variance 0.4) and log 4 (20 10 10 20, variance 0.3).
    @Test
    void woolfOfTwoStrataIsTheSquaredDifferenceOverItsVariance() {
        List<TwoByTwoTable> strata = List.of(new TwoByTwoTable(10, 10, 10, 10), new TwoByTwoTable(20, 10, 10, 20));
        double expected = Math.pow(Math.log(4), 2) / (0.4 + 0.3);
        TestResult woolf = Homogeneity.woolf(strata, Homogeneity.Measure.ODDS_RATIO);
        assertEquals(expected, woolf.statistic(), 1e-10);
        assertEquals(1, woolf.degreesOfFreedom());
    }

    @Test
    void equalStrataAreHomogeneous() {
        TwoByTwoTable one = new TwoByTwoTable(8, 12, 5, 21);
        assertEquals(0, Homogeneity.breslowDayTarone(List.of(one, one, one)).statistic(), 1e-9);
        assertEquals(
                0,
                Homogeneity.woolf(List.of(one, one), Homogeneity.Measure.RISK_RATIO)
                        .statistic(),
                1e-9);
    }

    @Test
    void theOrderOfStrataChangesNothing() {
        Random random = new Random(20270);
        for (int draw = 0; draw < 100; draw++) {
            List<TwoByTwoTable> strata = Strata.random(random, 2 + random.nextInt(5));
            List<TwoByTwoTable> shuffled = new ArrayList<>(strata);
            Collections.shuffle(shuffled, random);
            String what = "seed 20270, draw " + draw;
            double tarone = Homogeneity.breslowDayTarone(strata).statistic();
            assertEquals(tarone, Homogeneity.breslowDayTarone(shuffled).statistic(), 1e-7, what);
            assertTrue(tarone <= Homogeneity.breslowDay(strata).statistic() + 1e-9, what);
            assertEquals(
                    Homogeneity.woolf(strata, Homogeneity.Measure.ODDS_RATIO).statistic(),
                    Homogeneity.woolf(shuffled, Homogeneity.Measure.ODDS_RATIO).statistic(),
                    1e-9,
                    what);
        }
    }

    @Test
    void uninformativeStrataCostNoDegreeOfFreedom() {
        List<TwoByTwoTable> with = new ArrayList<>(Strata.MASTITIS);
        with.add(new TwoByTwoTable(0, 3, 0, 4));
        assertEquals(7, Homogeneity.breslowDayTarone(with).degreesOfFreedom());
        assertEquals(
                Homogeneity.breslowDayTarone(Strata.MASTITIS).statistic(),
                Homogeneity.breslowDayTarone(with).statistic(),
                1e-12);
    }

    @Test
    void tooFewStrataAndZeroCellsAreRefused() {
        TwoByTwoTable one = new TwoByTwoTable(8, 12, 5, 21);
        TwoByTwoTable zero = new TwoByTwoTable(0, 12, 5, 21);
        assertThrows(CannotEstimate.class, () -> Homogeneity.breslowDayTarone(List.of(one)));
        assertThrows(CannotEstimate.class, () -> Homogeneity.woolfHaldaneAnscombe(List.of(one)));
        assertEquals(
                "The test of homogeneity cannot be estimated because stratum 2 has a cell of 0, so that no logarithm"
                        + " exists.",
                assertThrows(
                                CannotEstimate.class,
                                () -> Homogeneity.woolf(List.of(one, zero), Homogeneity.Measure.ODDS_RATIO))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> Homogeneity.woolf(List.of(zero, one), Homogeneity.Measure.RISK_RATIO));
    }
}
