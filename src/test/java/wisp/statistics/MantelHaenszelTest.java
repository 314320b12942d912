package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.statistics.MantelHaenszel.DifferenceVariance.GREENLAND_ROBINS;
import static wisp.statistics.MantelHaenszel.DifferenceVariance.SATO;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class MantelHaenszelTest {
    private static final ReferenceFile EXACT = ReferenceFile.read("mantel-haenszel-exact-tight");

    // R 4.2.2: mantelhaen.test(correct = TRUE / FALSE / exact = TRUE); exact limits from uniroot, good to 1.2e-4.
    @ParameterizedTest
    @ValueSource(strings = {"mantel-haenszel-birthwt-race", "mantel-haenszel-ucb", "mantel-haenszel-infert-education"})
    void oddsRatioAndChiSquareAreThoseOfMantelhaenTest(String name) {
        ReferenceFile reference = ReferenceFile.read(name);
        List<TwoByTwoTable> strata = Strata.read(reference);
        String path = "expected/mantelhaen/";
        Interval odds = MantelHaenszel.oddsRatio(strata, 0.95);
        ReferenceFile.assertClose(reference.number(path + "or_mh"), odds.value(), 1e-6, "value");
        ReferenceFile.assertClose(reference.numbers(path + "ci_rbg")[0], odds.low(), 1e-6, "low");
        ReferenceFile.assertClose(reference.numbers(path + "ci_rbg")[1], odds.high(), 1e-6, "high");
        TestResult corrected = MantelHaenszel.chiSquare(strata, true);
        ReferenceFile.assertClose(reference.number(path + "x2_corrected"), corrected.statistic(), 1e-6, "corrected");
        ReferenceFile.assertClose(reference.number(path + "p_corrected"), corrected.pValue(), 1e-6, "corrected p");
        TestResult plain = MantelHaenszel.chiSquare(strata, false);
        ReferenceFile.assertClose(reference.number(path + "x2"), plain.statistic(), 1e-6, "chi-square");
        ReferenceFile.assertClose(reference.number(path + "p"), plain.pValue(), 1e-6, "p");
        Interval exact = MantelHaenszel.exactOddsRatio(strata, 0.95);
        // mantelhaen.test(exact = TRUE) stops near 1e-4; here its equations are solved to 1e-15
        double[] tight = EXACT.numbers("expected/" + name.substring("mantel-haenszel-".length()));
        ReferenceFile.assertClose(tight[0], exact.value(), 1e-6, "exact value");
        ReferenceFile.assertClose(tight[1], exact.low(), 1e-6, "exact low");
        ReferenceFile.assertClose(tight[2], exact.high(), 1e-6, "exact high");
    }

    // R 4.2.2, epiR 2.0.57: epi.2by2()$massoc.detail: RR.mh.wald, ARisk.mh.sato, ARisk.mh.green
    @ParameterizedTest
    @ValueSource(strings = {"mantel-haenszel-birthwt-race", "mantel-haenszel-ucb", "mantel-haenszel-infert-education"})
    void riskRatioAndDifferenceAreThoseOfEpiR(String name) {
        ReferenceFile reference = ReferenceFile.read(name);
        List<TwoByTwoTable> strata = Strata.read(reference);
        assertSlot(reference, "RR.mh.wald", MantelHaenszel.riskRatio(strata, 0.95));
        assertSlot(reference, "ARisk.mh.sato", MantelHaenszel.riskDifference(strata, 0.95, SATO));
        assertSlot(reference, "ARisk.mh.green", MantelHaenszel.riskDifference(strata, 0.95, GREENLAND_ROBINS));
    }

    private static void assertSlot(ReferenceFile reference, String slot, Interval interval) {
        String path = "expected/epi2by2/" + slot;
        ReferenceFile.assertClose(reference.number(path + "/est"), interval.value(), 1e-6, slot);
        ReferenceFile.assertClose(reference.number(path + "/lower"), interval.low(), 1e-6, slot);
        ReferenceFile.assertClose(reference.number(path + "/upper"), interval.high(), 1e-6, slot);
    }

    // R 4.2.2: Greenland & Robins 1985 and Sato 1989 written out
    @Test
    void riskRatioAndDifferenceAreThoseWrittenOut() {
        ReferenceFile reference = ReferenceFile.read("mantel-haenszel-rr-rd-greenland-robins");
        List<TwoByTwoTable> strata = Strata.read(reference);
        assertPair(reference, "rr", "rr_ci", MantelHaenszel.riskRatio(strata, 0.95));
        assertPair(reference, "rd", "rd_ci_sato", MantelHaenszel.riskDifference(strata, 0.95, SATO));
        assertPair(reference, "rd", "rd_ci_gr", MantelHaenszel.riskDifference(strata, 0.95, GREENLAND_ROBINS));
    }

    private static void assertPair(ReferenceFile reference, String value, String limits, Interval interval) {
        ReferenceFile.assertClose(reference.number("expected/" + value), interval.value(), 1e-6, value);
        ReferenceFile.assertClose(reference.numbers("expected/" + limits)[0], interval.low(), 1e-6, limits);
        ReferenceFile.assertClose(reference.numbers("expected/" + limits)[1], interval.high(), 1e-6, limits);
    }

    // R 4.2.2: mantelhaen.test(Rabbits); Agresti 1990 p. 234 prints chi-square 3.93 and odds ratio 7.
    @Test
    void theRabbitsWithEmptyMarginsAreThoseOfMantelhaenTest() {
        ReferenceFile reference = ReferenceFile.read("mantel-haenszel-rabbits");
        List<TwoByTwoTable> strata = Strata.read(reference);
        TestResult test = MantelHaenszel.chiSquare(strata, true);
        ReferenceFile.assertClose(reference.number("expected/x2_corrected"), test.statistic(), 1e-6, "chi-square");
        assertEquals(3.93, test.statistic(), 0.005);
        assertPair(reference, "or_mh", "ci", MantelHaenszel.oddsRatio(strata, 0.95));
        Interval exact = MantelHaenszel.exactOddsRatio(strata, 0.95);
        double[] tight = EXACT.numbers("expected/rabbits");
        ReferenceFile.assertClose(tight[0], exact.value(), 1e-6, "exact value");
        ReferenceFile.assertClose(tight[1], exact.low(), 1e-6, "exact low");
        ReferenceFile.assertClose(tight[2], exact.high(), 1e-6, "exact high");
    }

    // epiR manual, example 4: printed odds ratio 5.97 (2.72 to 13.13) over eight dairy herds.
    @Test
    void thePrintedMastitisExampleIsMet() {
        Interval odds = MantelHaenszel.oddsRatio(Strata.MASTITIS, 0.95);
        assertEquals(5.97, odds.value(), 0.005);
        assertEquals(2.72, odds.low(), 0.005);
        assertEquals(13.13, odds.high(), 0.005);
    }

    // Printed values quoted from memory:
    // Charig et al. 1986 BMJ 292:879: open surgery fails more often over all and less often in either size of stone.
    @Test
    void theKidneyStonesTurnRoundWithinStrata() {
        List<TwoByTwoTable> strata =
                List.of(TwoByTwoTable.ofGroups(81, 87, 234, 270), TwoByTwoTable.ofGroups(192, 263, 55, 80));
        assertEquals(1.447, MantelHaenszel.oddsRatio(strata, 0.95).value(), 0.0005);
        assertEquals(1.069, MantelHaenszel.riskRatio(strata, 0.95).value(), 0.0005);
        TwoByTwoTable crude = TwoByTwoTable.ofGroups(273, 350, 289, 350);
        assertEquals(
                0.748, OddsRatio.of(crude, 0.95, OddsRatio.Method.WOOLF_LOGIT).value(), 0.0005);
    }

    @Test
    void oneStratumIsTheCrudeMeasure() {
        TwoByTwoTable table = new TwoByTwoTable(12, 30, 7, 41);
        List<TwoByTwoTable> one = List.of(table);
        Interval ratio = RiskRatio.of(table, 0.95, RiskRatio.Method.KATZ_LOG);
        assertEquals(ratio.value(), MantelHaenszel.riskRatio(one, 0.95).value(), 1e-12);
        assertEquals(ratio.low(), MantelHaenszel.riskRatio(one, 0.95).low(), 1e-12);
        Interval odds = OddsRatio.of(table, 0.95, OddsRatio.Method.WOOLF_LOGIT);
        assertEquals(odds.high(), MantelHaenszel.oddsRatio(one, 0.95).high(), 1e-10);
        Interval exact = OddsRatio.of(table, 0.95, OddsRatio.Method.FISHER_EXACT_CONDITIONAL);
        assertEquals(exact.low(), MantelHaenszel.exactOddsRatio(one, 0.95).low(), 1e-10);
        Interval difference = RiskDifference.wald(table, 0.95);
        assertEquals(
                difference.low(),
                MantelHaenszel.riskDifference(one, 0.95, GREENLAND_ROBINS).low(),
                1e-12);
    }

    @Test
    void theOrderOfStrataChangesNothingAndSwappingInverts() {
        Random random = new Random(20269);
        for (int draw = 0; draw < 100; draw++) {
            List<TwoByTwoTable> strata = Strata.random(random, 2 + random.nextInt(6));
            List<TwoByTwoTable> shuffled = new ArrayList<>(strata);
            Collections.shuffle(shuffled, random);
            List<TwoByTwoTable> swapped = strata.stream()
                    .map(t -> new TwoByTwoTable(
                            t.unexposedCases(), t.unexposedOthers(), t.exposedCases(), t.exposedOthers()))
                    .toList();
            String what = "seed 20269, draw " + draw;
            Interval odds = MantelHaenszel.oddsRatio(strata, 0.95);
            Interval risk = MantelHaenszel.riskRatio(strata, 0.95);
            Interval difference = MantelHaenszel.riskDifference(strata, 0.95, SATO);
            assertEquals(odds.low(), MantelHaenszel.oddsRatio(shuffled, 0.95).low(), 1e-9, what);
            assertEquals(risk.high(), MantelHaenszel.riskRatio(shuffled, 0.95).high(), 1e-9, what);
            ReferenceFile.assertClose(
                    odds.low(), 1 / MantelHaenszel.oddsRatio(swapped, 0.95).high(), 1e-9, what);
            ReferenceFile.assertClose(
                    risk.low(), 1 / MantelHaenszel.riskRatio(swapped, 0.95).high(), 1e-9, what);
            assertEquals(
                    difference.low(),
                    -MantelHaenszel.riskDifference(swapped, 0.95, SATO).high(),
                    1e-9,
                    what);
            assertTrue(odds.low() < odds.value() && odds.value() < odds.high(), what);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aStratumWithOneGroupAddsNothing(MantelHaenszel.DifferenceVariance method) {
        List<TwoByTwoTable> with = new ArrayList<>(Strata.MASTITIS);
        with.add(new TwoByTwoTable(3, 4, 0, 0));
        assertEquals(
                MantelHaenszel.riskRatio(Strata.MASTITIS, 0.95).low(),
                MantelHaenszel.riskRatio(with, 0.95).low(),
                1e-12);
        assertEquals(
                MantelHaenszel.riskDifference(Strata.MASTITIS, 0.95, method).low(),
                MantelHaenszel.riskDifference(with, 0.95, method).low(),
                1e-12);
        assertEquals(
                MantelHaenszel.oddsRatio(Strata.MASTITIS, 0.95).low(),
                MantelHaenszel.oddsRatio(with, 0.95).low(),
                1e-12);
    }

    @Test
    void exactLimitsExistWhereNoExposedIsACase() {
        List<TwoByTwoTable> strata = List.of(new TwoByTwoTable(0, 9, 4, 5), new TwoByTwoTable(0, 6, 2, 5));
        assertEquals(
                "The Mantel-Haenszel odds ratio cannot be estimated because the strata that count have no case among"
                        + " the exposed to compare.",
                assertThrows(CannotEstimate.class, () -> MantelHaenszel.oddsRatio(strata, 0.95))
                        .getMessage());
        Interval exact = MantelHaenszel.exactOddsRatio(strata, 0.95);
        assertEquals(0, exact.value());
        assertEquals(0, exact.low());
        assertTrue(exact.high() < 1);
    }

    @Test
    void noStrataEmptyStrataAndUninformativeStrataAreRefused() {
        List<TwoByTwoTable> empty = List.of(new TwoByTwoTable(1, 2, 3, 4), new TwoByTwoTable(0, 0, 0, 0));
        assertEquals(
                "The Mantel-Haenszel risk ratio cannot be estimated because stratum 2 has nobody in it (leave it out).",
                assertThrows(CannotEstimate.class, () -> MantelHaenszel.riskRatio(empty, 0.95))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> MantelHaenszel.oddsRatio(List.of(), 0.95));
        List<TwoByTwoTable> none = List.of(new TwoByTwoTable(0, 5, 0, 6), new TwoByTwoTable(3, 3, 0, 0));
        assertThrows(CannotEstimate.class, () -> MantelHaenszel.chiSquare(none, true));
        assertThrows(CannotEstimate.class, () -> MantelHaenszel.exactOddsRatio(none, 0.95));
        assertThrows(CannotEstimate.class, () -> MantelHaenszel.riskDifference(none, 0.95, SATO));
        assertThrows(CannotEstimate.class, () -> MantelHaenszel.riskRatio(Strata.MASTITIS, 1));
    }

    @Test
    void theIntervalsHoldTheCommonValueInTwoSmallStrata() {
        double[] unexposedRisk = {0.3, 0.5};
        double[] exposedRisk = {0.45, 0.75};
        double odds = 0;
        double risk = 0;
        double difference = 0;
        double mass = 0;
        for (TwoByTwoTable one : tables(11, 9)) {
            for (TwoByTwoTable two : tables(8, 12)) {
                List<TwoByTwoTable> strata = List.of(one, two);
                double p = probability(one, exposedRisk[0], unexposedRisk[0])
                        * probability(two, exposedRisk[1], unexposedRisk[1]);
                mass += p;
                risk += covers(() -> MantelHaenszel.riskRatio(strata, 0.95), 1.5) ? p : 0;
                // The same tables under a common odds ratio of 3 and a common difference of 0.2.
                double q = probability(one, 0.5625, 0.3) * probability(two, 0.75, 0.5);
                odds += covers(() -> MantelHaenszel.oddsRatio(strata, 0.95), 3) ? q : 0;
                double r = probability(one, 0.5, 0.3) * probability(two, 0.7, 0.5);
                difference += covers(() -> MantelHaenszel.riskDifference(strata, 0.95, SATO), 0.2) ? r : 0;
            }
        }
        assertEquals(1, mass, 1e-9);
        assertEquals(0.955, risk, 0.025, "risk ratio");
        assertEquals(0.955, odds, 0.025, "odds ratio");
        assertEquals(0.945, difference, 0.025, "risk difference");
    }

    private static List<TwoByTwoTable> tables(int exposed, int unexposed) {
        List<TwoByTwoTable> tables = new ArrayList<>();
        for (int a = 0; a <= exposed; a++) {
            for (int c = 0; c <= unexposed; c++) {
                tables.add(TwoByTwoTable.ofGroups(a, exposed, c, unexposed));
            }
        }
        return tables;
    }

    private static double probability(TwoByTwoTable table, double exposedRisk, double unexposedRisk) {
        return BinomialDistribution.of(table.exposed(), exposedRisk).probability(table.exposedCases())
                * BinomialDistribution.of(table.unexposed(), unexposedRisk).probability(table.unexposedCases());
    }

    /** A refused table counts as covered, since nothing false is said of it. */
    private static boolean covers(Supplier<Interval> interval, double truth) {
        try {
            return interval.get().low() <= truth && truth <= interval.get().high();
        } catch (CannotEstimate refused) {
            return true;
        }
    }
}
