package wisp.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.chart.Outline.Corner;

class OutlineTest {

    private static final Domain UNIT = new Domain(0, 1, false);

    private static Corner at(double x, double y) {
        return new Corner(x, y);
    }

    @Test
    void aStepHoldsItsHeightUpToTheNextKnot() {
        assertEquals(
                List.of(at(0, 1), at(3, 1), at(3, 0.5), at(5, 0.5), at(5, 0.5)),
                Outline.line(List.of(Knot.at(0, 1), Knot.at(3, 0.5), Knot.at(5, 0.5)), true));
    }

    @Test
    void aBandRunsForthAboveAndBackBelow() {
        List<Knot> knots = List.of(Knot.at(0, 1).between(0.5, 2), Knot.at(3, 1).between(0.6, 3));
        assertEquals(List.of(List.of(at(0, 2), at(3, 3), at(3, 0.6), at(0, 0.5))), Outline.bands(knots, false));
    }

    @Test
    void aBandPausesWhereALimitIsUnknownAndAStepHoldsItUpToThere() {
        List<Knot> knots = List.of(
                Knot.at(0, 1).between(0, 2), Knot.at(3, 1), Knot.at(5, 1).between(0.5, 1.5));
        assertEquals(
                List.of(
                        List.of(at(0, 2), at(3, 2), at(3, 2), at(3, 0), at(3, 0), at(0, 0)),
                        List.of(at(5, 1.5), at(5, 0.5))),
                Outline.bands(knots, true));
    }

    @Test
    void aLineIsCutWhereItLeavesTheAxesAndTakenUpWhereItComesBack() {
        List<Corner> peak = List.of(at(0, 0.5), at(0.5, 1.5), at(1, 0.5));
        assertEquals(
                List.of(List.of(at(0, 0.5), at(0.25, 1)), List.of(at(0.75, 1), at(1, 0.5))),
                Outline.inside(peak, UNIT, UNIT));
    }

    @Test
    void zeroOnALogAxisIsLaidOntoItsLowerEnd() {
        Domain log = new Domain(0.1, 10, true);
        assertEquals(List.of(at(0, 0.1), at(1, 2)), Outline.shown(List.of(at(0, 0), at(1, 2)), log));
        assertEquals(List.of(at(0, 0), at(1, 2)), Outline.shown(List.of(at(0, 0), at(1, 2)), UNIT));
    }

    @Test
    void anAreaIsPressedOntoTheEndOfTheAxis() {
        List<Corner> peak = List.of(at(0, 0.5), at(0.5, 1.5), at(1, 0.5));
        assertEquals(
                List.of(at(0, 0.5), at(0.25, 1), at(0.5, 1), at(0.75, 1), at(1, 0.5)),
                Outline.pressed(peak, UNIT, UNIT));
    }
}
