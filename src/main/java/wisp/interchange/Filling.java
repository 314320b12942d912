package wisp.interchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a field of an event is filled with: a column's cell, fixed words, or words with cells between them; then
 * translated where the mapping gives values. Where a cell that it needs is empty it is empty itself.
 *
 * @param parts fixed words and column names
 * @param clock a second column with the hour, for a time whose date stands in the first; else null
 * @param values translations; empty for none
 */
record Filling(List<Part> parts, String clock, Map<String, String> values) {
    private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)}");
    private static final List<String> KEYS = List.of("column", "is", "text", "values", "clock");

    /** Fixed words, or the name of a column. */
    record Part(String text, boolean column) {}

    static Filling fixed(String words) {
        return new Filling(List.of(new Part(words, false)), null, Map.of());
    }

    static Filling cell(String column) {
        return new Filling(List.of(new Part(column, true)), null, Map.of());
    }

    /** Reads a filling: a column's name, or a group of {@code column}, {@code is} or {@code text}. */
    static Filling of(Yaml yaml) {
        if (yaml.isScalar()) {
            return cell(yaml.text());
        }
        Map<String, Yaml> group = yaml.map(KEYS);
        List<String> ways = group.keySet().stream()
                .filter(List.of("column", "is", "text")::contains)
                .toList();
        if (ways.size() != 1) {
            yaml.fault(
                    ways.isEmpty() ? "Nothing says what to fill the field with." : "It is filled in two ways.",
                    "Write one of column, is or text.");
            return fixed("");
        }
        String said = group.get(ways.get(0)).text();
        Map<String, String> values = new LinkedHashMap<>();
        if (group.containsKey("values")) {
            group.get("values").map().forEach((from, to) -> values.put(Cell.trim(from), to.text()));
        }
        String clock = group.containsKey("clock") ? group.get("clock").text() : null;
        List<Part> parts = switch (ways.get(0)) {
            case "column" -> List.of(new Part(said, true));
            case "is" -> List.of(new Part(said, false));
            default -> template(said);
        };
        return new Filling(parts, clock, values);
    }

    private static List<Part> template(String text) {
        List<Part> parts = new ArrayList<>();
        Matcher braces = BRACES.matcher(text);
        int from = 0;
        while (braces.find()) {
            parts.add(new Part(text.substring(from, braces.start()), false));
            parts.add(new Part(Cell.trim(braces.group(1)), true));
            from = braces.end();
        }
        parts.add(new Part(text.substring(from), false));
        return parts;
    }

    /** The columns it needs. */
    Set<String> columns() {
        Set<String> columns = new LinkedHashSet<>();
        parts.stream().filter(Part::column).map(Part::text).forEach(columns::add);
        if (clock != null) {
            columns.add(clock);
        }
        return columns;
    }

    /** True when no column has a say in it. */
    boolean isFixed() {
        return columns().isEmpty();
    }

    /** The text for one row, empty where a needed cell is empty; null after a fault. */
    String text(Map<String, String> cells, BiConsumer<String, String> fault) {
        StringBuilder text = new StringBuilder();
        for (Part part : parts) {
            String said = part.column() ? cells.getOrDefault(part.text(), "") : part.text();
            if (part.column() && said.isEmpty()) {
                return "";
            }
            text.append(said);
        }
        if (clock != null && !cells.getOrDefault(clock, "").isEmpty()) {
            text.append(' ').append(cells.get(clock));
        }
        if (values.isEmpty()) {
            return text.toString();
        }
        String translated = values.get(text.toString());
        if (translated == null) {
            fault.accept(
                    "The mapping has no value for \"" + text + "\".",
                    "Add it to the values there, which are: " + String.join(", ", values.keySet()) + ".");
        }
        return translated;
    }
}
