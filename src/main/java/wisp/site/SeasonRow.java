package wisp.site;

import wisp.indicator.Comparison;
import wisp.indicator.Estimate;
import wisp.question.season.SeasonFigure;
import wisp.question.season.Standardised;
import wisp.statistics.Interval;

/**
 * One figure of the season as a row: the figure, its targets, and how it differs from last season.
 *
 * @param row the figure
 * @param own the farm's own target, empty where it set none
 * @param ownStanding how the figure stands to it
 * @param difference this season less last season with its interval, empty where there is none
 * @param chance whether chance explains it
 * @param mix the difference with the same mix of dams' parity and sex, empty where there is none
 * @param mixWhy who is left out of it, or why there is none
 */
public record SeasonRow(
        FigureRow row, String own, String ownStanding, String difference, String chance, String mix, String mixWhy) {

    static SeasonRow of(SeasonFigure figure, Links links) {
        Estimate estimate = figure.estimate();
        Comparison comparison = estimate.comparison();
        boolean compared = comparison != null && comparison.difference() != null;
        Standardised mix = figure.standardised();
        return new SeasonRow(
                FigureRow.of(estimate, links),
                figure.own() == null ? "" : Shown.target(figure.own(), Shown.rate(estimate)),
                Shown.standing(estimate, figure.ownStanding()),
                compared ? Shown.difference(comparison.difference(), Shown.rate(estimate)) : "",
                compared ? figure.chance().words() : "",
                mix == null || mix.difference() == null ? "" : mixed(mix.difference(), estimate),
                mix == null ? "" : mix.difference() == null ? mix.why() : leftOut(mix));
    }

    private static String mixed(Interval difference, Estimate estimate) {
        return Shown.difference(difference, Shown.rate(estimate));
    }

    private static String leftOut(Standardised mix) {
        if (mix.leftOut() + mix.leftOutBefore() == 0) {
            return "";
        }
        return "left out: " + mix.leftOut() + " now, " + mix.leftOutBefore() + " before";
    }
}
