package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.log.Notes.CLOCK;
import static wisp.log.Notes.notes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file is cut short, or some of its bits turn: what is left is never served as if it were the log. */
class DamagedFileTest {
    private static final SqliteLimits HASTY = new SqliteLimits(Duration.ofMillis(50), SqliteLimits.USUAL.pages());
    private static final int EVENTS = 120;

    @TempDir
    private Path sound;

    @TempDir
    private Path damaged;

    private byte[] bytes;
    private byte[] writeAhead;
    private List<StoredEvent> original;

    @BeforeEach
    void aSoundFile() throws IOException {
        try (SqliteLog log = SqliteLog.open(sound, CLOCK)) {
            log.append(notes("n", EVENTS), true);
        }
        bytes = Files.readAllBytes(sound.resolve("wisp.db"));
        try (SqliteLog log = SqliteLog.open(sound, CLOCK)) {
            for (int batch = 0; batch < 8; batch++) {
                log.append(notes("batch" + batch + "-", 5), true);
            }
            writeAhead = Files.readAllBytes(sound.resolve("wisp.db-wal"));
            original = log.read(0, 1_000);
        }
    }

    /** What came of opening a damaged copy: a refusal, something that verify found, or the log as it was. */
    private String fate(byte[] database, byte[] wal) throws IOException {
        for (String old : List.of("wisp.db", "wisp.db-wal", "wisp.db-shm")) {
            Files.deleteIfExists(damaged.resolve(old));
        }
        Files.write(damaged.resolve("wisp.db"), database);
        if (wal != null) {
            Files.write(damaged.resolve("wisp.db-wal"), wal);
        }
        List<StoredEvent> served = new ArrayList<>();
        try (SqliteLog log = SqliteLog.open(damaged, CLOCK, HASTY)) {
            try {
                log.replay(0, served::add);
            } catch (LogFailure refused) {
                assertFalse(refused.getMessage().isBlank());
            }
            assertEquals(original.subList(0, served.size()), served, "served what was never written");
            Verification found = log.verify();
            if (!found.whole()) {
                assertTrue(found.problem().endsWith("."), found.problem());
                return "found at " + found.broken();
            }
            assertEquals(served.size(), found.events());
            return "whole " + served.size();
        } catch (LogFailure refused) {
            return "refused";
        }
    }

    @Test
    void aTurnedBitIsFoundOrHarmless() throws IOException {
        long seed = 20261125;
        System.out.println("seed of the turned bits: " + seed);
        Random random = new Random(seed);
        int found = 0;
        int harmless = 0;
        for (int i = 0; i < 100; i++) {
            byte[] copy = bytes.clone();
            int at = random.nextInt(copy.length);
            copy[at] ^= (byte) (1 << random.nextInt(8));
            String fate = fate(copy, null);
            if (fate.equals("whole " + EVENTS)) {
                harmless++;
            } else {
                assertFalse(fate.startsWith("whole"), "byte " + at + ": " + fate);
                found++;
            }
        }
        assertTrue(found > harmless, found + " found, " + harmless + " in unused space");
    }

    @Test
    void theBitsOfAnEventAreWatched() throws IOException {
        String marker = "\"note 77\"";
        int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf(marker);
        assertTrue(at > 0);
        for (int bit = 0; bit < 8 * marker.length(); bit += 5) {
            byte[] copy = bytes.clone();
            copy[at + bit / 8] ^= (byte) (1 << bit % 8);
            assertEquals("found at 77", fate(copy, null), "bit " + bit);
        }
    }

    @Test
    void aFileThatIsCutShortIsFound() throws IOException {
        long seed = 7;
        System.out.println("seed of the cuts: " + seed);
        Random random = new Random(seed);
        for (int i = 0; i < 24; i++) {
            int length = i < 8 ? bytes.length * i / 8 / 4096 * 4096 : random.nextInt(bytes.length);
            byte[] copy = Arrays.copyOf(bytes, length);
            String fate = fate(copy, null);
            assertFalse(fate.startsWith("whole"), length + " of " + bytes.length + " bytes: " + fate);
        }
    }

    @Test
    void aTornTailOfTheWriteAheadLogLeavesWholeBatches() throws IOException {
        long seed = 11;
        System.out.println("seed of the torn tails: " + seed);
        Random random = new Random(seed);
        assertEquals("whole " + (EVENTS + 40), fate(bytes, writeAhead));
        assertEquals("whole " + EVENTS, fate(bytes, new byte[0]));
        for (int i = 0; i < 20; i++) {
            byte[] torn = Arrays.copyOf(writeAhead, random.nextInt(writeAhead.length));
            assertWholeBatches(fate(bytes, torn));
            byte[] turned = writeAhead.clone();
            turned[random.nextInt(turned.length)] ^= (byte) (1 << random.nextInt(8));
            assertWholeBatches(fate(bytes, turned));
        }
    }

    private static void assertWholeBatches(String fate) {
        assertTrue(fate.startsWith("whole "), fate);
        int events = Integer.parseInt(fate.substring("whole ".length()));
        assertTrue(events >= EVENTS && (events - EVENTS) % 5 == 0, fate);
    }

    @Test
    void aDamagedIndexIsReportedThoughEveryEventCanBeRead() throws Exception {
        Files.write(damaged.resolve("wisp.db"), bytes);
        try (SqliteFile file = new SqliteFile(damaged)) {
            file.run(
                    "PRAGMA writable_schema = ON",
                    "UPDATE sqlite_master SET sql = NULL, name = 'sqlite_autoindex_event_1', rootpage ="
                            + " (SELECT rootpage FROM sqlite_master WHERE name = 'event')"
                            + " WHERE name = 'sqlite_autoindex_event_1'");
        }
        try (SqliteLog log = SqliteLog.open(damaged, CLOCK, HASTY)) {
            LogFailure refused = assertThrows(LogFailure.class, log::verify);
            String sentence = damaged.resolve("wisp.db") + " is damaged, though every event in it can be read: ";
            assertTrue(refused.getMessage().startsWith(sentence), refused.getMessage());
        }
    }
}
