package wisp.event;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;

/** What a sender sends in the tests of this package, at 12:00 UTC on 1 March 2026. */
final class Sent {
    static final EventReader READER = EventReader.offered(
            Set.of("navel-infection", "diarrhoea"), Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC));

    private static final ObjectMapper JSON = new ObjectMapper();

    private Sent() {}

    /** An event as JSON; single quotation marks in the data stand for double ones. */
    static ObjectNode json(String type, String data) {
        try {
            ObjectNode event = JSON.createObjectNode()
                    .put("specversion", "1.0")
                    .put("id", "1")
                    .put("source", "phone")
                    .put("type", type)
                    .put("subject", type.equals("farm-described") ? "farm" : "calf-1")
                    .put("time", "2026-03-01T07:30:00+01:00");
            event.set("data", JSON.readTree(data.replace('\'', '"')));
            return event;
        } catch (JsonProcessingException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    static EventData read(String type, String data) {
        EventReader.Reading reading = READER.read(json(type, data));
        assertEquals(List.of(), reading.faults());
        return reading.event().data();
    }

    /** The faults as they are said, one a line. */
    static String faults(String type, String data) {
        return faults(json(type, data));
    }

    static String faults(ObjectNode event) {
        return said(READER.read(event));
    }

    static String said(EventReader.Reading reading) {
        return String.join("\n", reading.faults().stream().map(Fault::toString).toList());
    }
}
