package wisp.site;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wisp.chart.Along;
import wisp.chart.Axis;
import wisp.chart.Curve;
import wisp.chart.Format;
import wisp.chart.Ink;
import wisp.chart.Knot;
import wisp.chart.Layer;
import wisp.chart.Limit;
import wisp.chart.Mark;
import wisp.chart.Picture;
import wisp.chart.Points;
import wisp.chart.Rug;
import wisp.question.navels.DelayClass;
import wisp.question.navels.DoseResponse;
import wisp.question.navels.LateTreatment;
import wisp.question.navels.Measured;
import wisp.question.navels.NavelGroup;
import wisp.question.navels.NavelsAnswer;
import wisp.question.navels.Plain;
import wisp.statistics.Interval;

/** Draws the answer of the navels question: risk by class of delay, late against early, and the curve over minutes. */
final class NavelsPictures {
    private static final int STROKES_MOST = 250;
    private static final List<String> WAYS = List.of("one way", "two ways", "three ways", "four ways", "five ways");

    private final NavelsAnswer answer;
    private final NavelLinks links;

    NavelsPictures(NavelsAnswer answer, NavelLinks links) {
        this.answer = answer;
        this.links = links;
    }

    /** Risk by class of delay, with intervals; each dot opens the cases behind it. */
    Picture classes() {
        List<Mark> marks = new ArrayList<>();
        List<String> words = new ArrayList<>();
        List<String> names =
                answer.classes().stream().map(one -> one.delay().word()).toList();
        List<String> rows = new ArrayList<>(names);
        for (int i = 0; i < names.size(); i++) {
            DelayClass one = answer.classes().get(i);
            if (one.risk().at21Days().known()) {
                Interval risk = one.risk().at21Days().interval();
                String said = one.risk().cases() + (one.risk().cases() == 1 ? " case of " : " cases of ")
                        + one.risk().n() + ", "
                        + Plain.percent(risk.value(), one.risk().n()) + " ("
                        + Plain.span(risk, one.risk().n()) + ")";
                words.add(names.get(i) + ": " + said);
                marks.add(Mark.at(risk.value(), i, names.get(i))
                        .between(risk.low(), risk.high())
                        .saying(said)
                        .captioned(one.risk().cases() + " of " + one.risk().n())
                        .to(links.calves(one.delay(), CalvesBehind.Part.NUMERATOR)));
            } else {
                rows.set(i, names.get(i) + (one.risk().n() == 0 ? ": no calf" : ": no risk yet"));
            }
        }
        return Picture.of(
                "navel-classes",
                "Navel infection between 24 hours and 21 days, by delay to treatment",
                words.isEmpty()
                        ? "No risk can be given yet."
                        : "Dots with whiskers, one row a class of delay. " + String.join("; ", words) + ".",
                Axis.fromZero("Risk (% of calves), with 95 % interval", Format.PERCENT),
                Axis.categories("Birth to treatment", rows),
                new Points("", Ink.FIRST, Along.X, marks));
    }

    /** Late against early: crude, within pens, with covariates allowed for. */
    Picture forest() {
        LateTreatment late = answer.late();
        int known = late.known().n();
        int penned = known - late.against().mantelHaenszel().withoutPen();
        int modelled = late.adjustedRatio().calves();
        Map<String, Measured> rows = new LinkedHashMap<>();
        rows.put("crude" + of(known), late.against().shown());
        rows.put(
                "within " + NavelMeasures.pens(late) + of(penned),
                late.against().mantelHaenszel().riskRatio());
        rows.put("within night and day" + of(known), late.withinNight());
        rows.put("crude, of those adjusted" + of(modelled), late.adjustedRatio().crude());
        rows.put("adjusted" + of(modelled), late.adjustedRatio().riskRatio());
        List<NavelGroup> behind = List.of(
                NavelGroup.KNOWN, NavelGroup.WITH_PEN, NavelGroup.KNOWN, NavelGroup.COMPARED, NavelGroup.COMPARED);
        List<String> names = new ArrayList<>(rows.keySet());
        List<Mark> marks = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            Measured ratio = rows.get(names.get(i));
            if (ratio.finite() && ratio.interval().low() > 0) {
                Interval interval = ratio.interval();
                String said = Plain.ratio(interval.value()) + " (" + Plain.span(interval) + ")";
                words.add(names.get(i) + " " + said);
                marks.add(Mark.at(interval.value(), i, names.get(i))
                        .between(interval.low(), interval.high())
                        .saying(said)
                        .captioned(said)
                        .to(links.calves(behind.get(i))));
            } else {
                names.set(i, names.get(i) + ": " + notDrawn(ratio));
            }
        }
        List<Layer> layers = new ArrayList<>();
        layers.add(new Limit("no difference", Ink.MUTED, Along.X, 1));
        layers.add(new Points("", Ink.FIRST, Along.X, marks));
        return new Picture(
                "navel-late",
                marks.isEmpty()
                        ? "Late against early: no risk ratio can be drawn"
                        : "Late against early: the risk ratio in " + WAYS.get(marks.size() - 1),
                words.isEmpty()
                        ? "No risk ratio can be given."
                        : "Dots with whiskers on a ratio scale about 1, no difference: " + String.join("; ", words)
                                + ".",
                Axis.log("Risk ratio, over 60 min or none against 60 min or less", Format.NUMBER),
                Axis.categories("Estimate (calves in it)", names),
                layers);
    }

    /** What stands at a row that has no place on a ratio scale. */
    private static String notDrawn(Measured ratio) {
        return ratio.known() && !Double.isInfinite(ratio.interval().value())
                ? Plain.ratio(ratio.interval().value()) + " (" + Plain.span(ratio.interval()) + ")"
                : "cannot be estimated";
    }

    private static String of(int calves) {
        return " (" + Plain.whole(calves) + ")";
    }

    /** Risk over minutes to treatment with its band; each stroke at the foot is a calf. */
    Picture dose() {
        DoseResponse dose = answer.dose();
        List<Layer> layers = new ArrayList<>();
        String words = "No curve: " + dose.why();
        if (!dose.points().isEmpty()) {
            List<Knot> knots = dose.points().stream()
                    .map(point -> Knot.at(point.minutes(), point.risk()).between(point.low(), point.high()))
                    .toList();
            layers.add(new Curve("", Ink.FIRST, knots));
            layers.add(new Rug("", Ink.MUTED, Along.X, strokes(dose)));
            layers.add(new Points("", Ink.FIRST, Along.Y, knotMarks(dose)));
            words = "A curve with its band over minutes on a ratio scale. " + said(dose, 0) + ", "
                    + said(dose, dose.points().size() / 2) + ", "
                    + said(dose, dose.points().size() - 1) + ".";
        }
        return new Picture(
                "navel-dose",
                "Risk over minutes to treatment, treated calves",
                words,
                Axis.log("Minutes from birth to treatment", Format.NUMBER),
                Axis.fromZero("Risk (% of calves)", Format.PERCENT),
                layers);
    }

    /** A dot on the curve at each knot, its risk in words; it opens the calves behind the curve. */
    private List<Mark> knotMarks(DoseResponse dose) {
        List<Mark> marks = new ArrayList<>();
        for (double knot : dose.knots()) {
            DoseResponse.Point near = dose.points().stream()
                    .min(Comparator.comparingDouble(point -> Math.abs(Math.log(point.minutes() / knot))))
                    .orElseThrow();
            int i = dose.points().indexOf(near);
            marks.add(Mark.at(near.minutes(), near.risk(), "knot")
                    .saying(said(dose, i) + "; all treated calves")
                    .to(links.calves(NavelGroup.TREATED)));
        }
        return marks;
    }

    /** The knots in words. */
    static String knots(DoseResponse dose) {
        return Arrays.stream(dose.knots())
                .mapToObj(knot -> Plain.number(knot, 0))
                .collect(Collectors.joining(", "));
    }

    private static String said(DoseResponse dose, int i) {
        DoseResponse.Point point = dose.points().get(i);
        return "at " + Plain.number(point.minutes(), 0) + " minutes " + Plain.number(100 * point.risk(), 0) + " % ("
                + Plain.number(100 * point.low(), 0) + " to " + Plain.number(100 * point.high(), 0) + " %)";
    }

    /** A stroke a calf inside the curve's span, thinned where there are very many. */
    private static List<Double> strokes(DoseResponse dose) {
        double low = dose.points().get(0).minutes();
        double high = dose.points().get(dose.points().size() - 1).minutes();
        double[] inside = Arrays.stream(dose.minutes())
                .filter(minutes -> minutes >= low && minutes <= high)
                .toArray();
        int every = 1 + inside.length / STROKES_MOST;
        return IntStream.range(0, inside.length)
                .filter(i -> i % every == 0)
                .mapToObj(i -> inside[i])
                .toList();
    }
}
