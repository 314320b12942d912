package wisp.simulation;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import wisp.event.Event;
import wisp.event.EventData;

/** Writes a simulated event as CloudEvents 1.0 JSON, fields always in the same order. */
final class EventJson {
    private static final JsonFactory JSON = new JsonFactory();
    private static final DateTimeFormatter RFC_3339 =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

    private EventJson() {}

    /** The event with its JSON. */
    static Event written(Event event) {
        return new Event(
                event.source(),
                event.id(),
                event.subject(),
                event.time(),
                event.timeKnown(),
                event.recordedTime(),
                event.recordedBy(),
                event.data(),
                json(event));
    }

    /** Only the data, a JSON object as text. */
    static String data(EventData data, boolean timeKnown) {
        return text(out -> data(data, timeKnown, out));
    }

    static String time(OffsetDateTime time) {
        return RFC_3339.format(time);
    }

    private static String json(Event event) {
        return text(out -> {
            out.writeStartObject();
            out.writeStringField("specversion", "1.0");
            out.writeStringField("id", event.id());
            out.writeStringField("source", event.source());
            out.writeStringField("type", event.type().wireName());
            out.writeStringField("subject", event.subject());
            out.writeStringField("time", time(event.time()));
            out.writeStringField("recordedtime", time(event.recordedTime()));
            out.writeStringField("recordedby", event.recordedBy());
            out.writeFieldName("data");
            data(event.data(), event.timeKnown(), out);
            out.writeEndObject();
        });
    }

    private static void data(EventData data, boolean timeKnown, JsonGenerator out) throws IOException {
        DataJson fields = new DataJson(out);
        out.writeStartObject();
        if (!timeKnown) {
            out.writeBooleanField("time_known", false);
        }
        fields.write(data);
        out.writeEndObject();
    }

    /** Something that writes JSON. */
    private interface Writing {
        void to(JsonGenerator out) throws IOException;
    }

    private static String text(Writing writing) {
        StringWriter text = new StringWriter(400);
        try (JsonGenerator out = JSON.createGenerator(text)) {
            writing.to(out);
        } catch (IOException cannotBe) {
            throw new UncheckedIOException("writing to memory failed", cannotBe);
        }
        return text.toString();
    }
}
