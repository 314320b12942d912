package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import wisp.event.Event;
import wisp.testing.OwnPostgres;
import wisp.testing.PostgresServer;

/**
 * Processes that write to PostgreSQL are killed (SIGKILL), and PostgreSQL itself; the log keeps what it acknowledged.
 */
@ExtendWith(OwnPostgres.class)
@Timeout(300)
class PostgresKilledTest {
    private static final int CLIENT_KILLS = 15;
    private static final int SERVER_KILLS = 5;

    private final PostgresServer server;
    private final String address;
    private final AcknowledgedBatches acknowledged = new AcknowledgedBatches();

    PostgresKilledTest(PostgresServer server) {
        this.server = server;
        this.address = server.newSchema();
    }

    private void assertKept() {
        try (EventLog log = Logs.open(address, Notes.CLOCK)) {
            acknowledged.assertKept(log);
        }
    }

    @Test
    void whatWasAcknowledgedOutlivesAnyKillOfTheWriter() throws Exception {
        long seed = 20260302;
        System.out.println("seed of the kills of writers: " + seed);
        Random random = new Random(seed);
        // The next writer starts while this one is at work, so that kills also meet a waiting neighbour.
        Process process = AppendingProcess.start(address, "run0", Integer.MAX_VALUE, seed);
        for (int kill = 1; kill <= CLIENT_KILLS; kill++) {
            Process next = AppendingProcess.start(address, "run" + kill, Integer.MAX_VALUE, seed + kill);
            acknowledged.killAfter(process, 1 + random.nextInt(25), random.nextInt(3_000_000));
            process = next;
        }
        acknowledged.killAfter(process, 1, 0);
        assertTrue(acknowledged.count() >= CLIENT_KILLS, acknowledged.count() + " batches were acknowledged");
        assertKept();
    }

    @Test
    void whatWasAcknowledgedOutlivesAnyKillOfTheServer() throws InterruptedException {
        long seed = 20260303;
        System.out.println("seed of the kills of PostgreSQL: " + seed);
        Random random = new Random(seed);
        try (EventLog log = Logs.open(address, Notes.CLOCK)) {
            List<Sender> senders = new ArrayList<>();
            for (int thread = 0; thread < 3; thread++) {
                senders.add(new Sender(log, "sender0-" + thread, random.nextLong()));
            }
            senders.forEach(Thread::start);
            for (int kill = 0; kill < SERVER_KILLS; kill++) {
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(100 + random.nextInt(300)));
                server.kill();
                server.start();
                assertEquals("", log.verify().problem());
            }
            for (Sender sender : senders) {
                sender.enough = true;
                sender.join();
                assertNull(sender.wrong, () -> sender.wrong);
            }
            acknowledged.assertKept(log);
        }
        assertTrue(acknowledged.count() >= SERVER_KILLS, acknowledged.count() + " batches were acknowledged");
    }

    /** Sends batch after batch, each again and again until it is answered, as a phone would. */
    private final class Sender extends Thread {
        private final EventLog log;
        private final String prefix;
        private final Random random;
        private volatile boolean enough;
        private volatile String wrong;

        Sender(EventLog log, String prefix, long seed) {
            this.log = log;
            this.prefix = prefix;
            this.random = new Random(seed);
        }

        @Override
        public void run() {
            for (int batch = 0; !enough; batch++) {
                String name = prefix + "-" + batch;
                List<Event> events = Notes.notes(name + "/", 1 + random.nextInt(5));
                Appended answer = untilAnswered(events);
                if (answer.stored().size() == events.size()) {
                    synchronized (acknowledged) {
                        acknowledged.add(name + " " + events.size() + " "
                                + answer.stored().get(0).sequence());
                    }
                } else if (answer.count(Appended.Outcome.DUPLICATE) != events.size()) {
                    wrong = "half of the batch " + name + " was kept: " + answer.outcomes();
                }
            }
        }

        private Appended untilAnswered(List<Event> events) {
            while (true) {
                try {
                    return log.append(events, true);
                } catch (LogFailure away) {
                    LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(20));
                }
            }
        }
    }
}
