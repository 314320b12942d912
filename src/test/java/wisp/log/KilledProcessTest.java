package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Processes that write are killed (SIGKILL) or run beside each other; the log keeps what it acknowledged. */
class KilledProcessTest {
    // The whole server is killed 15 times by KilledServerTest; these look closer, at the log alone.
    private static final int KILLS = 6;

    @TempDir
    private Path folder;

    private final AcknowledgedBatches acknowledged = new AcknowledgedBatches();

    @Test
    void whatWasAcknowledgedOutlivesAnyKill() throws Exception {
        long seed = 20260301;
        System.out.println("seed of the kills: " + seed);
        Random random = new Random(seed);
        for (int kill = 0; kill < KILLS; kill++) {
            Process process = AppendingProcess.start(folder.toString(), "run" + kill, Integer.MAX_VALUE, seed + kill);
            acknowledged.killAfter(process, 1 + random.nextInt(25), random.nextInt(3_000_000));
            assertKept();
        }
        assertTrue(acknowledged.count() >= KILLS, acknowledged.count() + " batches were acknowledged");
    }

    private void assertKept() {
        try (SqliteLog log = SqliteLog.open(folder, Notes.CLOCK)) {
            acknowledged.assertKept(log);
        }
    }

    @Test
    void severalProcessesAppendToOneLogAtOnce() throws Exception {
        long seed = 5;
        System.out.println("seed of the processes beside each other: " + seed);
        List<Process> processes = new ArrayList<>();
        for (int p = 0; p < 2; p++) {
            processes.add(AppendingProcess.start(folder.toString(), "run" + p, 20, seed));
        }
        for (Process process : processes) {
            acknowledged.readAll(process);
            assertTrue(process.waitFor(1, TimeUnit.MINUTES));
            assertEquals(0, process.exitValue());
        }
        assertEquals(2 * 4 * 20, acknowledged.count());
        assertKept();
    }
}
