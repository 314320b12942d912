package wisp.interchange;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When a row stands for an event: {@code Navel date filled}, {@code Died empty}, {@code Sex = M}, {@code n <=
 * incidence}. The left side is a column, or the counter of a repeat; the right side a column where one has that name,
 * else the words themselves, in quotation marks or bare. Two numbers are compared as numbers, anything else as text.
 */
record Condition(String left, String comparison, String right, boolean quoted) {
    private static final Pattern STATE = Pattern.compile("(.+?)\\s+(filled|empty)");
    private static final Pattern COMPARED = Pattern.compile("(.+?)\\s*(<=|>=|!=|=|<|>)\\s*(.*)");

    /** Reads a condition; a fault and null where it is none. */
    static Condition of(Yaml yaml) {
        String text = Cell.trim(yaml.text());
        Matcher state = STATE.matcher(text);
        if (state.matches()) {
            return new Condition(state.group(1), state.group(2), "", true);
        }
        Matcher compared = COMPARED.matcher(text);
        if (!compared.matches()) {
            yaml.fault(
                    "\"" + text + "\" is no condition.",
                    "Write a column and filled, empty, or one of = != < <= > >= and a value.");
            return null;
        }
        String right = compared.group(3);
        boolean quoted = right.length() > 1 && right.matches("'.*'|\".*\"");
        return new Condition(
                compared.group(1), compared.group(2), quoted ? right.substring(1, right.length() - 1) : right, quoted);
    }

    /** The columns that it asks for, of those there are; the left side always. */
    Set<String> columns(Set<String> header) {
        Set<String> columns = new LinkedHashSet<>(Set.of(left));
        if (!quoted && header.contains(right)) {
            columns.add(right);
        }
        return columns;
    }

    /** Whether it holds for a row; {@code known} are the columns that there are. */
    boolean holds(Map<String, String> cells, Set<String> known) {
        String a = cells.getOrDefault(left, "");
        String b = !quoted && known.contains(right) ? cells.getOrDefault(right, "") : right;
        return switch (comparison) {
            case "filled" -> !a.isEmpty();
            case "empty" -> a.isEmpty();
            case "=" -> compare(a, b) == 0;
            case "!=" -> compare(a, b) != 0;
            case "<" -> compare(a, b) < 0;
            case "<=" -> compare(a, b) <= 0;
            case ">" -> compare(a, b) > 0;
            default -> compare(a, b) >= 0;
        };
    }

    private static int compare(String a, String b) {
        try {
            return new BigDecimal(a).compareTo(new BigDecimal(b));
        } catch (NumberFormatException text) {
            return a.compareTo(b);
        }
    }
}
