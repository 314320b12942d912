package wisp.log;

import java.time.Clock;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import wisp.event.Event;

/** A log that is gone with the process: for tests, and for trying an import out. */
public final class MemoryLog implements EventLog {
    private final Clock clock;
    private final Map<EventName, String> byName = new HashMap<>();
    private final ConcurrentSkipListMap<Long, StoredRow> rows = new ConcurrentSkipListMap<>();
    private volatile long last;

    /** An empty log whose clock tells when an event was recorded. */
    public MemoryLog(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Appended append(List<Event> events, boolean whole) {
        List<Offered> batch = events.stream().map(Offered::of).toList();
        synchronized (byName) {
            Admission admission = Admission.decide(batch, known(batch), StoredRow.now(clock), whole);
            List<StoredRow> added = add(admission);
            return new Appended(
                    admission.outcomes(), added.stream().map(StoredRow::event).toList(), last);
        }
    }

    @Override
    public long appendAll(Iterator<Event> events, Consumer<Appended.Outcome> each, BooleanSupplier keep) {
        synchronized (byName) {
            List<Offered> batch = Offered.some(events, Integer.MAX_VALUE);
            Admission admission = Admission.decide(batch, known(batch), StoredRow.now(clock), false);
            admission.outcomes().forEach(each);
            if (keep.getAsBoolean()) {
                add(admission);
            }
            return last;
        }
    }

    private List<StoredRow> add(Admission admission) {
        StoredRow head = last == 0 ? null : rows.get(last);
        List<StoredRow> added = StoredRow.following(head, admission.accepted());
        for (StoredRow row : added) {
            rows.put(row.sequence(), row);
            byName.put(row.name(), row.json());
        }
        last += added.size();
        return added;
    }

    private Map<EventName, String> known(List<Offered> batch) {
        return batch.stream()
                .map(Offered::name)
                .distinct()
                .filter(byName::containsKey)
                .collect(Collectors.toMap(name -> name, byName::get));
    }

    @Override
    public List<StoredEvent> read(long after, int limit) {
        return CheckedRead.page(this::from, after, limit);
    }

    @Override
    public void replay(long after, Consumer<StoredEvent> reader) {
        CheckedRead.replay(this::from, after, last, reader);
    }

    @Override
    public long last() {
        return last;
    }

    @Override
    public Verification verify() {
        return new ChainWalk(this::from).walk();
    }

    @Override
    public void close() {
        // Nothing is held outside the process.
    }

    /** Only whole batches: {@code last} moves after the last row of a batch is in. */
    private List<StoredRow> from(long from, long limit) {
        long upTo = last;
        return rows.tailMap(from).values().stream()
                .takeWhile(row -> row.sequence() <= upTo)
                .limit(limit)
                .toList();
    }
}
