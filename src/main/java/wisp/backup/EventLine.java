package wisp.backup;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.Optional;
import wisp.event.CanonicalJson;
import wisp.event.EventReader;
import wisp.log.HashChain;
import wisp.log.StoredEvent;

/** One event as a line of a backup: its JSON with its sequence and hash. */
final class EventLine {
    private static final JsonMapper JSON = new JsonMapper();

    private EventLine() {}

    static String of(StoredEvent stored) {
        try {
            ObjectNode object = (ObjectNode) JSON.readTree(stored.event().json());
            return object.put("sequence", stored.sequence())
                    .put("hash", stored.hash())
                    .toString();
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("the log holds an event that is not JSON", impossible);
        }
    }

    /** The event that the line holds, if it is the next after the one with the previous hash. */
    static Optional<StoredEvent> next(String line, long sequence, String previous) {
        try {
            if (!(JSON.readTree(line) instanceof ObjectNode object)) {
                return Optional.empty();
            }
            JsonNode number = object.remove("sequence");
            JsonNode hash = object.remove("hash");
            String canonical = CanonicalJson.of(object.toString());
            boolean follows = number != null
                    && number.longValue() == sequence
                    && hash != null
                    && HashChain.next(previous, canonical).equals(hash.textValue());
            EventReader.Reading reading = EventReader.recorded().read(canonical);
            return follows && reading.sound()
                    ? Optional.of(new StoredEvent(sequence, hash.textValue(), reading.event()))
                    : Optional.empty();
        } catch (JsonProcessingException | UncheckedIOException notJson) {
            return Optional.empty();
        }
    }
}
