package wisp.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.indicator.Estimate;
import wisp.indicator.Indicator;
import wisp.records.Records;

/**
 * Some calves for which figures wait, and every figure that waits for just these.
 *
 * @param calves the first of them, each opening its page
 * @param more how many there are beside these
 * @param figures what waits for them, one at least
 */
public record PendingCalves(List<One> calves, int more, List<Figure> figures) {
    private static final int NAMED = 3;

    /** One calf. */
    public record One(String name, String href) {}

    /** A figure with how many calves, or episodes, it waits for. */
    public record Figure(String title, String href, int count) {}

    /** One for each set of calves, in the order of the figures. */
    static List<PendingCalves> of(Asked asked, Records records, Links links) {
        Map<List<Integer>, List<Figure>> sets = new LinkedHashMap<>();
        for (Indicator indicator : records.definitions().indicators()) {
            Estimate estimate = records.figures().plain(indicator, asked.cohort(), asked.selection());
            if (estimate.pending() > 0) {
                List<Integer> rows = estimate.verdicts().stream()
                        .filter(CalvesBehind.Part.PENDING::holds)
                        .map(verdict -> verdict.row())
                        .distinct()
                        .toList();
                String list = links.calves(estimate, CalvesBehind.Part.PENDING);
                sets.computeIfAbsent(rows, any -> new ArrayList<>())
                        .add(new Figure(indicator.title(), list, estimate.pending()));
            }
        }
        List<PendingCalves> pending = new ArrayList<>();
        sets.forEach((rows, figures) -> pending.add(new PendingCalves(
                rows.stream()
                        .limit(NAMED)
                        .map(row -> asked.cohort().lives().get(row))
                        .map(life -> new One(CalfName.of(life).both(), links.calf(life.key())))
                        .toList(),
                Math.max(0, rows.size() - NAMED),
                List.copyOf(figures))));
        return pending;
    }
}
