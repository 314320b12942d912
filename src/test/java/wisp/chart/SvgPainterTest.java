package wisp.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SvgPainterTest {

    private static final SvgPainter NARROW = new SvgPainter(SvgPainter.NARROW);
    private static final SvgPainter WIDE = new SvgPainter(SvgPainter.WIDE);

    static List<Picture> examples() {
        return Examples.all();
    }

    private static Document parse(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Element> elements(Document svg, String name) {
        NodeList found = svg.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    private static Set<String> texts(Document svg, String name) {
        return elements(svg, name).stream().map(Element::getTextContent).collect(Collectors.toSet());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyMarkCanBeReadAndEveryLinkReached(Picture picture) throws Exception {
        for (SvgPainter painter : List.of(NARROW, WIDE)) {
            Document svg = parse(painter.paint(picture));
            Set<String> hover = texts(svg, "title");
            Set<String> links = elements(svg, "a").stream()
                    .map(a -> a.getAttribute("href") + " "
                            + a.getElementsByTagName("title").item(0).getTextContent())
                    .collect(Collectors.toSet());
            for (Layer layer : picture.layers()) {
                for (Mark mark : layer.marks()) {
                    assertTrue(hover.contains(mark.words()), mark.words());
                    mark.link().ifPresent(page -> assertTrue(links.contains(page + " " + mark.words()), page));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void titleDescriptionAxesAndNamesAreRealText(Picture picture) throws Exception {
        Document svg = parse(WIDE.paint(picture));
        assertTrue(texts(svg, "title").contains(picture.title()));
        assertEquals(Set.of(picture.alternative()), texts(svg, "desc"));
        Set<String> texts = texts(svg, "text");
        assertTrue(texts.contains(picture.x().label()));
        assertTrue(texts.contains(picture.y().label()));
        for (Layer layer : picture.layers()) {
            assertTrue(layer.name().isEmpty() || texts.contains(layer.name()), layer.name());
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyIdIsUniqueInTheFigureAndEveryReferenceHasItsTarget(Picture picture) throws Exception {
        Document figure = parse(SvgPainter.figure(picture));
        List<String> ids = elements(figure, "*").stream()
                .map(e -> e.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
        assertEquals(ids.size(), new HashSet<>(ids).size());
        for (Element svg : elements(figure, "svg")) {
            assertTrue(ids.contains(svg.getAttribute("aria-labelledby")));
            assertTrue(ids.contains(svg.getAttribute("aria-describedby")));
        }
    }

    @Test
    void aPictureWithoutLinksIsOneImageAndOneWithLinksAGroup() throws Exception {
        assertEquals(
                "img",
                parse(WIDE.paint(Examples.survival())).getDocumentElement().getAttribute("role"));
        assertEquals(
                "group",
                parse(WIDE.paint(Examples.weeks())).getDocumentElement().getAttribute("role"));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void lengthsAreRoundedToATenthAndTheDrawingIsAlwaysTheSame(Picture picture) {
        String svg = WIDE.paint(picture);
        assertFalse(svg.replaceAll(">[^<]*<", "><").matches("(?s).*\\d\\.\\d\\d.*"));
        assertEquals(svg, WIDE.paint(picture));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void aDrawingHasAtMostTwentyKilobytes(Picture picture) {
        assertTrue(NARROW.paint(picture).getBytes(StandardCharsets.UTF_8).length <= 20_000);
        assertTrue(WIDE.paint(picture).getBytes(StandardCharsets.UTF_8).length <= 20_000);
    }

    @Test
    void allTextIsEscaped() throws Exception {
        String nasty = "<script>alert('x')</script> & \"quoted\" \u0007";
        String safe = nasty.replace('\u0007', '\uFFFD');
        Mark mark = Mark.at(2, 0, nasty).saying(nasty).captioned(nasty).to("/calves?a=1&b=\"<2>\"");
        Picture picture = Picture.of(
                "nasty",
                nasty,
                nasty,
                Axis.linear(nasty, Format.NUMBER),
                Axis.categories(nasty, List.of("<b>A&B</b>")),
                new Points(nasty, Ink.FIRST, Along.X, List.of(mark)),
                new Limit(nasty, Ink.ALARM, Along.X, 1));
        for (int width : new int[] {SvgPainter.NARROW, SvgPainter.WIDE}) {
            String svg = new SvgPainter(width).paint(picture);
            assertFalse(svg.contains("<script"));
            Document read = parse(svg);
            assertEquals(Set.of(safe), texts(read, "desc"));
            assertEquals("/calves?a=1&b=\"<2>\"", elements(read, "a").get(0).getAttribute("href"));
        }
    }

    @Test
    void everyKindOfLayerIsDrawn() {
        List<Layer> layers = EveryLayer.drawn();
        assertEquals(
                Set.of(Layer.class.getPermittedSubclasses()),
                layers.stream().map(Layer::getClass).collect(Collectors.toSet()));
        String all = WIDE.paint(EveryLayer.picture(layers.toArray(Layer[]::new)));
        for (int i = 0; i < layers.size(); i++) {
            assertNotEquals(
                    all,
                    WIDE.paint(EveryLayer.allBut(i)),
                    layers.get(i).getClass().getSimpleName());
        }
    }

    @Test
    void emptyLayersLeaveTheAxesWithNoData() throws Exception {
        Axis free = Axis.linear("Age (days)", Format.COUNT);
        Picture bare = Picture.of("bare", "Bare", "No data.", free, Axis.fromZero("Share", Format.PERCENT));
        assertTrue(texts(parse(WIDE.paint(bare)), "text").contains("No data"));
        Picture empty = EveryLayer.picture(EveryLayer.empty().toArray(Layer[]::new));
        assertTrue(
                texts(parse(NARROW.paint(empty)), "text").containsAll(Set.of("No data", "All calves", "Limit curve")));
        Picture none = Picture.of("none", "None", "No pens.", free, Axis.categories("Pen", List.of()));
        assertTrue(texts(parse(WIDE.paint(none)), "text").contains("No data"));
    }

    @Test
    void withoutDataNoDaysAreInvented() throws Exception {
        Picture none = Picture.of(
                "none",
                "Births",
                "No births yet.",
                Axis.dates("Day"),
                Axis.fromZero("Calves", Format.COUNT),
                new Bars("", Ink.FIRST, Along.Y, 7, List.of()));
        assertEquals(Set.of("Day", "Calves", "0", "1", "No data"), texts(parse(WIDE.paint(none)), "text"));
    }

    @Test
    void aSinglePointOrKnotIsSeen() throws Exception {
        for (Layer layer : EveryLayer.single()) {
            String svg = WIDE.paint(EveryLayer.picture(layer));
            parse(svg);
            assertNotEquals(svg, WIDE.paint(EveryLayer.picture()));
        }
        Steps one = new Steps("", Ink.FIRST, List.of(Knot.at(4, 0.5)));
        assertTrue(WIDE.paint(EveryLayer.picture(one)).contains("<circle class=\"dot\""));
    }

    @Test
    void anUnknownLimitLeavesABareDot() {
        Mark half = Mark.at(2, 0.5, "half known").between(OptionalDouble.of(0.1), OptionalDouble.empty());
        String svg = WIDE.paint(EveryLayer.picture(new Points("", Ink.FIRST, Along.Y, List.of(half))));
        assertTrue(svg.contains("class=\"dot\""));
        assertFalse(svg.contains("class=\"whisker\""));
    }

    @Test
    void whatReachesBeyondAFixedAxisIsCutThere() {
        LimitCurve wide = new LimitCurve("", Ink.MUTED, false, List.of(Knot.at(0, 3), Knot.at(9, 0.5)));
        assertTrue(WIDE.paint(EveryLayer.picture(wide)).contains("clip-path=\"url(#every-layer-720-plot)\""));
        Mark mark = Mark.at(2, 0.5, "wide");
        String inside =
                WIDE.paint(EveryLayer.picture(new Points("", Ink.FIRST, Along.Y, List.of(mark.between(0.25, 1)))));
        String beyond =
                WIDE.paint(EveryLayer.picture(new Points("", Ink.FIRST, Along.Y, List.of(mark.between(0.25, 7)))));
        assertNotEquals(inside, beyond);
    }

    @Test
    void aWidthThatCannotBeReadIsRefused() {
        assertEquals(
                "A drawing cannot be 100 pixels wide: give a width from 280 to 2000.",
                assertThrows(IllegalArgumentException.class, () -> new SvgPainter(100))
                        .getMessage());
    }

    @Test
    void aSmallPictureIsDrawnAsItWasBefore() throws Exception {
        Picture small = Picture.of(
                "small",
                "Dirty calves by pen",
                "North has 10% dirty calves, South 40%; the target is 20%.",
                Axis.fromZero("Dirty calves (%)", Format.PERCENT),
                Axis.categories("Pen", List.of("North", "South")),
                new Limit("target 20%", Ink.ALARM, Along.X, 0.2),
                new Points(
                        "This season",
                        Ink.FIRST,
                        Along.X,
                        List.of(
                                Mark.at(0.1, 0, "North")
                                        .between(0.05, 0.2)
                                        .saying("2 of 20")
                                        .to("/pens/north"),
                                Mark.at(0.4, 1, "South").saying("8 of 20"))));
        try (InputStream golden = getClass().getResourceAsStream("/wisp/chart/small.svg")) {
            assertEquals(new String(golden.readAllBytes(), StandardCharsets.UTF_8), WIDE.paint(small));
        }
    }
}
