package wisp.site;

import java.util.ArrayList;
import java.util.List;
import wisp.chart.Along;
import wisp.chart.Axis;
import wisp.chart.Format;
import wisp.chart.Ink;
import wisp.chart.Layer;
import wisp.chart.Mark;
import wisp.chart.Picture;
import wisp.chart.Points;
import wisp.indicator.Estimate;
import wisp.indicator.Indicator;
import wisp.indicator.Outcome;
import wisp.indicator.Rule;
import wisp.indicator.Selection;
import wisp.indicator.Target;
import wisp.question.season.SeasonAnswer;
import wisp.question.season.SeasonFigure;

/** Draws a season's risks with their intervals, last season's and the targets beside them. */
final class SeasonPicture {
    private SeasonPicture() {}

    static Picture of(SeasonAnswer answer, Links links) {
        String season = answer.season();
        List<Estimate> shown = answer.figures().stream()
                .map(SeasonFigure::estimate)
                .filter(estimate -> shown(estimate.indicator()))
                .filter(estimate -> estimate.interval() != null)
                .toList();
        List<String> names =
                shown.stream().map(estimate -> estimate.indicator().title()).toList();
        List<Mark> now = new ArrayList<>();
        List<Mark> before = new ArrayList<>();
        List<Mark> targets = new ArrayList<>();
        String lastSeason = "";
        for (int i = 0; i < shown.size(); i++) {
            Estimate estimate = shown.get(i);
            String title = estimate.indicator().title();
            now.add(PictureMarks.across(estimate, title, i).to(links.figure(estimate)));
            if (estimate.comparison() != null && estimate.comparison().other().interval() != null) {
                lastSeason = estimate.comparison().with();
                before.add(PictureMarks.across(estimate.comparison().other(), title + " in " + lastSeason, i));
            }
            Target target = estimate.indicator().target();
            if (target != null) {
                targets.add(Mark.at(target.value(), i, "Target for " + title + ": " + Shown.target(estimate)));
            }
        }
        List<Layer> layers = new ArrayList<>();
        layers.add(new Points(season, Ink.FIRST, Along.X, now));
        if (!before.isEmpty()) {
            layers.add(new Points(lastSeason, Ink.SECOND, Along.X, before));
        }
        if (!targets.isEmpty()) {
            layers.add(new Points("target", Ink.SUMMARY, Along.X, targets));
        }
        return new Picture(
                "season",
                "Risks of the season",
                words(shown, season, lastSeason),
                Axis.fromZero("Risk (% of calves), with 95 % interval", Format.PERCENT),
                Axis.categories("Figure", names.isEmpty() ? List.of("none") : names),
                layers);
    }

    private static boolean shown(Indicator indicator) {
        return indicator.rule() instanceof Rule.Risk risk
                && (risk.outcome() instanceof Outcome.Death || indicator.id().endsWith("-risk-60d"));
    }

    private static String words(List<Estimate> shown, String season, String lastSeason) {
        if (shown.isEmpty()) {
            return season.equals(Selection.ALL)
                    ? "No risk can be computed yet."
                    : "No risk of " + season + " can be computed yet.";
        }
        StringBuilder words = new StringBuilder("Dots with whiskers, one row a risk, " + season
                + (lastSeason.isEmpty() ? "" : " above " + lastSeason) + ". ");
        for (Estimate estimate : shown) {
            words.append(estimate.indicator().title())
                    .append(' ')
                    .append(Shown.value(estimate))
                    .append(" (")
                    .append(Shown.interval(estimate))
                    .append("). ");
        }
        return words.toString().strip();
    }
}
