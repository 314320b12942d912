package wisp.log;

import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wisp.event.Event;
import wisp.event.EventReader;

/**
 * One line of the event table as it stands there, believed only after {@link #problem}. Its columns repeat attributes
 * of the JSON and are text exactly as there.
 */
record StoredRow(
        long sequence,
        String source,
        String id,
        String type,
        String subject,
        String time,
        String recordedTime,
        String hash,
        String json) {
    private static final DateTimeFormatter MILLISECONDS =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSX").withZone(ZoneOffset.UTC);

    /** The time of a clock as the log writes {@code recordedtime}: UTC with milliseconds. */
    static String now(Clock clock) {
        return MILLISECONDS.format(clock.instant());
    }

    /** The rows of new events, numbered and chained after the head; the head may be null where the log is empty. */
    static List<StoredRow> following(StoredRow head, List<String> canonical) {
        long sequence = head == null ? 0 : head.sequence;
        String previous = head == null ? HashChain.BEGINNING : head.hash;
        List<StoredRow> rows = new ArrayList<>(canonical.size());
        for (String json : canonical) {
            previous = HashChain.next(previous, json);
            rows.add(of(++sequence, previous, json));
        }
        return rows;
    }

    private static StoredRow of(long sequence, String hash, String json) {
        Columns columns = Columns.of(json);
        return new StoredRow(
                sequence,
                columns.source(),
                columns.id(),
                columns.type(),
                columns.subject(),
                columns.time(),
                columns.recordedTime(),
                hash,
                json);
    }

    EventName name() {
        return new EventName(source, id);
    }

    /** What is wrong with this row when it should follow the one with the previous hash; a whole sentence. */
    Optional<String> problem(String previous) {
        if (!HashChain.next(previous, json).equals(hash)) {
            return Optional.of("its hash does not follow from its content and the hash before it");
        }
        return Columns.of(json).difference(this);
    }

    /** The event; its JSON was held against the rules once, when it came in. */
    StoredEvent event() {
        EventReader.Reading reading = EventReader.recorded().read(json);
        if (!reading.sound()) {
            throw new LogFailure(
                    "Event " + sequence + " can no longer be read: "
                            + reading.faults().get(0) + " Run verify.",
                    null);
        }
        Event read = reading.event();
        return new StoredEvent(
                sequence,
                hash,
                new Event(
                        read.source(),
                        read.id(),
                        read.subject(),
                        read.time(),
                        read.timeKnown(),
                        read.recordedTime(),
                        read.recordedBy(),
                        read.data(),
                        json));
    }
}
