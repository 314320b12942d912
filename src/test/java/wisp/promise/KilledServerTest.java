package wisp.promise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The server is killed (SIGKILL) at random points, while it starts and while four phones send to it. The long run:
 * {@code mvn test -Dtest=KilledServerTest -Dwisp.kills=200}, with another {@code -Dwisp.seed=N} if wanted.
 */
class KilledServerTest {
    private static final int KILLS = Integer.getInteger("wisp.kills", 15);
    private static final long SEED = Long.getLong("wisp.seed", 20261125);

    @TempDir
    private Path folder;

    private Path data;

    private final Random random = new Random(SEED);
    private final List<Sender> senders =
            IntStream.range(0, 4).mapToObj(i -> new Sender("s" + i, SEED + i)).toList();

    @BeforeEach
    void nameTheDataFolder() {
        data = folder.resolve("data");
    }

    @Test
    void whatWasAcknowledgedIsThereOnceAndInOrderAfterEveryKill() throws Exception {
        System.out.println("seed of the killed server: " + SEED + ", kills: " + KILLS);
        int starting = 0;
        try (Replay replay = new Replay()) {
            for (int kill = 0; kill < KILLS; kill++) {
                if (random.nextInt(6) == 0) {
                    killWhileItStarts();
                    starting++;
                } else {
                    killWhileItWrites(replay);
                }
            }
            try (ServerProcess server = ServerProcess.start(data)) {
                check(server, replay);
            }
            int batches =
                    senders.stream().mapToInt(s -> s.acknowledged().size()).sum();
            System.out.println("killed " + KILLS + " times, " + starting + " of them while starting; " + batches
                    + " batches acknowledged, " + replay.sequences().size() + " events in the log");
            assertTrue(batches > KILLS, batches + " batches were acknowledged");
        }
    }

    private void killWhileItStarts() throws Exception {
        try (ServerProcess server = ServerProcess.launch(data)) {
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(random.nextInt(2_500)));
            server.kill();
        }
    }

    private void killWhileItWrites(Replay replay) throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(senders.size());
        try (ServerProcess server = ServerProcess.start(data)) {
            check(server, replay);
            AtomicInteger answers = new AtomicInteger();
            List<? extends Future<?>> sending = senders.stream()
                    .map(sender -> pool.submit(() -> sender.sendTo(server, answers)))
                    .toList();
            int enough = 1 + random.nextInt(30);
            while (answers.get() < enough && sending.stream().noneMatch(Future::isDone)) {
                LockSupport.parkNanos(100_000);
            }
            LockSupport.parkNanos(random.nextInt(20_000_000));
            server.kill();
            for (Future<?> each : sending) {
                each.get(1, TimeUnit.MINUTES);
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private void check(ServerProcess server, Replay replay) throws Exception {
        replay.follow(server);
        Map<String, Long> sequences = replay.sequences();
        for (Sender sender : senders) {
            long before = 0;
            for (Sender.Batch batch : sender.acknowledged()) {
                Long first = sequences.get(Births.id(batch.name(), 0));
                assertNotNull(first, "acknowledged and lost: " + batch);
                assertTrue(first > before, "out of order: " + batch);
                for (int i = 1; i < batch.size(); i++) {
                    assertEquals(first + i, sequences.get(Births.id(batch.name(), i)), "torn apart: " + batch);
                }
                before = first + batch.size() - 1;
            }
        }
    }
}
