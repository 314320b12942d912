package wisp.site;

import java.util.ArrayList;
import java.util.List;
import wisp.indicator.Comparison;
import wisp.indicator.Estimate;

/** One figure as a row of a table, every count with the address of the calves behind it. */
public record FigureRow(
        String id,
        String title,
        String href,
        String value,
        String interval,
        String numerator,
        String numeratorHref,
        String denominator,
        String denominatorHref,
        int pending,
        String pendingHref,
        List<LeftOut> leftOut,
        String target,
        String standing,
        String before,
        String comparison,
        String why) {

    /**
     * Calves left out for one reason.
     *
     * @param href where they are listed
     */
    public record LeftOut(String reason, int count, String href) {}

    static FigureRow of(Estimate estimate, Links links) {
        Comparison comparison = estimate.comparison();
        boolean before = comparison != null && comparison.other().interval() != null;
        String title = estimate.name().isEmpty() ? estimate.indicator().title() : estimate.name();
        List<LeftOut> leftOut = new ArrayList<>();
        estimate.excluded().forEach((reason, count) -> leftOut.add(leftOut(estimate, links, reason, count)));
        return new FigureRow(
                estimate.indicator().id(),
                title,
                links.figure(estimate),
                Shown.value(estimate),
                Shown.interval(estimate),
                Shown.count(estimate.numerator()),
                links.calves(estimate, CalvesBehind.Part.NUMERATOR),
                Shown.denominator(estimate),
                links.calves(estimate, CalvesBehind.Part.DENOMINATOR),
                estimate.pending(),
                links.calves(estimate, CalvesBehind.Part.PENDING),
                leftOut,
                Shown.target(estimate),
                Shown.standing(estimate),
                before ? Shown.value(comparison.other()) : "",
                comparison == null ? "" : comparison.words(),
                estimate.why() == null ? "" : estimate.why());
    }

    private static LeftOut leftOut(Estimate estimate, Links links, String reason, int count) {
        return new LeftOut(reason.replace('-', ' '), count, links.excluded(estimate, reason));
    }

    /** How many calves or events are left out. */
    public int leftOutInAll() {
        return leftOut.stream().mapToInt(LeftOut::count).sum();
    }
}
