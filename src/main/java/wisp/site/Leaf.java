package wisp.site;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.event.Fault;

/**
 * One leaf of a long list, so that its page stays light on a phone.
 *
 * @param first number of its first row, from 1
 * @param last number of its last row
 * @param all how many rows the list has
 * @param rows how many a full leaf has
 * @param before address of the leaf before, empty on the first
 * @param after address of the next leaf, empty on the last
 */
public record Leaf(int first, int last, int all, int rows, String before, String after) {
    /** The parameter that names a leaf. */
    static final String PARAMETER = "leaf";

    /** A season of most herds fits on one leaf. */
    static final int ROWS = 250;

    /**
     * The leaf that an address asks for, the first where it asks for none.
     *
     * @param all how many rows the list has
     * @param asked the parameter as written, or null
     * @param frame of the page; its filters and the parameters that it keeps go along
     * @param more parameters that go along beside them
     */
    static Leaf of(int all, String asked, Frame frame, Map<String, String> more) {
        return of(ROWS, all, asked, frame, more);
    }

    /**
     * The same where rows are wider than most.
     *
     * @param rows how many a leaf has
     */
    static Leaf of(int rows, int all, String asked, Frame frame, Map<String, String> more) {
        int leaves = Math.max(1, (all + rows - 1) / rows);
        int number = number(asked, leaves);
        return new Leaf(
                Math.min(all, (number - 1) * rows + 1),
                Math.min(all, number * rows),
                all,
                rows,
                number == 1 ? "" : href(number - 1, frame, more),
                number == leaves ? "" : href(number + 1, frame, more));
    }

    private static int number(String asked, int leaves) {
        if (asked == null || asked.isBlank()) {
            return 1;
        }
        if (asked.matches("[1-9][0-9]{0,6}") && Integer.parseInt(asked) <= leaves) {
            return Integer.parseInt(asked);
        }
        String there = leaves == 1 ? "1, the only one." : "a number from 1 to " + leaves + ".";
        throw Problem.parameters(List.of(new Fault(PARAMETER, "There is no leaf " + asked + ".", "Write " + there)));
    }

    private static String href(int number, Frame frame, Map<String, String> more) {
        Map<String, String> changes = new LinkedHashMap<>(frame.kept());
        changes.putAll(more);
        changes.put(PARAMETER, number == 1 ? "" : String.valueOf(number));
        return frame.links().to(frame.path(), changes);
    }

    /** The rows on this leaf. */
    <R> List<R> of(List<R> rows) {
        return rows.subList(Math.max(0, first - 1), last);
    }

    /** Whether there are others. */
    public boolean oneOfMany() {
        return !before.isEmpty() || !after.isEmpty();
    }

    /** How many the next one holds. */
    public int next() {
        return Math.min(rows, all - last);
    }
}
