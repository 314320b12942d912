package wisp.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.function.BiConsumer;

/**
 * A row that stands for several animals.
 *
 * @param count a column that says how many, or a number
 * @param as what the counter, 1 to that many, is called in the mapping
 */
record Repeat(String count, String as) {
    static final int MOST = 100_000;

    /** How many times, or -1 after a fault. */
    int times(Map<String, String> cells, BiConsumer<String, String> fault) {
        String text = cells.getOrDefault(count, count.matches("\\d+") ? count : "");
        JsonNode number = text.isEmpty() ? null : Cell.value(Column.Kind.NUMBER, text, false, (p, m) -> {});
        if (number == null
                || !number.canConvertToExactIntegral()
                || number.intValue() < 0
                || number.intValue() > MOST) {
            fault.accept("\"" + text + "\" is no number of animals.", "Write a whole number from 0 to " + MOST + ".");
            return -1;
        }
        return number.intValue();
    }
}
