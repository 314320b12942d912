package wisp.log;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import wisp.event.CanonicalJson;
import wisp.event.Event;

/**
 * An event on its way into the log.
 *
 * @param content its JSON without {@code recordedtime}; read only
 * @param recordedTime its own {@code recordedtime} as text, null where it has none
 */
record Offered(EventName name, ObjectNode content, String recordedTime) {
    private static final String RECORDED_TIME = "recordedtime";
    private static final ObjectMapper JSON = new ObjectMapper();

    static Offered of(Event event) {
        ObjectNode object = object(event.json());
        JsonNode recorded = object.remove(RECORDED_TIME);
        String own = recorded == null || recorded.isNull() ? null : recorded.textValue();
        return new Offered(new EventName(event.source(), event.id()), object, own);
    }

    /** The next events of a stream, at most this many. */
    static List<Offered> some(Iterator<Event> events, int most) {
        List<Offered> some = new ArrayList<>();
        while (some.size() < most && events.hasNext()) {
            some.add(of(events.next()));
        }
        return some;
    }

    /** The canonical JSON to keep: with its own {@code recordedtime}, or this one where it has none. */
    String canonical(String now) {
        ObjectNode object = content.deepCopy();
        return CanonicalJson.of(object.put(RECORDED_TIME, recordedTime == null ? now : recordedTime)
                .toString());
    }

    /**
     * Whether this is the event that the log holds. A sender that does not say when the event was recorded is not held
     * to the log's own answer.
     */
    boolean sameAs(String canonical) {
        if (recordedTime != null) {
            return canonical(recordedTime).equals(canonical);
        }
        ObjectNode kept = object(canonical);
        kept.remove(RECORDED_TIME);
        return CanonicalJson.of(kept.toString()).equals(CanonicalJson.of(content.toString()));
    }

    private static ObjectNode object(String json) {
        try {
            return (ObjectNode) JSON.readTree(json);
        } catch (JsonProcessingException notJson) {
            throw new IllegalArgumentException("An event's json must be a JSON object.", notJson);
        }
    }
}
