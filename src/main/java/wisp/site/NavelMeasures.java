package wisp.site;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import wisp.question.navels.LateTreatment;
import wisp.question.navels.Measured;
import wisp.question.navels.NavelGroup;
import wisp.question.navels.Plain;
import wisp.question.navels.TwoGroups;
import wisp.site.NavelLinks.Count;
import wisp.statistics.Interval;

/** Late against early as rows of a table: each measure with its interval and method, or why there is none. */
final class NavelMeasures {
    private NavelMeasures() {}

    static List<NavelsPage.MeasureRow> of(LateTreatment late, NavelLinks links) {
        TwoGroups against = late.against();
        int smaller = Math.min(late.late().n(), late.early().n());
        Count known = links.count(late.known().n(), NavelCalvesAsked.all(NavelGroup.KNOWN));
        Count penned = links.count(
                late.known().n() - against.mantelHaenszel().withoutPen(), NavelCalvesAsked.all(NavelGroup.WITH_PEN));
        Count modelled = links.count(late.adjustedRatio().calves(), NavelCalvesAsked.all(NavelGroup.COMPARED));
        List<NavelsPage.MeasureRow> rows = new ArrayList<>();
        rows.add(row("Risk ratio, counts", known, against.riskRatio(), NavelMeasures::ratios));
        rows.add(row("Risk ratio at 21 days", known, against.ratioAt21Days(), NavelMeasures::ratios));
        rows.add(row(
                "Risk ratio within " + pens(late),
                penned,
                against.mantelHaenszel().riskRatio(),
                NavelMeasures::ratios));
        if (against.mantelHaenszel().seasons() > 1) {
            rows.add(row("Risk ratio within seasons", known, late.withinSeasons(), NavelMeasures::ratios));
        }
        rows.add(row("Risk ratio within night and day", known, late.withinNight(), NavelMeasures::ratios));
        rows.add(row(
                "Risk ratio, counts of the calves adjusted",
                modelled,
                late.adjustedRatio().crude(),
                NavelMeasures::ratios));
        rows.add(row("Risk ratio, adjusted", modelled, late.adjustedRatio().riskRatio(), NavelMeasures::ratios));
        rows.add(row("Odds ratio, counts", known, against.oddsRatio(), NavelMeasures::ratios));
        rows.add(row(
                "Odds ratio within " + pens(late),
                penned,
                against.mantelHaenszel().oddsRatio(),
                NavelMeasures::ratios));
        rows.add(row(
                "Difference of risks, in 100 calves",
                known,
                against.riskDifference(),
                interval -> points(interval, smaller)));
        return rows;
    }

    /** What is compared within: pens, each season by itself where there are several. */
    static String pens(LateTreatment late) {
        return late.against().mantelHaenszel().seasons() > 1 ? "pens and seasons" : "pens";
    }

    private static NavelsPage.MeasureRow row(
            String name, Count calves, Measured measured, Function<Interval, String> text) {
        if (!measured.known()) {
            return new NavelsPage.MeasureRow(name, calves, "–", "", measured.why());
        }
        String value = text.apply(measured.interval());
        int space = value.indexOf(" (");
        return new NavelsPage.MeasureRow(
                name,
                calves,
                value.substring(0, space),
                value.substring(space + 2, value.length() - 1),
                measured.interval().method());
    }

    private static String ratios(Interval ratio) {
        return ratio(ratio.value()) + " (" + Plain.span(ratio) + ")";
    }

    static String ratio(double value) {
        return Double.isInfinite(value) ? "cannot be given" : Plain.ratio(value);
    }

    /**
     * A difference of risks as cases more or fewer in 100 calves, such as {@code +9.8 (+1.2 to +18.9)}.
     *
     * @param calves in the smaller of the two groups
     */
    static String points(Interval difference, int calves) {
        return signed(difference.value(), calves) + " (" + signed(difference.low(), calves) + " to "
                + signed(difference.high(), calves) + ")";
    }

    private static String signed(double difference, int calves) {
        String size = Plain.points(difference, calves);
        return size.equals("0.0") || size.equals("0") ? size : (difference < 0 ? "−" : "+") + size;
    }
}
