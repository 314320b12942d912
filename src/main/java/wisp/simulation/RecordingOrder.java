package wisp.simulation;

import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import wisp.event.Event;

/**
 * Events that wait for their turn in order of recording; those recorded in the same minute keep the order in which they
 * came. No calf has an event recorded before its birth: what was recorded before the next birth can go, and only young
 * calves are held in memory.
 */
final class RecordingOrder {
    /** An event, the second at which it was recorded, and its place in the order of coming. */
    private record Waiting(Event event, long second, long came) {}

    private final PriorityQueue<Waiting> waiting =
            new PriorityQueue<>(Comparator.comparingLong(Waiting::second).thenComparingLong(Waiting::came));
    private final Consumer<Event> to;
    private long came;

    RecordingOrder(Consumer<Event> to) {
        this.to = to;
    }

    void add(Event event) {
        waiting.add(new Waiting(event, event.recordedTime().toEpochSecond(), came++));
    }

    /** Hands on, with its JSON, what was recorded before this moment. */
    void handOnBefore(OffsetDateTime moment) {
        handOnBefore(moment.toEpochSecond());
    }

    void handOnAll() {
        handOnBefore(Long.MAX_VALUE);
    }

    private void handOnBefore(long second) {
        while (!waiting.isEmpty() && waiting.peek().second < second) {
            to.accept(EventJson.written(waiting.poll().event));
        }
    }
}
