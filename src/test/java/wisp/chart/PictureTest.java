package wisp.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PictureTest {

    private static void refused(String sentence, Executable made) {
        assertEquals(
                sentence, assertThrows(IllegalArgumentException.class, made).getMessage());
    }

    @Test
    void aNumberThatIsNotFiniteIsRefused() {
        refused(
                "A picture cannot draw y of 'Pen 3' = NaN: leave out what could not be computed, or leave its limits"
                        + " empty.",
                () -> Mark.at(1, Double.NaN, "Pen 3"));
        refused(
                "A picture cannot draw the upper limit of 'Pen 3' = Infinity: leave out what could not be computed, or"
                        + " leave its limits empty.",
                () -> Mark.at(1, 2, "Pen 3").between(0, Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> Knot.at(Double.NEGATIVE_INFINITY, 1));
        assertThrows(IllegalArgumentException.class, () -> Knot.at(0, 1).between(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new Limit("target", Ink.ALARM, Along.Y, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Rug("", Ink.MUTED, Along.X, List.of(1.0, Double.NaN)));
        assertThrows(IllegalArgumentException.class, () -> new NumbersAtRisk.Count(Double.NaN, 4));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Bars("", Ink.FIRST, Along.Y, Double.POSITIVE_INFINITY, List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> Axis.linear("Days", Format.COUNT).within(0, Double.NaN));
    }

    @Test
    void anUnknownLimitIsNoInterval() {
        Mark half = Mark.at(1, 2, "Pen 3").between(OptionalDouble.of(1), OptionalDouble.empty());
        assertFalse(half.hasInterval());
        assertTrue(half.between(1, 3).hasInterval());
    }

    @Test
    void anIntervalUpsideDownIsRefused() {
        refused(
                "The interval of 'Pen 3' runs from 3.0 down to 1.0: give the lower limit first.",
                () -> Mark.at(1, 2, "Pen 3").between(3, 1));
    }

    @Test
    void aCurveThatGoesBackIsRefused() {
        refused(
                "The curve 'Risk' goes back from x = 2.0 to 1.0: sort its knots by x.",
                () -> new Curve("Risk", Ink.FIRST, List.of(Knot.at(2, 0), Knot.at(1, 0))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"javascript:alert(1)", "//elsewhere.example/calves", "data:text/html,x", "/calves with space", ""
            })
    void aLinkThatIsNoPathOrWebAddressIsRefused(String page) {
        assertThrows(
                IllegalArgumentException.class, () -> Mark.at(1, 2, "Pen 3").to(page));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/calves?pen=3&season=now", "https://example.org/", "?pen=3", "#pen-3", "./calves"})
    void aLinkThatIsAPathOrWebAddressIsTaken(String page) {
        assertEquals(page, Mark.at(1, 2, "Pen 3").to(page).link().orElseThrow());
    }

    @Test
    void aPictureSaysInWordsWhatIsSeen() {
        Axis days = Axis.linear("Days", Format.COUNT);
        refused(
                "There is no text for the text alternative of the picture 'days': say in words what it shows.",
                () -> Picture.of("days", "Days", " ", days, days));
        refused(
                "The picture's id 'Two words' cannot be used in a page: take small letters, digits and hyphens,"
                        + " starting with a letter.",
                () -> Picture.of("Two words", "Days", "Days.", days, days));
    }

    @Test
    void categoriesAreNamedOnceAndOnOneAxisOnly() {
        Axis pens = Axis.categories("Pen", List.of("North", "South"));
        assertEquals(1, pens.at("South"));
        refused("The axis 'Pen' has no category 'East': add it to the axis first.", () -> pens.at("East"));
        refused(
                "A category stands twice in [North, North]: give every category its own name.",
                () -> Axis.categories("Pen", List.of("North", "North")));
        assertThrows(IllegalArgumentException.class, () -> Picture.of("p", "Pens", "Pens.", pens, pens));
    }

    @Test
    void smallMultiplesShareTheirScales() {
        Picture low = Picture.of(
                "low",
                "Low",
                "Low.",
                Axis.linear("Days", Format.COUNT),
                Axis.fromZero("Share", Format.PERCENT),
                new Curve("", Ink.FIRST, List.of(Knot.at(0, 0), Knot.at(10, 0.1))));
        Picture high = Picture.of(
                "high",
                "High",
                "High.",
                Axis.linear("Days", Format.COUNT),
                Axis.fromZero("Share", Format.PERCENT),
                new Curve("", Ink.FIRST, List.of(Knot.at(5, 0), Knot.at(60, 0.5))));
        List<Picture> both = SmallMultiples.onOneScale(List.of(low, high));
        for (Picture picture : both) {
            assertEquals(new Domain(0, 0.5, false), Domain.of(picture, Along.Y, 6));
            assertEquals(new Domain(0, 60, false), Domain.of(picture, Along.X, 6));
        }
        assertEquals(List.of("low", "high"), both.stream().map(Picture::id).toList());
    }
}
