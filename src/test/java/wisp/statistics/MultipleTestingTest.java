package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MultipleTestingTest {

    // R 4.2.2: p.adjust(p, "holm"), "BH" and "bonferroni"
    @Test
    void theValuesAreThoseOfPAdjust() {
        ReferenceFile reference = ReferenceFile.read("p-adjust");
        double[] p = reference.numbers("input/p");
        assertArrayEquals(reference.numbers("expected/holm"), MultipleTesting.holm(p), 1e-12);
        assertArrayEquals(reference.numbers("expected/bh"), MultipleTesting.benjaminiHochberg(p), 1e-12);
        assertArrayEquals(reference.numbers("expected/bonferroni"), MultipleTesting.bonferroni(p), 1e-12);
    }

    // Printed values quoted from memory:
    // Benjamini & Hochberg 1995 J R Stat Soc B 57:289, section 3.2: of the same fifteen, their procedure rejects four
    // at 0.05 and Bonferroni's three; Holm's rejects three.
    @Test
    void theThrombolysisExampleRejectsFourAndThree() {
        double[] p = ReferenceFile.read("p-adjust").numbers("input/p");
        assertEquals(4, rejected(MultipleTesting.benjaminiHochberg(p)));
        assertEquals(3, rejected(MultipleTesting.bonferroni(p)));
        assertEquals(3, rejected(MultipleTesting.holm(p)));
    }

    private static long rejected(double[] adjusted) {
        return Arrays.stream(adjusted).filter(p -> p <= 0.05).count();
    }

    @Test
    void theOrderOfTheInputIsKept() {
        assertArrayEquals(new double[] {0.04, 0.03, 0.04}, MultipleTesting.holm(0.04, 0.01, 0.02), 1e-15);
        assertArrayEquals(new double[] {0.04, 0.03, 0.03}, MultipleTesting.benjaminiHochberg(0.04, 0.01, 0.02), 1e-15);
    }

    @Test
    void shufflingTheInputShufflesTheAnswer() {
        Random random = new Random(20264);
        for (int draw = 0; draw < 100; draw++) {
            double[] p = random.doubles(8).toArray();
            double[] reversed = new double[8];
            for (int i = 0; i < 8; i++) {
                reversed[i] = p[7 - i];
            }
            double[] holm = MultipleTesting.holm(p);
            double[] holmReversed = MultipleTesting.holm(reversed);
            double[] bonferroni = MultipleTesting.bonferroni(p);
            double[] bh = MultipleTesting.benjaminiHochberg(p);
            for (int i = 0; i < 8; i++) {
                String what = "seed 20264, draw " + draw;
                assertEquals(holm[i], holmReversed[7 - i], 1e-15, what);
                assertTrue(p[i] <= bh[i] && bh[i] <= holm[i] && holm[i] <= bonferroni[i], what);
            }
        }
    }

    @Test
    void oneTestIsLeftAsItIs() {
        assertArrayEquals(new double[] {0.03}, MultipleTesting.holm(0.03));
        assertArrayEquals(new double[] {0.03}, MultipleTesting.benjaminiHochberg(0.03));
        assertArrayEquals(new double[] {0.03}, MultipleTesting.bonferroni(0.03));
    }

    @Test
    void noneOrImpossibleValuesAreRefused() {
        assertThrows(CannotEstimate.class, () -> MultipleTesting.holm());
        assertThrows(CannotEstimate.class, () -> MultipleTesting.benjaminiHochberg(0.1, Double.NaN));
        assertThrows(CannotEstimate.class, () -> MultipleTesting.bonferroni(0.1, 1.2));
    }
}
