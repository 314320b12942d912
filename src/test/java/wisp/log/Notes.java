package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import wisp.event.Event;
import wisp.event.EventReader;

/** Small events for the tests of the log, all read from JSON as a sender's would be. */
final class Notes {
    /** The clock of the tests' logs. */
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T08:00:00.123456Z"), ZoneOffset.UTC);

    /** How the log writes that clock's time. */
    static final String NOW = "2026-03-01T08:00:00.123Z";

    private static final ObjectMapper JSON = new ObjectMapper();

    private Notes() {}

    /** A note about a calf, from the phone of the tests. */
    static Event note(String id, String text) {
        return event(json("phone", id, text));
    }

    /** Notes named PREFIX1, PREFIX2 …. */
    static List<Event> notes(String prefix, int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> note(prefix + i, "note " + i))
                .toList();
    }

    /** A note of some source. */
    static Event noteOf(String source, String id, String text) {
        return event(json(source, id, text));
    }

    /** A note that says itself when it was recorded. */
    static Event recorded(String id, String text, String recordedTime) {
        return event(json("phone", id, text).put("recordedtime", recordedTime));
    }

    static Event event(ObjectNode json) {
        return event(json.toString());
    }

    static Event event(String json) {
        EventReader.Reading reading = EventReader.recorded().read(json);
        assertEquals(List.of(), reading.faults(), json);
        return reading.event();
    }

    static ObjectNode json(String source, String id, String text) {
        ObjectNode event = JSON.createObjectNode()
                .put("specversion", "1.0")
                .put("type", "noted")
                .put("source", source)
                .put("id", id)
                .put("subject", "calf-1")
                .put("time", "2026-03-01T07:30:00+00:00");
        event.putObject("data").put("text", text);
        return event;
    }
}
