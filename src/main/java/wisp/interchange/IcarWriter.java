package wisp.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import wisp.event.Amended;
import wisp.event.Event;
import wisp.event.EventReader;
import wisp.log.StoredEvent;

/**
 * Events as an array of ICAR ADE resources, one a line. The standard knows facts, not a stream: an event goes out as
 * its corrections have left it. What has no resource, and every field that its resource cannot hold, is counted.
 */
final class IcarWriter implements EventWriter {
    private final BufferedWriter out;
    private final Corrections corrections;
    private final Map<String, Long> notExported = new TreeMap<>();
    private final Map<String, Long> fieldsLeftOut = new TreeMap<>();
    private long written;

    IcarWriter(Path file, Corrections corrections) throws IOException {
        this.out = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        this.corrections = corrections;
    }

    @Override
    public void write(StoredEvent stored) throws IOException {
        Event event = stored.event();
        String type = event.type().wireName();
        if (corrections.retracted(event)) {
            notExported.merge(type + " (retracted)", 1L, Long::sum);
            return;
        }
        IcarResource resource = new IcarResource(corrected(event));
        Optional<ObjectNode> node = resource.node();
        if (node.isEmpty()) {
            notExported.merge(type, 1L, Long::sum);
            return;
        }
        out.write(written == 0 ? "[\n" : ",\n");
        out.write(node.get().toString());
        written++;
        Set<String> rest = resource.leftOut();
        rest.forEach(field -> fieldsLeftOut.merge(type + " " + field, 1L, Long::sum));
    }

    private Event corrected(Event event) {
        Optional<Amended> amendment = corrections.amended(event);
        if (amendment.isEmpty()) {
            return event;
        }
        OffsetDateTime time = amendment.get().time();
        EventReader.AmendedReading read =
                EventReader.readData(event.type(), amendment.get().dataJson());
        if (!read.faults().isEmpty()) {
            return event;
        }
        return new Event(
                event.source(),
                event.id(),
                event.subject(),
                time,
                read.timeKnown(),
                event.recordedTime(),
                event.recordedBy(),
                read.data(),
                "{\"data\":" + amendment.get().dataJson() + "}");
    }

    @Override
    public long written() {
        return written;
    }

    @Override
    public Map<String, Long> notExported() {
        return notExported;
    }

    @Override
    public Map<String, Long> fieldsLeftOut() {
        return fieldsLeftOut;
    }

    @Override
    public void close() throws IOException {
        out.write(written == 0 ? "[]\n" : "\n]\n");
        out.close();
    }
}
