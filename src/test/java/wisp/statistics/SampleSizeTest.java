package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;

class SampleSizeTest {

    // R 4.2.2: power.prop.test(p1 = .50, p2 = .75, power = .90), its help page; uniroot, good to 1e-6. n = 50: power
    // 0.740.
    @Test
    void sizeAndPowerAreThoseOfPowerPropTest() {
        ReferenceFile reference = ReferenceFile.read("sample-size-two-proportions");
        double p1 = reference.number("input/p1");
        double p0 = reference.number("input/p2");
        double size = SampleSize.twoRisks(p1, p0, 0.95, reference.number("input/power"), 1);
        ReferenceFile.assertClose(reference.number("expected/n_per_group"), size, 1e-6, "size");
        assertEquals(76.7, size, 0.05);
        ReferenceFile.assertClose(
                reference.number("expected/power_at_n50"),
                SampleSize.powerOfTwoRisks(p1, p0, 0.95, 50, 1),
                1e-6,
                "power");
    }

    // R 4.2.2, epiR 2.0.57: epi.sscohortc(design = 1 and 2), nfractional
    @Test
    void sizesWithADesignEffectAreThoseOfEpiR() {
        ReferenceFile reference = ReferenceFile.read("sample-size-cohort-epir");
        double p1 = reference.number("input/irexp1");
        double p0 = reference.number("input/irexp0");
        for (int design = 1; design <= 2; design++) {
            ReferenceFile.assertClose(
                    reference.number("expected/design_" + design + "/n.exp1"),
                    SampleSize.twoRisks(p1, p0, 0.95, 0.8, design),
                    1e-6,
                    "design effect " + design);
        }
    }

    // R 4.2.2, epiR 2.0.57: epi.sssimpleestb(error = "absolute"), nfractional
    @Test
    void precisionIsThatOfEpiR() {
        ReferenceFile reference = ReferenceFile.read("sample-size-prevalence");
        ReferenceFile.assertClose(
                reference.number("expected/n"),
                SampleSize.precisionOfRisk(reference.number("input/p"), reference.number("input/epsilon"), 0.95, 1),
                1e-6,
                "size");
    }

    // Printed values quoted from memory:
    // Thrusfield, Veterinary Epidemiology, 3rd ed. 2005, sample sizes for prevalence: 95 %, expected prevalence 50 %,
    // precision 5 %:
    // 384;
    // precision 10 %: 96; expected prevalence 30 %, precision 5 %: 323.
    @Test
    void thePrintedTableOfThrusfieldIsMet() {
        assertEquals(384, SampleSize.precisionOfRisk(0.5, 0.05, 0.95, 1), 0.5);
        assertEquals(96, SampleSize.precisionOfRisk(0.5, 0.1, 0.95, 1), 0.5);
        assertEquals(323, SampleSize.precisionOfRisk(0.3, 0.05, 0.95, 1), 0.5);
    }

    // Fleiss, Statistical Methods for Rates and Proportions, 2nd ed. 1981, table A.3, alpha .05, power .80, from
    // memory:
    // 219 a group for .10 against .20 and 376 for .60 against .70. The table adds the continuity correction of Fleiss,
    // Tytun and Ury 1980 (Biometrics 36:343), n/4 (1 + sqrt(1 + 4/(n |p1 - p0|)))², to the size that is given here.
    @Test
    void thePrintedTableOfFleissFollowsWithItsCorrection() {
        assertEquals(219, Math.ceil(corrected(SampleSize.twoRisks(0.1, 0.2, 0.95, 0.8, 1), 0.1)));
        assertEquals(376, Math.ceil(corrected(SampleSize.twoRisks(0.6, 0.7, 0.95, 0.8, 1), 0.1)));
    }

    private static double corrected(double n, double difference) {
        double root = 1 + Math.sqrt(1 + 4 / (n * difference));
        return n / 4 * root * root;
    }

    @Test
    void sizeAndPowerUndoEachOther() {
        for (double p0 = 0.05; p0 < 0.5; p0 += 0.05) {
            double size = SampleSize.twoRisks(p0 + 0.2, p0, 0.9, 0.85, 1.7);
            assertEquals(0.85, SampleSize.powerOfTwoRisks(p0 + 0.2, p0, 0.9, size, 1.7), 1e-10);
            assertEquals(size, SampleSize.twoRisks(p0, p0 + 0.2, 0.9, 0.85, 1.7), 1e-8);
        }
    }

    @Test
    void moreAnimalsMorePowerAndWiderClustersLess() {
        double before = 0;
        for (int n = 10; n < 300; n += 10) {
            double power = SampleSize.powerOfTwoRisks(0.2, 0.1, 0.95, n, 1);
            assertTrue(power > before && power > SampleSize.powerOfTwoRisks(0.2, 0.1, 0.95, n, 1.5));
            before = power;
        }
    }

    // The exact power of the uncorrected chi-square test, over all tables of two groups of 80.
    @Test
    void theFormulaIsNearTheExactPower() {
        BinomialDistribution exposed = BinomialDistribution.of(80, 0.3);
        BinomialDistribution unexposed = BinomialDistribution.of(80, 0.12);
        double power = 0;
        for (int x1 = 0; x1 <= 80; x1++) {
            for (int x0 = 0; x0 <= 80; x0++) {
                if (x1 + x0 > 0
                        && x1 + x0 < 160
                        && ChiSquareTest.pearson(TwoByTwoTable.ofGroups(x1, 80, x0, 80))
                                        .pValue()
                                < 0.05) {
                    power += exposed.probability(x1) * unexposed.probability(x0);
                }
            }
        }
        assertEquals(power, SampleSize.powerOfTwoRisks(0.3, 0.12, 0.95, 80, 1), 0.02);
    }

    @Test
    void theDesignEffectIsKishs() {
        assertEquals(1, SampleSize.designEffect(1, 0.4));
        assertEquals(1, SampleSize.designEffect(30, 0));
        assertEquals(1 + 19 * 0.1, SampleSize.designEffect(20, 0.1), 1e-12);
        assertThrows(CannotEstimate.class, () -> SampleSize.designEffect(0.5, 0.1));
        assertThrows(CannotEstimate.class, () -> SampleSize.designEffect(20, Double.NaN));
    }

    @Test
    void impossiblePlansAreRefused() {
        assertEquals(
                "The sample size cannot be estimated because the two risks are equal.",
                assertThrows(CannotEstimate.class, () -> SampleSize.twoRisks(0.1, 0.1, 0.95, 0.8, 1))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> SampleSize.twoRisks(0, 0.1, 0.95, 0.8, 1));
        assertThrows(CannotEstimate.class, () -> SampleSize.twoRisks(0.2, 0.1, 0.95, 1, 1));
        assertThrows(CannotEstimate.class, () -> SampleSize.twoRisks(0.2, 0.1, 0.95, 0.001, 1));
        assertThrows(CannotEstimate.class, () -> SampleSize.twoRisks(0.2, 0.1, 0.95, 0.8, 0.9));
        assertThrows(CannotEstimate.class, () -> SampleSize.twoRisks(0.2, 0.1, 0, 0.8, 1));
        assertThrows(CannotEstimate.class, () -> SampleSize.powerOfTwoRisks(0.2, 0.1, 0.95, 0, 1));
        assertThrows(CannotEstimate.class, () -> SampleSize.precisionOfRisk(0.2, 0, 0.95, 1));
        assertThrows(CannotEstimate.class, () -> SampleSize.precisionOfRisk(Double.NaN, 0.1, 0.95, 1));
    }
}
