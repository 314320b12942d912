package wisp.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LayoutTest {

    static List<Picture> examples() {
        return Examples.all();
    }

    private static Layout at(Picture picture, double width) {
        return Layout.of(picture, width, OptionalDouble.empty());
    }

    private static void nothingOverlaps(Layout layout) {
        List<Lettering> words = layout.words();
        for (int i = 0; i < words.size(); i++) {
            for (int k = i + 1; k < words.size(); k++) {
                assertFalse(
                        words.get(i).box().meets(words.get(k).box()),
                        words.get(i).text() + " runs into " + words.get(k).text());
            }
        }
    }

    private static void allIsOnThePaper(Layout layout) {
        for (Lettering words : layout.words()) {
            Box box = words.box();
            boolean inside = box.left() >= -0.5
                    && box.right() <= layout.width() + 0.5
                    && box.top() >= 0
                    && box.bottom() <= layout.height();
            assertTrue(inside, words.text() + " sticks out: " + box);
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void noLetteringOverlapsOrLeavesThePaper(Picture picture) {
        for (double width : new double[] {300, 340, 519, 720, 1100}) {
            nothingOverlaps(at(picture, width));
            allIsOnThePaper(at(picture, width));
        }
    }

    @ParameterizedTest
    @CsvSource({"1, Pen", "5, Pen", "12, Pen", "20, Pen", "20, Straw yard behind the parlour", "8, Heifers of spring"})
    void upToTwentyCategoriesAcrossHaveRoom(int count, String name) {
        List<String> names =
                IntStream.rangeClosed(1, count).mapToObj(i -> name + " " + i).toList();
        List<Mark> marks = IntStream.range(0, count)
                .mapToObj(i -> Mark.at(i, i, names.get(i)))
                .toList();
        Axis across = Axis.categories("Pen", names);
        Axis up = Axis.fromZero("Calves", Format.COUNT);
        Picture bars = Picture.of("bars", "Bars", "Bars.", across, up, new Bars("", Ink.FIRST, Along.Y, 0.8, marks));
        LimitCurve curve = new LimitCurve("", Ink.MUTED, true, List.of(Knot.at(0, 1), Knot.at(count - 1.0, 2)));
        Picture fixed = Picture.of("fixed", "Fixed", "Fixed.", across, up, curve);
        for (double width : new double[] {340, 720}) {
            nothingOverlaps(at(bars, width));
            allIsOnThePaper(at(bars, width));
            nothingOverlaps(at(fixed, width));
        }
    }

    /** Pens close together, one of them standing out and two at one place. */
    private static Picture namedDots(int pens) {
        List<Mark> inside = IntStream.range(0, pens)
                .mapToObj(i -> Mark.at(14 + i % 7 * 2, 0.2 + i / 7 * 0.12, "pen")
                        .captioned(i == 0 ? "old dairy, south boxes" : "straw yard " + i))
                .toList();
        List<Mark> outside = List.of(Mark.at(40, 0.6, "pen").captioned("north boxes"));
        return Picture.of(
                "named",
                "Named",
                "Named.",
                Axis.fromZero("Calves", Format.COUNT),
                Axis.fromZero("Dirty", Format.PERCENT),
                Points.named("inside", Ink.FIRST, Along.Y, inside),
                Points.named("outside", Ink.ALARM, Along.Y, outside));
    }

    private static String all(Layout layout) {
        return layout.words().stream()
                .map(words -> words.text().replace('\u00a0', ' '))
                .reduce("", (before, words) -> before + words + "\n");
    }

    @ParameterizedTest
    @CsvSource({"1, 340", "1, 720", "3, 340", "3, 720", "7, 340", "7, 720", "9, 340", "12, 720"})
    void everyNamedDotHasItsNameOrANumberThatIsExplained(int pens, int width) {
        Layout layout = at(namedDots(pens), width);
        nothingOverlaps(layout);
        allIsOnThePaper(layout);
        String words = all(layout);
        assertTrue(words.contains("old dairy, south boxes"), words);
        for (int i = 1; i < pens; i++) {
            assertTrue(words.contains("straw yard " + i + "\n"), words);
        }
        for (Layer layer : layout.picture().layers()) {
            for (Mark mark : layer.marks()) {
                String name = mark.caption();
                assertTrue(
                        !name.matches("[0-9]+")
                                || words.contains("\n" + name + " old dairy")
                                || words.contains("\n" + name + " straw yard"),
                        words);
            }
        }
    }

    @Test
    void theDotThatStandsOutKeepsItsNameWhereOthersAreNumbered() {
        Layout layout = at(namedDots(42), 340);
        String words = all(layout);
        assertTrue(words.contains("\nnorth boxes\n"), words);
        assertTrue(words.contains("\n1 "), words);
    }

    @Test
    void aFewDotsThatCollideAreNumberedAndTheOthersKeepTheirNames() {
        List<Mark> crowd = IntStream.range(0, 8)
                .mapToObj(i -> Mark.at(40 + 3 * i, 0.4, "pen").captioned("straw yard behind the old parlour " + i))
                .toList();
        List<Mark> alone = List.of(Mark.at(10, 0.1, "pen").captioned("north boxes"));
        Picture picture = Picture.of(
                "crowd",
                "Crowd",
                "Crowd.",
                Axis.fromZero("Calves", Format.COUNT),
                Axis.fromZero("Dirty", Format.PERCENT),
                Points.named("crowd", Ink.FIRST, Along.Y, crowd),
                Points.named("alone", Ink.FIRST, Along.Y, alone));
        String words = all(at(picture, 340));
        assertTrue(words.contains("\nnorth boxes\n"), words);
        assertTrue(words.contains("\n1 straw yard"), words);
    }

    @Test
    void aNameAwayFromItsDotIsJoinedToItByALineThatCrossesNoOtherName() {
        Layout layout = at(namedDots(9), 340);
        assertFalse(layout.leaders().isEmpty());
        for (Leader line : layout.leaders()) {
            long names = layout.words().stream()
                    .filter(words -> line.boxes().stream().anyMatch(words.box()::meets))
                    .count();
            assertTrue(names <= 1, () -> line + " strikes " + names + " names");
        }
    }

    @Test
    void aNameBesideItsDotNeedsNoLine() {
        assertTrue(at(namedDots(1), 720).leaders().isEmpty());
    }

    @Test
    void longNamesAcrossAreTurnedIntoRowsAndShortOnesAreNot() {
        assertTrue(at(Examples.manyLongNames(), 720).picture().y().isCategories());
        assertTrue(at(Examples.pairedBars(), 340).picture().x().isCategories());
    }

    @Test
    void twoSeriesThatBothOpenPagesStandAFingerApart() {
        Picture picture = Examples.seasons();
        List<Layer> linked = picture.layers().stream()
                .map(layer -> layer instanceof Points points
                        ? new Points(
                                points.name(),
                                points.ink(),
                                points.along(),
                                points.marks().stream()
                                        .map(mark -> mark.to("/calves"))
                                        .toList())
                        : layer)
                .toList();
        Picture both =
                new Picture(picture.id(), picture.title(), picture.alternative(), picture.x(), picture.y(), linked);
        double apart = apart(both);
        assertTrue(apart >= 24, "apart by " + apart);
    }

    @Test
    void aSeriesThatOpensNothingMayStandCloser() {
        double apart = apart(Examples.seasons());
        assertTrue(apart >= 12 && apart < 24, "apart by " + apart);
    }

    private static double apart(Picture picture) {
        Layout layout = at(picture, 340);
        Layer now = picture.layers().get(1);
        Layer then = picture.layers().get(2);
        return layout.markY(then, then.marks().get(0))
                - layout.markY(now, now.marks().get(0));
    }

    @Test
    void anUpperEndLiesAboveALowerOneAndTheFirstCategoryOnTop() {
        Layout survival = at(Examples.survival(), 720);
        assertEquals(survival.plot().top(), survival.y().at(1), 1e-9);
        assertEquals(survival.plot().bottom(), survival.y().at(0.7), 1e-9);
        Layout seasons = at(Examples.seasons(), 720);
        assertTrue(seasons.y().at(0) < seasons.y().at(5));
    }

    @Test
    void aLogAxisPutsEqualRatiosEquallyFarApart() {
        Ruler ruler = new Ruler(new Domain(0.1, 10, true), 0, 200);
        assertEquals(100, ruler.at(1), 1e-9);
        assertEquals(ruler.at(2) - ruler.at(1), ruler.at(4) - ruler.at(2), 1e-9);
    }

    @Test
    void aHeightThatIsTooLowIsRefusedWithTheHeightItNeeds() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> Layout.of(Examples.manyLongNames(), 720, OptionalDouble.of(200)));
        String sentence = refused.getMessage();
        assertTrue(
                sentence.startsWith("The picture 'many-names' with its 20 rows does not fit a height of 200 pixels"));
        double needed = Double.parseDouble(sentence.replaceAll(".*at least (\\d+)\\.", "$1"));
        assertEquals(
                needed,
                Layout.of(Examples.manyLongNames(), 720, OptionalDouble.of(needed))
                        .height(),
                1);
    }

    @Test
    void wordsAreWrappedAtTheRoomAndAnOverlongOneKeepsItsLine() {
        assertEquals(List.of("a b", "c"), Lettering.wrap("a b c", Lettering.width("a b") + 0.1));
        assertEquals(List.of("unbreakable", "x"), Lettering.wrap(" unbreakable  x ", 10));
    }
}
