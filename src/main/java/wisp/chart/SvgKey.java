package wisp.chart;

import java.util.List;

/** Draws a layer's sample for the key. */
final class SvgKey implements Layer.Reader<String> {

    private final Key.Sample sample;
    private final double middle;

    SvgKey(Key.Sample sample) {
        this.sample = sample;
        this.middle = sample.x() + Key.SAMPLE / 2;
    }

    private String group(String kind, String content) {
        return "<g class=\"" + kind + " " + SvgShape.ink(sample.layer()) + "\">" + content + "</g>\n";
    }

    private String stroke() {
        return SvgShape.path("line", "M" + Xml.at(sample.x(), sample.y()) + "h" + Xml.px(Key.SAMPLE));
    }

    private String patch(String kind, double halfHeight) {
        Box box = new Box(sample.x(), sample.y() - halfHeight, sample.x() + Key.SAMPLE, sample.y() + halfHeight);
        return SvgPainter.rect(" class=\"" + kind + "\"", box);
    }

    @Override
    public String points(Points layer) {
        String whisker = layer.marks().stream().anyMatch(Mark::hasInterval) && layer.ink() != Ink.SUMMARY
                ? SvgShape.path("whisker", "M" + Xml.at(sample.x(), sample.y()) + "h" + Xml.px(Key.SAMPLE))
                : "";
        return group("points", whisker + SvgShape.dot(layer.ink(), middle, sample.y()));
    }

    @Override
    public String steps(Steps layer) {
        return lineWithBand(layer.knots());
    }

    @Override
    public String curve(Curve layer) {
        return lineWithBand(layer.knots());
    }

    private String lineWithBand(List<Knot> knots) {
        return group("steps", (knots.stream().anyMatch(Knot::hasBand) ? patch("band", 5) : "") + stroke());
    }

    @Override
    public String bars(Bars layer) {
        return group("bars", patch("bar", 5));
    }

    @Override
    public String limit(Limit layer) {
        return group("limit", stroke());
    }

    @Override
    public String limitCurve(LimitCurve layer) {
        return group("limit", stroke());
    }

    @Override
    public String rug(Rug layer) {
        return group("rug", SvgShape.path("line", "M" + Xml.at(middle - 5, sample.y() + 4) + "v-8m5,8v-8m5,8v-8"));
    }

    @Override
    public String numbersAtRisk(NumbersAtRisk layer) {
        return group("steps", stroke());
    }
}
