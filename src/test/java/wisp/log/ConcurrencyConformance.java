package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.log.Appended.Outcome.ACCEPTED;
import static wisp.log.Appended.Outcome.CONFLICT;
import static wisp.log.Appended.Outcome.DUPLICATE;
import static wisp.log.Notes.note;
import static wisp.log.Notes.notes;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import wisp.event.Event;

/** What every store does for many senders and readers at once. */
interface ConcurrencyConformance {
    /** The log of the running test, empty at its beginning. */
    EventLog log();

    @Test
    default void manyThreadsAppendTheSameAndDifferentEvents() throws Exception {
        int threads = 100;
        List<Callable<List<Appended>>> senders = IntStream.range(0, threads)
                .<Callable<List<Appended>>>mapToObj(t -> () -> send(t))
                .toList();
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        Map<Appended.Outcome, Long> count = new EnumMap<>(Appended.Outcome.class);
        try {
            for (Future<List<Appended>> sender : pool.invokeAll(senders)) {
                sender.get().forEach(a -> a.outcomes().forEach(outcome -> count.merge(outcome, 1L, Long::sum)));
            }
        } finally {
            pool.shutdown();
        }
        // 3 events that all send, 3 names that all fight for, 3 of each thread's own
        assertEquals(
                Map.of(
                        ACCEPTED, 3L + 3L + threads * 3L,
                        DUPLICATE, 3L * (threads - 1),
                        CONFLICT, 3L * (threads - 1)),
                count);
        assertEquals(6 + threads * 3L, log().last());
        List<StoredEvent> all = log().read(0, 1_000);
        assertEquals(
                LongStream.rangeClosed(1, log().last()).boxed().toList(),
                all.stream().map(StoredEvent::sequence).toList(),
                "the sequence has no gaps");
        assertEquals(
                all.size(), all.stream().map(e -> e.event().id()).distinct().count(), "each id stands there once");
        assertTrue(log().verify().whole());
    }

    private List<Appended> send(int thread) {
        List<Appended> appended = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            Event shared = note("shared" + i, "the same");
            Event fought = note("fought" + i, "said by " + thread);
            Event own = note("own" + thread + "-" + i, "mine");
            appended.add(
                    log().append(thread % 2 == 0 ? List.of(shared, own, fought) : List.of(own, fought, shared), false));
        }
        return appended;
    }

    @Test
    default void readersSeeWholeBatchesWhileOthersWrite() throws Exception {
        int size = 101;
        int batches = 25;
        ExecutorService pool = Executors.newFixedThreadPool(3);
        try {
            Future<?> writer = pool.submit(() -> {
                for (int batch = 0; batch < batches; batch++) {
                    log().append(notes("batch" + batch + "-", size), true);
                }
            });
            Future<Integer> counter = pool.submit(() -> {
                int looks = 0;
                for (boolean over = false; !over; looks++) {
                    over = writer.isDone();
                    assertEquals(0, log().last() % size, "half a batch was seen");
                }
                return looks;
            });
            Future<Integer> reader = pool.submit(() -> {
                int reads = 0;
                for (boolean over = false; !over; reads++) {
                    over = writer.isDone();
                    AtomicLong seen = new AtomicLong();
                    log().replay(0, stored -> seen.incrementAndGet());
                    assertEquals(0, seen.get() % size, "half a batch was read");
                }
                return reads;
            });
            writer.get();
            assertTrue(counter.get() > 0);
            assertTrue(reader.get() > 0);
            assertEquals((long) batches * size, log().last());
        } finally {
            pool.shutdown();
        }
    }
}
