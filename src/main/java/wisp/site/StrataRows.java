package wisp.site;

import java.util.ArrayList;
import java.util.List;
import wisp.indicator.Comparison;
import wisp.indicator.Estimate;
import wisp.indicator.Stratum;
import wisp.question.season.SeasonAnswer;
import wisp.question.season.SeasonFigure;
import wisp.question.season.StrataTable;

/**
 * One figure divided in every way, one row a group.
 *
 * @param figure the figure's id
 * @param title its name
 * @param choices the figures that can be divided instead
 * @param rows the groups
 * @param comparisons how many were tested
 */
public record StrataRows(String figure, String title, List<Choice> choices, List<Row> rows, int comparisons) {

    /** A figure that can be chosen. */
    public record Choice(String id, String title) {}

    /**
     * One group.
     *
     * @param division what divides, in the first row of each division; else empty
     * @param href the group's cases
     * @param calvesHref all calves of the group that are counted
     * @param p Holm-adjusted p-value, empty without a test
     * @param zero whether it has no case
     */
    public record Row(
            String division,
            String by,
            String name,
            String cases,
            String href,
            String calves,
            String calvesHref,
            String value,
            String interval,
            String difference,
            String p,
            String chance,
            boolean zero) {}

    /** How many groups have no case. */
    public int zeros() {
        return (int) rows.stream().filter(Row::zero).count();
    }

    static StrataRows of(SeasonAnswer answer, SeasonLinks links) {
        StrataTable table = answer.strata();
        List<Row> rows = new ArrayList<>();
        for (Stratum division : table.divisions()) {
            String title = division.title();
            for (StrataTable.Line line : table.lines(division)) {
                rows.add(row(title, line, links));
                title = "";
            }
        }
        String divided = table.figure().indicator().id();
        List<Choice> choices = answer.figures().stream()
                .filter(figure ->
                        figure.headline() || figure.estimate().indicator().id().equals(divided))
                .map(SeasonFigure::estimate)
                .map(Estimate::indicator)
                .map(indicator -> new Choice(indicator.id(), indicator.title()))
                .toList();
        return new StrataRows(
                table.figure().indicator().id(),
                table.figure().indicator().title(),
                choices,
                rows,
                table.comparisons());
    }

    private static Row row(String division, StrataTable.Line line, SeasonLinks links) {
        Estimate group = line.group();
        Comparison comparison = group.comparison();
        boolean compared = comparison != null && comparison.difference() != null;
        return new Row(
                division,
                line.by().title(),
                group.name(),
                Shown.count(group.numerator()),
                links.group(line, CalvesBehind.Part.NUMERATOR),
                Shown.denominator(group),
                links.group(line, CalvesBehind.Part.DENOMINATOR),
                Shown.value(group),
                Shown.interval(group),
                compared ? Shown.difference(comparison.difference(), Shown.rate(group)) : "",
                Double.isNaN(line.adjustedP()) ? "" : p(line.adjustedP()),
                compared ? line.chance().words() : "",
                group.numerator() == 0);
    }

    private static String p(double p) {
        return p < 0.001 ? "< 0.001" : Shown.decimals(p, p < 0.1 ? 3 : 2);
    }
}
