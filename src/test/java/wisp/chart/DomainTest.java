package wisp.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class DomainTest {

    private static Domain up(Axis y, Layer... layers) {
        return Domain.of(
                Picture.of("p", "Title", "What is seen.", Axis.linear("Days", Format.COUNT), y, layers), Along.Y, 6);
    }

    private static Points dot(double y) {
        return new Points("", Ink.FIRST, Along.Y, List.of(Mark.at(1, y, "dot")));
    }

    @Test
    void aFreeEndMovesOutToTheNextRoundNumber() {
        assertEquals(new Domain(0, 0.4, false), up(Axis.fromZero("Share", Format.PERCENT), dot(0.1), dot(0.33)));
    }

    @Test
    void withoutDataTheAxisRunsFromZeroToOne() {
        assertEquals(new Domain(0, 1, false), up(Axis.linear("Share", Format.NUMBER)));
    }

    @Test
    void aSinglePointLiesInTheMiddle() {
        assertEquals(new Domain(4, 16, false), up(Axis.linear("Weight (kg)", Format.NUMBER), dot(10)));
    }

    @Test
    void aFixedEndGivesWayToADotAndCutsAWhisker() {
        Axis fixed = Axis.linear("Share", Format.NUMBER).within(0, 0.5);
        assertEquals(new Domain(0, 0.8, false), up(fixed, dot(0.8)));
        Mark wide = Mark.at(1, 0.2, "wide").between(0.1, 0.9);
        assertEquals(new Domain(0, 0.5, false), up(fixed, new Points("", Ink.FIRST, Along.Y, List.of(wide))));
    }

    @Test
    void aTargetBeyondTheDataIsShown() {
        Domain domain =
                up(Axis.fromZero("Share", Format.NUMBER), dot(0.1), new Limit("target", Ink.ALARM, Along.Y, 0.9));
        assertEquals(new Domain(0, 1, false), domain);
    }

    @Test
    void barsStandOnZero() {
        Bars bars = new Bars("", Ink.FIRST, Along.Y, 1, List.of(Mark.at(0, 50, "bar"), Mark.at(1, 100, "bar")));
        assertEquals(new Domain(0, 100, false), up(Axis.linear("Calves", Format.COUNT), bars));
    }

    @Test
    void aLogAxisRefusesZero() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> up(Axis.log("Risk ratio", Format.NUMBER), dot(0)));
        assertEquals(
                "The log axis 'Risk ratio' cannot show 0.0: give values above zero, or take a linear axis.",
                refused.getMessage());
    }

    @Test
    void anIntervalLimitOfZeroIsCutOnALogAxis() {
        Mark mark = Mark.at(1, 2, "ratio").between(0, 4);
        Domain domain = up(Axis.log("Ratio", Format.NUMBER), new Points("", Ink.FIRST, Along.Y, List.of(mark)));
        assertEquals(new Domain(2, 5, true), domain);
    }

    @Test
    void limitsAboveZeroStillWidenALogAxisThatHasOneAtZero() {
        Mark zero = Mark.at(1, 2, "one").between(0, 4);
        Mark wide = Mark.at(1, 2, "other").between(0.1, 4);
        Domain domain = up(Axis.log("Ratio", Format.NUMBER), new Points("", Ink.FIRST, Along.Y, List.of(zero, wide)));
        assertEquals(new Domain(0.1, 5, true), domain);
    }

    @Test
    void aMarkBesideTheCategoriesIsRefused() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> up(Axis.categories("Pen", List.of("North", "South")), dot(2)));
        assertEquals(
                "A mark stands at 2.0 on the axis 'Pen', which has 2 categories counted from 0: add the category to"
                        + " the axis.",
                refused.getMessage());
    }
}
