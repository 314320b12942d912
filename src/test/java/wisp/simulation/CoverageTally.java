package wisp.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import wisp.statistics.Interval;

/** How often intervals held the truth, by kind of interval and by figure. */
final class CoverageTally {
    private final Map<String, Count> kinds = new TreeMap<>();
    private final Map<String, Count> figures = new TreeMap<>();
    private final Map<String, Integer> withoutValue = new TreeMap<>();

    /** Intervals by where the truth lay. */
    private static final class Count {
        private int below;
        private int inside;
        private int above;

        void add(Interval interval, double truth) {
            below += truth < interval.low() ? 1 : 0;
            above += truth > interval.high() ? 1 : 0;
            inside += interval.low() <= truth && truth <= interval.high() ? 1 : 0;
        }

        int all() {
            return below + inside + above;
        }

        String row(String name) {
            return String.format(
                    Locale.ROOT,
                    "%-58s %.4f %8d %8.4f %8.4f",
                    name,
                    inside / (double) all(),
                    all(),
                    below / (double) all(),
                    above / (double) all());
        }
    }

    /** Takes in one interval of one season. */
    synchronized void add(String figure, Interval interval, double truth) {
        String kind = kind(interval.method());
        kinds.computeIfAbsent(kind, k -> new Count()).add(interval, truth);
        String row = String.format(Locale.ROOT, "%-16s %-28s %10.5f", kind, figure, truth);
        figures.computeIfAbsent(row, k -> new Count()).add(interval, truth);
    }

    /** Takes in a season in which the figure has no value. */
    synchronized void addWithout(String figure) {
        withoutValue.merge(figure, 1, Integer::sum);
    }

    /** The share of intervals of one kind that held the truth. */
    double coverage(String kind) {
        Count count = kinds.get(kind);
        return count.inside / (double) count.all();
    }

    /** The kinds of interval that occurred. */
    List<String> kinds() {
        return List.copyOf(kinds.keySet());
    }

    /** What to print: kinds, figures with their truths, figures without a value. */
    List<String> table() {
        List<String> lines = new ArrayList<>();
        lines.add(String.format("%-58s %-6s %8s %8s %8s", "kind of interval", "holds", "n", "below", "above"));
        kinds.forEach((kind, count) -> lines.add(count.row(kind)));
        lines.add("");
        figures.forEach((figure, count) -> lines.add(count.row(figure)));
        lines.add("");
        lines.add("seasons without a value, not counted: " + withoutValue);
        return lines;
    }

    /** The textbook method whose curve or count an interval's method string begins with. */
    static String kind(String method) {
        return List.of("Wilson", "Garwood", "Kaplan-Meier", "Aalen-Johansen").stream()
                .filter(method::startsWith)
                .findFirst()
                .orElseThrow(() -> new AssertionError("an interval of a kind that nobody tallies: " + method));
    }
}
