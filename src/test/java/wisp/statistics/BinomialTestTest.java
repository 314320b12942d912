package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class BinomialTestTest {

    // R 4.2.2: binom.test(682, 925, 0.75); the data are those of Conover 1971 p. 97; R's help page prints 0.3825.
    @Test
    void mendelianInheritanceIsNotRejected() {
        ReferenceFile reference = ReferenceFile.read("binomial-test-exact");
        double p = BinomialTest.twoSided(
                reference.integer("input/x"), reference.integer("input/n"), reference.number("input/p0"));
        ReferenceFile.assertClose(reference.number("expected/p_value"), p, 1e-6, "p-value");
        assertEquals(0.3825, p, 0.00005);
    }

    // 8 heads of 10 fair tosses: (1 + 10 + 45) * 2 / 1024.
    @Test
    void aFairCoinCanBeAddedUpByHand() {
        assertEquals(112.0 / 1024, BinomialTest.twoSided(8, 10, 0.5), 1e-12);
        assertEquals(1, BinomialTest.twoSided(5, 10, 0.5), 1e-12);
        assertEquals(2.0 / 1024, BinomialTest.twoSided(0, 10, 0.5), 1e-12);
    }

    @Test
    void theRejectionRateIsAtMostTheLevel() {
        for (double p = 0.05; p < 1; p += 0.05) {
            double truth = p;
            double kept = ExactCoverage.binomial(
                    15,
                    p,
                    x -> BinomialTest.twoSided(x, 15, truth) <= 0.05
                            ? new Interval(0, 2, 3, 0.95, "rejects")
                            : new Interval(0, 0, 1, 0.95, "keeps"));
            assertEquals(1, Math.min(1, kept / 0.95), 1e-9, "p = " + p);
        }
    }

    @Test
    void aCertainOutcomeIsCertain() {
        assertEquals(1, BinomialTest.twoSided(3, 3, 1), 0);
        assertEquals(0, BinomialTest.twoSided(2, 3, 1), 0);
    }

    @Test
    void impossibleInputIsRefused() {
        assertThrows(CannotEstimate.class, () -> BinomialTest.twoSided(0, 0, 0.5));
        assertThrows(CannotEstimate.class, () -> BinomialTest.twoSided(1, 3, Double.NaN));
        assertThrows(CannotEstimate.class, () -> BinomialTest.twoSided(1, 3, 1.1));
    }
}
