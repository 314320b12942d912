package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Processes that write are killed (SIGKILL) or run beside each other; the log keeps what it acknowledged. */
class KilledProcessTest {
    private static final int KILLS = 15;

    @TempDir
    private Path folder;

    private final List<String> acknowledged = new ArrayList<>();

    @Test
    void whatWasAcknowledgedOutlivesAnyKill() throws Exception {
        long seed = 20260301;
        System.out.println("seed of the kills: " + seed);
        Random random = new Random(seed);
        for (int kill = 0; kill < KILLS; kill++) {
            Process process = AppendingProcess.start(folder, "run" + kill, Integer.MAX_VALUE, seed + kill);
            killAfter(process, 1 + random.nextInt(25), random.nextInt(3_000_000));
            assertKept();
        }
        assertTrue(acknowledged.size() >= KILLS, acknowledged.size() + " batches were acknowledged");
    }

    /** Kills after some acknowledged batches and a moment more; what was printed before the kill still counts. */
    private void killAfter(Process process, int batches, int nanoseconds) throws IOException, InterruptedException {
        try (BufferedReader out = process.inputReader()) {
            for (int i = 0; i < batches; i++) {
                String line = out.readLine();
                assertTrue(line != null, "the process ended by itself");
                acknowledged.add(line);
            }
            LockSupport.parkNanos(nanoseconds);
            process.toHandle().destroyForcibly();
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                if (line.matches("run\\d+-\\d-\\d+ \\d+ \\d+")) {
                    acknowledged.add(line);
                }
            }
        }
        assertEquals(128 + 9, process.waitFor());
    }

    private void assertKept() {
        Map<String, Long> sequenceById = new HashMap<>();
        Map<String, Integer> sizes = new HashMap<>();
        try (SqliteLog log = SqliteLog.open(folder, Notes.CLOCK)) {
            Verification found = log.verify();
            assertEquals("", found.problem());
            log.replay(0, stored -> {
                assertNull(sequenceById.put(stored.event().id(), stored.sequence()), "an event stands there twice");
                sizes.merge(stored.event().id().replaceAll("/.*", ""), 1, Integer::sum);
            });
            assertEquals(found.events(), sequenceById.size());
        }
        for (String line : acknowledged) {
            String[] words = line.split(" ");
            int size = Integer.parseInt(words[1]);
            assertEquals(size, sizes.get(words[0]), "the size of batch " + words[0]);
            for (int i = 0; i < size; i++) {
                assertEquals(
                        Long.parseLong(words[2]) + i,
                        sequenceById.get(words[0] + "/" + (i + 1)),
                        "event " + (i + 1) + " of batch " + words[0]);
            }
        }
    }

    @Test
    void severalProcessesAppendToOneLogAtOnce() throws Exception {
        long seed = 5;
        System.out.println("seed of the processes beside each other: " + seed);
        List<Process> processes = new ArrayList<>();
        for (int p = 0; p < 2; p++) {
            processes.add(AppendingProcess.start(folder, "run" + p, 20, seed));
        }
        for (Process process : processes) {
            try (BufferedReader out = process.inputReader()) {
                out.lines().filter(line -> !line.equals("done")).forEach(acknowledged::add);
            }
            assertTrue(process.waitFor(1, TimeUnit.MINUTES));
            assertEquals(0, process.exitValue());
        }
        assertEquals(2 * 4 * 20, acknowledged.size());
        assertKept();
    }
}
