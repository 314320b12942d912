package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static wisp.statistics.ReferenceFile.assertClose;

import org.junit.jupiter.api.Test;

class EValueTest {

    @Test
    void agreesWithTheFormulaWrittenOutInR() {
        ReferenceFile file = ReferenceFile.read("e-value");
        double[] ratios = file.numbers("input/rr");
        for (int i = 0; i < ratios.length; i++) {
            assertClose(file.number("expected/e/" + i), EValue.of(ratios[i]), 1e-12, "E");
        }
    }

    @Test
    void agreesWithThePrintedExampleOfVanderWeeleAndDing() {
        // Printed values quoted from memory:
        // VanderWeele and Ding 2017, Ann Intern Med 167:268: RR 3.9 (1.8 to 8.7) has E 7.26 and limit 3.0
        EValue formula = EValue.of(new Interval(3.9, 1.8, 8.7, 0.95, "as printed"));
        assertEquals(7.26, formula.estimate(), 0.005);
        assertEquals(3.0, formula.limit(), 0.005);
    }

    @Test
    void anIntervalThatHoldsOneNeedsNoConfounder() {
        assertEquals(1, EValue.of(new Interval(1.5, 0.9, 2.5, 0.95, "")).limit());
    }

    @Test
    void protectionIsTurnedOver() {
        EValue turned = EValue.of(new Interval(1 / 3.9, 1 / 8.7, 1 / 1.8, 0.95, ""));
        assertEquals(EValue.of(3.9), turned.estimate(), 1e-12);
        assertEquals(EValue.of(1.8), turned.limit(), 1e-12);
        assertThrows(CannotEstimate.class, () -> EValue.of(0));
    }
}
