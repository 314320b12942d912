package wisp.interchange;

import java.io.IOException;
import java.util.Map;
import wisp.log.StoredEvent;

/** Writes events into one open file. */
interface EventWriter extends AutoCloseable {

    /** Writes an event, or counts it among those that have no place in the format. */
    void write(StoredEvent event) throws IOException;

    /** Events written. */
    long written();

    /** Events without a place in the format, by type. */
    default Map<String, Long> notExported() {
        return Map.of();
    }

    /** Fields without a place in the format. */
    default Map<String, Long> fieldsLeftOut() {
        return Map.of();
    }

    @Override
    void close() throws IOException;
}
