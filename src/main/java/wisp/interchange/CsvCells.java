package wisp.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.SortedMap;
import java.util.TreeMap;

/** The cells of Wisp's own CSV that hold one event. */
final class CsvCells {
    private CsvCells() {}

    /** Column name to text, for every column that has something to say; the json column not among them. */
    static SortedMap<String, String> of(ObjectNode event) {
        SortedMap<String, String> cells = new TreeMap<>();
        boolean amended = "amended".equals(event.path("type").textValue());
        for (Column column : Column.ALL) {
            boolean elsewhere = Column.AMENDED.containsKey(column.name()) && !amended;
            if (elsewhere || column.name().equals(Column.JSON)) {
                continue;
            }
            JsonNode value = (column.data() ? event.path("data") : event).get(column.field());
            if (value != null && !value.isNull()) {
                cells.put(column.name(), value.isTextual() ? value.textValue() : value.toString());
            }
        }
        return cells;
    }
}
