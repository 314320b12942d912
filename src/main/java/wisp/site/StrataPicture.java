package wisp.site;

import java.util.ArrayList;
import java.util.List;
import wisp.chart.Along;
import wisp.chart.Axis;
import wisp.chart.Format;
import wisp.chart.Ink;
import wisp.chart.Layer;
import wisp.chart.Limit;
import wisp.chart.Mark;
import wisp.chart.Picture;
import wisp.chart.Points;
import wisp.indicator.Estimate;
import wisp.indicator.Stratum;

/** Draws one figure's strata as dots with whiskers, the whole and the target as lines. */
final class StrataPicture {
    private StrataPicture() {}

    static Picture of(Estimate whole, Stratum by, Links links) {
        return of(whole, whole.strata(), by, links);
    }

    /** The same of some strata alone. */
    static Picture of(Estimate whole, List<Estimate> some, Stratum by, Links links) {
        List<Estimate> shown =
                some.stream().filter(stratum -> stratum.interval() != null).toList();
        List<String> names = shown.stream().map(Estimate::name).toList();
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            Estimate stratum = shown.get(i);
            marks.add(PictureMarks.across(stratum, stratum.name(), i)
                    .captioned(stratum.numerator() + " of " + Shown.denominator(stratum))
                    .to(links.calves(stratum, CalvesBehind.Part.NUMERATOR)));
        }
        List<Layer> layers = new ArrayList<>();
        if (whole.interval() != null) {
            layers.add(new Limit("all", Ink.THIRD, Along.X, whole.interval().value()));
        }
        if (whole.indicator().target() != null) {
            layers.add(new Limit(
                    "target", Ink.SUMMARY, Along.X, whole.indicator().target().value()));
        }
        layers.add(new Points("", Ink.FIRST, Along.X, marks));
        boolean rate = Shown.rate(whole);
        String unit = rate ? "Per 1000 calf-days" : "% of calves";
        return new Picture(
                "strata",
                whole.indicator().title() + " by " + by.title(),
                words(shown, by),
                Axis.fromZero(unit + ", with 95 % interval", rate ? Format.NUMBER : Format.PERCENT),
                Axis.categories(by.title(), names.isEmpty() ? List.of("none") : names),
                layers);
    }

    private static String words(List<Estimate> shown, Stratum by) {
        if (shown.isEmpty()) {
            return "Nothing can be computed by " + by.title() + ".";
        }
        StringBuilder words = new StringBuilder("Dots with whiskers by " + by.title() + ". ");
        for (Estimate stratum : shown) {
            words.append(stratum.name())
                    .append(": ")
                    .append(Shown.value(stratum))
                    .append(" (")
                    .append(Shown.interval(stratum))
                    .append("). ");
        }
        return words.toString().strip();
    }
}
