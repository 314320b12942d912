package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class EwmaTest {

    // R 4.2.2: Reduce and the exact limits written out
    @Test
    void theChartIsThatWrittenOutInR() {
        ReferenceFile reference = ReferenceFile.read("ewma");
        int n = reference.integer("input/n");
        int[] cases = Arrays.stream(reference.numbers("input/x"))
                .mapToInt(x -> (int) Math.round(x * n))
                .toArray();
        int[] sizes = new int[cases.length];
        Arrays.fill(sizes, n);
        List<ControlLimits> chart = Ewma.proportions(
                cases,
                sizes,
                reference.number("input/p0"),
                reference.number("input/lambda"),
                reference.number("input/L"));
        for (int t = 0; t < chart.size(); t++) {
            ControlLimits at = chart.get(t);
            ReferenceFile.assertClose(reference.numbers("expected/z")[t], at.value(), 1e-6, "z");
            ReferenceFile.assertClose(reference.numbers("expected/lower")[t], at.low(), 1e-6, "low");
            ReferenceFile.assertClose(reference.numbers("expected/upper")[t], at.high(), 1e-6, "high");
            assertEquals(0.12, at.centre());
        }
    }

    // Montgomery 2009, example 9.2 (from memory): target 10, sigma 1, lambda 0.10, L 2.7; printed z 9.945 and 9.7495,
    // limits 9.73 to
    // 10.27 at the first, 9.64 to 10.36 at the second and 9.38 to 10.62 in the long run.
    @Test
    void thePrintedExampleOfMontgomeryIsMet() {
        double[] values = new double[30];
        Arrays.fill(values, 10);
        values[0] = 9.45;
        values[1] = 7.99;
        double[] errors = new double[30];
        Arrays.fill(errors, 1);
        List<ControlLimits> chart = Ewma.of(values, errors, 10, 0.1, 2.7);
        assertEquals(9.945, chart.get(0).value(), 1e-9);
        assertEquals(9.7495, chart.get(1).value(), 1e-9);
        assertEquals(9.73, chart.get(0).low(), 0.005);
        assertEquals(10.36, chart.get(1).high(), 0.005);
        assertEquals(9.38, chart.get(29).low(), 0.005);
        assertEquals(10.62, chart.get(29).high(), 0.005);
    }

    @Test
    void aWeightOfOneIsShewhartsChart() {
        List<ControlLimits> ewma = Ewma.proportions(new int[] {3, 8}, new int[] {40, 60}, 0.1, 1, 3);
        List<ControlLimits> shewhart = ShewhartChart.p(new int[] {3, 8}, new int[] {40, 60}, 0.1, 3);
        for (int t = 0; t < 2; t++) {
            assertEquals(shewhart.get(t).value(), ewma.get(t).value(), 1e-12);
            assertEquals(shewhart.get(t).low(), ewma.get(t).low(), 1e-12);
            assertEquals(shewhart.get(t).high(), ewma.get(t).high(), 1e-12);
        }
    }

    @Test
    void limitsStayWithinZeroAndOne() {
        ControlLimits at =
                Ewma.proportions(new int[] {0}, new int[] {1}, 0.5, 1, 3).get(0);
        assertEquals(0, at.low());
        assertEquals(1, at.high());
    }

    @Test
    void impossibleInputIsRefused() {
        double[] one = {1};
        assertThrows(CannotEstimate.class, () -> Ewma.of(one, one, 0, 0, 3));
        assertThrows(CannotEstimate.class, () -> Ewma.of(one, one, 0, 1.1, 3));
        assertThrows(CannotEstimate.class, () -> Ewma.of(one, one, 0, 0.2, -3));
        assertThrows(CannotEstimate.class, () -> Ewma.of(one, one, Double.NaN, 0.2, 3));
        assertThrows(CannotEstimate.class, () -> Ewma.of(new double[] {Double.NaN}, one, 0, 0.2, 3));
        assertThrows(CannotEstimate.class, () -> Ewma.of(one, new double[] {0}, 0, 0.2, 3));
        assertThrows(CannotEstimate.class, () -> Ewma.of(one, new double[] {1, 1}, 0, 0.2, 3));
        assertThrows(CannotEstimate.class, () -> Ewma.proportions(new int[] {1}, new int[] {0}, 0.2, 0.2, 3));
    }
}
