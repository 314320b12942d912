package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ShewhartChartTest {

    // R 4.2.2: limits written out
    @Test
    void theLimitsAreThoseWrittenOutInR() {
        ReferenceFile reference = ReferenceFile.read("p-and-u-chart");
        int[] cans = reference.integers("input/d");
        List<ControlLimits> p = ShewhartChart.p(cans, reference.integers("input/n"), 3);
        for (int i = 0; i < p.size(); i++) {
            ControlLimits at = p.get(i);
            assertEquals(cans[i] / 50.0, at.value());
            ReferenceFile.assertClose(reference.number("expected/pbar"), at.centre(), 1e-6, "centre");
            ReferenceFile.assertClose(reference.numbers("expected/p_lcl")[i], at.low(), 1e-6, "low");
            ReferenceFile.assertClose(reference.numbers("expected/p_ucl")[i], at.high(), 1e-6, "high");
        }
        List<ControlLimits> u = ShewhartChart.u(reference.integers("input/c"), reference.numbers("input/t"), 3);
        for (int i = 0; i < u.size(); i++) {
            ControlLimits at = u.get(i);
            ReferenceFile.assertClose(reference.number("expected/ubar"), at.centre(), 1e-6, "centre");
            ReferenceFile.assertClose(reference.numbers("expected/u_lcl")[i], at.low(), 1e-6, "low");
            ReferenceFile.assertClose(reference.numbers("expected/u_ucl")[i], at.high(), 1e-6, "high");
        }
    }

    // Montgomery 2009, example 7.1 (from memory): 347 nonconforming in 30 samples of 50 cans, printed limits 0.0524 and
    // 0.4102.
    @Test
    void thePrintedOrangeJuiceExampleIsMet() {
        ControlLimits at =
                ShewhartChart.p(new int[] {12}, new int[] {50}, 347.0 / 1500, 3).get(0);
        assertEquals(0.0524, at.low(), 0.00005);
        assertEquals(0.4102, at.high(), 0.0001);
        assertFalse(at.outside());
    }

    // Montgomery, 4th ed. 2001, example 6-4 (from memory): 193 nonconformities in 20 samples of 5 computers, u 1.93,
    // limits 0.07,
    // 3.79.
    @Test
    void thePrintedComputerExampleIsMet() {
        ControlLimits at = ShewhartChart.u(new int[] {10}, new double[] {5}, 193.0 / 100, 3)
                .get(0);
        assertEquals(0.07, at.low(), 0.005);
        assertEquals(3.79, at.high(), 0.005);
    }

    @Test
    void aPointBeyondALimitIsOutside() {
        List<ControlLimits> chart = ShewhartChart.p(new int[] {2, 30}, new int[] {50, 50}, 0.2, 3);
        assertTrue(chart.get(0).value() < 0.2);
        assertTrue(chart.get(1).outside());
        assertTrue(new ControlLimits(0.1, 0.5, 0.2, 0.8).outside());
    }

    @Test
    void largerSamplesHaveNarrowerLimits() {
        List<ControlLimits> chart = ShewhartChart.p(new int[] {1, 2, 5}, new int[] {10, 20, 50}, 3);
        assertTrue(chart.get(0).high() > chart.get(1).high());
        assertTrue(chart.get(1).high() > chart.get(2).high());
        assertTrue(chart.stream().allMatch(at -> at.low() >= 0 && at.high() <= 1));
    }

    @Test
    void impossibleInputIsRefused() {
        assertThrows(CannotEstimate.class, () -> ShewhartChart.p(new int[] {0, 0}, new int[] {5, 5}, 3));
        assertThrows(CannotEstimate.class, () -> ShewhartChart.p(new int[] {5, 5}, new int[] {5, 5}, 3));
        assertThrows(CannotEstimate.class, () -> ShewhartChart.p(new int[] {1, 0}, new int[] {5, 0}, 3));
        assertThrows(CannotEstimate.class, () -> ShewhartChart.p(new int[] {1}, new int[] {5, 5}, 3));
        assertThrows(CannotEstimate.class, () -> ShewhartChart.p(new int[] {1}, new int[] {5}, 0));
        assertThrows(CannotEstimate.class, () -> ShewhartChart.u(new int[] {0}, new double[] {5}, 3));
        assertThrows(CannotEstimate.class, () -> ShewhartChart.u(new int[] {1}, new double[] {0}, 3));
        assertThrows(CannotEstimate.class, () -> ShewhartChart.u(new int[] {}, new double[] {}, 3));
        assertThrows(CannotEstimate.class, () -> ShewhartChart.u(new int[] {1}, new double[] {2}, -1, 3));
    }
}
