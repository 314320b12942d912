package wisp.log;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Optional;

/** The attributes of an event's JSON that the event table repeats as columns; null where the JSON has none. */
record Columns(String source, String id, String type, String subject, String time, String recordedTime) {
    private static final ObjectMapper JSON = new ObjectMapper();

    static Columns of(String json) {
        try {
            JsonNode node = JSON.readTree(json);
            return new Columns(
                    text(node, "source"),
                    text(node, "id"),
                    text(node, "type"),
                    text(node, "subject"),
                    text(node, "time"),
                    text(node, "recordedtime"));
        } catch (JsonProcessingException notJson) {
            return new Columns(null, null, null, null, null, null);
        }
    }

    /** The first column of a row that says something else than its JSON. */
    Optional<String> difference(StoredRow row) {
        return different("source", row.source(), source)
                .or(() -> different("id", row.id(), id))
                .or(() -> different("type", row.type(), type))
                .or(() -> different("subject", row.subject(), subject))
                .or(() -> different("time", row.time(), time))
                .or(() -> different("recordedtime", row.recordedTime(), recordedTime));
    }

    private static Optional<String> different(String column, String written, String inJson) {
        return written != null && written.equals(inJson)
                ? Optional.empty()
                : Optional.of("its column " + column + " says " + written + " and its JSON " + inJson);
    }

    private static String text(JsonNode node, String name) {
        JsonNode value = node.get(name);
        return value == null ? null : value.textValue();
    }
}
