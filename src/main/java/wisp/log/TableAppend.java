package wisp.log;

import java.time.Clock;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import wisp.event.Event;

/** How events enter an event table, inside a transaction that no other writer can disturb. */
final class TableAppend {
    private static final int STREAM_BATCH = 1_000;

    private final EventTable table;
    private final Clock clock;

    TableAppend(EventTable table, Clock clock) {
        this.table = table;
        this.clock = clock;
    }

    /** Appends one batch. */
    Appended batch(List<Offered> batch, boolean whole) {
        long last = table.last();
        StoredRow head = CheckedRead.head(table, last);
        Admission admission = Admission.decide(batch, table.known(batch), StoredRow.now(clock), whole);
        List<StoredRow> added = StoredRow.following(head, admission.accepted());
        List<StoredEvent> stored = added.stream().map(StoredRow::event).toList();
        table.insert(added);
        return new Appended(admission.outcomes(), stored, last + stored.size());
    }

    /** Appends a stream of events, some at a time. */
    void stream(Iterator<Event> events, Consumer<Appended.Outcome> each) {
        StoredRow head = CheckedRead.head(table, table.last());
        String now = StoredRow.now(clock);
        while (events.hasNext()) {
            List<Offered> batch = Offered.some(events, STREAM_BATCH);
            Admission admission = Admission.decide(batch, table.known(batch), now, false);
            List<StoredRow> added = StoredRow.following(head, admission.accepted());
            table.insert(added);
            head = added.isEmpty() ? head : added.get(added.size() - 1);
            admission.outcomes().forEach(each);
        }
    }
}
