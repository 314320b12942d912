package wisp.log;

import java.util.Iterator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import wisp.event.Event;

/**
 * The log of husbandry events. An event is named by its source and id: offering the same event again changes nothing,
 * offering another under the same name is a conflict and is refused. What {@link #append} has acknowledged is durable.
 */
public interface EventLog extends AutoCloseable {

    /**
     * Appends events in the order given, in one transaction.
     *
     * @param whole true: a conflict anywhere keeps every event out; false: only the conflicting ones stay out
     * @throws LogFailure where the log cannot be written; nothing of the batch is then in it
     */
    Appended append(List<Event> events, boolean whole);

    /**
     * Appends a stream of events in one transaction, without holding them all in memory, and keeps or takes back all of
     * it as its caller says at the end. An import of any size is so all or nothing, and a dry run is the real run taken
     * back.
     *
     * @param events asked for one after another; what it throws takes everything back
     * @param each is told what became of every event, in their order: accepted, duplicate or conflict (kept out)
     * @param keep is asked once, after {@code each} has heard of the last event; false leaves the log as it was
     * @return the sequence of the newest event in the log afterwards
     * @throws LogFailure where the log cannot be written; nothing of the stream is then in it
     */
    long appendAll(Iterator<Event> events, Consumer<Appended.Outcome> each, BooleanSupplier keep);

    /** Events with a sequence over {@code after}, in order, at most {@code limit} of them. */
    List<StoredEvent> read(long after, int limit);

    /** Gives every event with a sequence over {@code after}, in order, without holding them all in memory. */
    void replay(long after, Consumer<StoredEvent> reader);

    /** The sequence of the newest event, 0 where there is none. */
    long last();

    /** Walks the whole chain and names the first event that is not as it was written. */
    Verification verify();

    /**
     * Has a bell rung soon after events were appended, by whichever process. A store that is not told of other
     * processes never rings: whoever must know of all events looks now and then by itself.
     *
     * @return once closed, the bell rings no more
     */
    default Listening listen(Runnable bell) {
        return () -> {};
    }

    @Override
    void close();

    /** A bell that may be rung until this is closed. */
    interface Listening extends AutoCloseable {
        @Override
        void close();
    }
}
