package wisp.site;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import wisp.question.navels.LateTreatment;
import wisp.question.navels.Measured;
import wisp.question.navels.Plain;
import wisp.question.navels.TwoGroups;
import wisp.statistics.Interval;

/** Late against early as rows of a table: each measure with its interval and method, or why there is none. */
final class NavelMeasures {
    private NavelMeasures() {}

    static List<NavelsPage.MeasureRow> of(LateTreatment late) {
        TwoGroups against = late.against();
        List<NavelsPage.MeasureRow> rows = new ArrayList<>();
        rows.add(row("Risk ratio, counts", against.riskRatio(), NavelMeasures::ratios));
        rows.add(row("Risk ratio at 21 days", against.ratioAt21Days(), NavelMeasures::ratios));
        rows.add(row("Risk ratio within pens", against.mantelHaenszel().riskRatio(), NavelMeasures::ratios));
        rows.add(row("Risk ratio, adjusted", late.adjustedRatio().riskRatio(), NavelMeasures::ratios));
        rows.add(row("Odds ratio, counts", against.oddsRatio(), NavelMeasures::ratios));
        rows.add(row("Odds ratio within pens", against.mantelHaenszel().oddsRatio(), NavelMeasures::ratios));
        rows.add(row("Difference of risks, in 100 calves", against.riskDifference(), NavelMeasures::points));
        return rows;
    }

    private static NavelsPage.MeasureRow row(String name, Measured measured, Function<Interval, String> text) {
        if (!measured.known()) {
            return new NavelsPage.MeasureRow(name, "–", "", measured.why());
        }
        String value = text.apply(measured.interval());
        int space = value.indexOf(" (");
        return new NavelsPage.MeasureRow(
                name,
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

    /** A difference of risks as cases more or fewer in 100 calves, such as {@code +9.8 (+1.2 to +18.9)}. */
    static String points(Interval difference) {
        return signed(difference.value()) + " (" + signed(difference.low()) + " to " + signed(difference.high()) + ")";
    }

    private static String signed(double difference) {
        String size = Plain.number(Math.abs(100 * difference), 1);
        return size.equals("0.0") ? size : (difference < 0 ? "−" : "+") + size;
    }
}
