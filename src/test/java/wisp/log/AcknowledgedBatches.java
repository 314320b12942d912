package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;

/** The batches that appending processes printed as acknowledged; a log must hold each of them once, whole, in order. */
final class AcknowledgedBatches {
    private final List<String> lines = new ArrayList<>();

    int count() {
        return lines.size();
    }

    /** Kills after some acknowledged batches and a moment more; what was printed before the kill still counts. */
    void killAfter(Process process, int batches, int nanoseconds) throws IOException, InterruptedException {
        try (BufferedReader out = process.inputReader()) {
            for (int i = 0; i < batches; i++) {
                String line = out.readLine();
                assertTrue(line != null, "the process ended by itself");
                add(line);
            }
            LockSupport.parkNanos(nanoseconds);
            process.toHandle().destroyForcibly();
            out.lines().forEach(this::add);
        }
        assertEquals(128 + 9, process.waitFor());
    }

    /** Reads until the process ends. */
    void readAll(Process process) throws IOException {
        try (BufferedReader out = process.inputReader()) {
            out.lines().forEach(this::add);
        }
    }

    /** Notes a line of a process; one that a kill cut off is none. */
    void add(String line) {
        if (line.matches("[a-z]+\\d+-\\d-\\d+ \\d+ \\d+")) {
            lines.add(line);
        }
    }

    void assertKept(EventLog log) {
        Map<String, Long> sequenceById = new HashMap<>();
        Map<String, Integer> sizes = new HashMap<>();
        Verification found = log.verify();
        assertEquals("", found.problem());
        log.replay(0, stored -> {
            assertNull(sequenceById.put(stored.event().id(), stored.sequence()), "an event stands there twice");
            sizes.merge(stored.event().id().replaceAll("/.*", ""), 1, Integer::sum);
        });
        assertEquals(found.events(), sequenceById.size());
        for (String line : lines) {
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
}
