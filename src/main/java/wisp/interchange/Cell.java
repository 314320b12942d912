package wisp.interchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;

/** Turns a cell's text into the JSON value that its column holds. */
final class Cell {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+([.]\\d*)?|[.]\\d+)([eE][+-]?\\d{1,3})?");
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private Cell() {}

    /** The text without blanks round it, the unbreakable ones of spreadsheets among them. */
    static String trim(String cell) {
        int from = 0;
        int to = cell.length();
        while (from < to && blank(cell.charAt(from))) {
            from++;
        }
        while (to > from && blank(cell.charAt(to - 1))) {
            to--;
        }
        return cell.substring(from, to);
    }

    private static boolean blank(char letter) {
        return Character.isWhitespace(letter) || letter == '\u00a0' || letter == '\ufeff';
    }

    /**
     * The value of a cell that is not empty.
     *
     * @param decimalComma whether 3,5 is a number here
     * @param fault is told problem and mend
     * @return the value, or null after a fault
     */
    static JsonNode value(Column.Kind kind, String text, boolean decimalComma, BiConsumer<String, String> fault) {
        return switch (kind) {
            case TEXT, TIME -> JSON.textNode(text);
            case NUMBER -> number(text, decimalComma, fault);
            case FLAG -> flag(text, fault);
            case RELIEF -> isFlag(text) ? flag(text, fault) : JSON.textNode(text);
            case JSON -> json(text, fault);
        };
    }

    private static boolean isFlag(String text) {
        String word = text.toLowerCase(Locale.ROOT);
        return word.equals("true") || word.equals("false");
    }

    private static JsonNode flag(String text, BiConsumer<String, String> fault) {
        if (!isFlag(text)) {
            fault.accept("\"" + text + "\" is neither true nor false.", "Write true or false.");
            return null;
        }
        return JSON.booleanNode(text.equalsIgnoreCase("true"));
    }

    private static JsonNode number(String text, boolean decimalComma, BiConsumer<String, String> fault) {
        String point = decimalComma && text.indexOf('.') < 0 ? text.replace(',', '.') : text;
        if (NUMBER.matcher(point).matches()) {
            BigDecimal value = new BigDecimal(point);
            return value.scale() <= 0 && value.precision() - value.scale() < 16
                    ? JSON.numberNode(value.longValueExact())
                    : JSON.numberNode(value.doubleValue());
        }
        boolean comma = !decimalComma && NUMBER.matcher(text.replace(',', '.')).matches();
        fault.accept(
                "\"" + text + "\" is not a number.",
                comma
                        ? "Write " + text.replace(',', '.') + ", or say decimal: \",\" in a mapping file."
                        : "Write a number alone, its unit in the column's name, thousands without marks.");
        return null;
    }

    private static JsonNode json(String text, BiConsumer<String, String> fault) {
        try {
            return JsonRecord.STRICT.readTree(text);
        } catch (JsonProcessingException notJson) {
            fault.accept(JsonRecord.notJson(notJson).problem(), "Write JSON, such as [{\"name\": \"Spring\"}].");
            return null;
        }
    }
}
