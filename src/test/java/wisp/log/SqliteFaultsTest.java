package wisp.log;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.log.Appended.Outcome.DUPLICATE;
import static wisp.log.Notes.CLOCK;
import static wisp.log.Notes.note;
import static wisp.log.Notes.notes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/** Each thing that can be wrong with a data folder gives one sentence, and the log stays as it was. */
class SqliteFaultsTest {
    private static final SqliteLimits HASTY = new SqliteLimits(Duration.ofMillis(200), SqliteLimits.USUAL.pages());

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void nameTheFile() {
        file = folder.resolve("wisp.db");
    }

    private void assertOpenRefused(String sentence) {
        LogFailure refused = assertThrows(
                LogFailure.class, () -> SqliteLog.open(folder, CLOCK, HASTY).close());
        assertEquals(sentence, refused.getMessage());
    }

    @Test
    void aDataFolderIsMadeWithItsParents() {
        Path deep = folder.resolve("a farm/2026/ünder");
        try (EventLog log = Logs.open(deep.toString(), CLOCK)) {
            log.append(notes("n", 3), true);
        }
        try (EventLog log = Logs.open(deep.toString(), CLOCK)) {
            assertEquals(3, log.last());
        }
        assertTrue(Files.exists(deep.resolve("wisp.db")));
    }

    @Test
    void aFolderWithAQuestionMarkOrAPercentSignIsThatFolder() {
        Path odd = folder.resolve("which?cache=shared&100%41#x");
        try (EventLog log = Logs.open(odd.toString(), CLOCK)) {
            log.append(notes("n", 1), true);
        }
        assertTrue(Files.exists(odd.resolve("wisp.db")));
    }

    @Test
    void theLogOutlivesARestart() {
        List<StoredEvent> before;
        try (SqliteLog log = SqliteLog.open(folder, CLOCK)) {
            log.append(notes("n", 20), true);
            before = log.read(0, 100);
        }
        try (SqliteLog log = SqliteLog.open(folder, CLOCK)) {
            assertEquals(before, log.read(0, 100));
            assertEquals(
                    List.of(DUPLICATE),
                    log.append(List.of(note("n7", "note 7")), true).outcomes());
            assertEquals(21, log.append(List.of(note("new", "x")), true).last());
            assertTrue(log.verify().whole());
        }
    }

    @Test
    void theFileIsKeptInWriteAheadMode() throws SQLException {
        try (SqliteLog log = SqliteLog.open(folder, CLOCK);
                Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
                var mode = other.createStatement().executeQuery("PRAGMA journal_mode")) {
            assertEquals("wal", mode.getString(1));
            assertEquals(0, log.last());
        }
    }

    @Test
    void everyCommitWaitsForTheDisk() throws SQLException {
        try (SqliteConnections connections = new SqliteConnections(file, SqliteLimits.USUAL);
                Statement sql = connections.writer.createStatement();
                ResultSet full = sql.executeQuery("PRAGMA synchronous")) {
            assertEquals(2, full.getInt(1), "FULL, for which SQLite syncs its write-ahead log at every commit");
        }
    }

    @Test
    void aFileInPlaceOfTheFolderIsRefused() throws IOException {
        Path plain = Files.writeString(folder.resolve("notes.txt"), "mine");
        LogFailure refused = assertThrows(LogFailure.class, () -> Logs.open(plain.toString(), CLOCK));
        assertEquals(plain + " is a file, not a folder. Choose another data folder.", refused.getMessage());
        assertEquals("mine", Files.readString(plain));
    }

    @Test
    void aFolderUnderAFileIsRefused() throws IOException {
        Path under = Files.writeString(folder.resolve("notes.txt"), "mine").resolve("data");
        LogFailure refused = assertThrows(LogFailure.class, () -> Logs.open(under.toString(), CLOCK));
        assertTrue(refused.getMessage().startsWith("The data folder " + under + " cannot be made ("));
        assertTrue(refused.getMessage().endsWith("). Choose a folder that this user may write to."));
    }

    @Test
    void anAddressWithoutAStoreIsRefused() {
        LogFailure refused = assertThrows(LogFailure.class, () -> Logs.open("jdbc:nosuch:thing", CLOCK));
        assertEquals(
                "There is no store for jdbc:nosuch. Give a data folder, or a PostgreSQL database as"
                        + " jdbc:postgresql://HOST/DATABASE?user=NAME.",
                refused.getMessage());
    }

    @Test
    void aFolderInPlaceOfTheFileIsRefused() throws IOException {
        Files.createDirectory(file);
        assertOpenRefused(file + " cannot be written: the folder or the file is read-only, or belongs to somebody else."
                + " It was left as it is. Give this user the right to write there, or choose another data folder.");
    }

    @Test
    void aFileThatIsNotADatabaseIsRefusedAndLeft() throws IOException {
        Files.writeString(file, "These are my holiday pictures. ".repeat(100));
        byte[] before = Files.readAllBytes(file);
        assertOpenRefused(file + " is not a database, or its beginning is damaged. It was left as it is."
                + " Restore the last backup, or choose another data folder.");
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void anotherProgramsDatabaseIsRefusedAndLeft() throws Exception {
        try (SqliteFile other = new SqliteFile(folder)) {
            other.run("CREATE TABLE song (name TEXT)");
        }
        byte[] before = Files.readAllBytes(file);
        assertOpenRefused(file + " is the database of another program. Choose another data folder.");
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void aNewerSchemaIsRefusedAndLeft() throws Exception {
        SqliteLog.open(folder, CLOCK).close();
        try (SqliteFile newer = new SqliteFile(folder)) {
            newer.run("PRAGMA user_version = 99");
        }
        byte[] before = Files.readAllBytes(file);
        assertOpenRefused(file + " was written by a newer Wisp (schema 99, this one knows 1). Start the newer Wisp.");
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void anEmptyFileIsNotTakenForANewLog() throws IOException {
        Files.createFile(file);
        assertOpenRefused(file + " is empty: the log that was there has been cut off, or was never begun."
                + " Restore the last backup, or remove the file to begin a new log.");
        assertEquals(0, Files.size(file));
    }

    @Test
    void aLockedDatabaseGivesOneSentenceAndTakesEventsAgainAfterwards() throws Exception {
        try (SqliteLog log = SqliteLog.open(folder, CLOCK, HASTY);
                SqliteFile other = new SqliteFile(folder)) {
            log.append(notes("n", 2), true);
            other.run("BEGIN IMMEDIATE");
            LogFailure refused = assertThrows(LogFailure.class, () -> log.append(notes("m", 2), true));
            assertEquals(
                    "Another process has kept " + file + " locked for 0.2 s. Nothing of this batch was kept."
                            + " Stop that process, or try again.",
                    refused.getMessage());
            assertEquals(2, log.read(0, 10).size(), "reading goes on while another writes");
            other.run("ROLLBACK");
            assertEquals(4, log.append(notes("m", 2), true).last());
        }
    }

    @Test
    void aDatabaseThatIsLockedWhenItIsOpenedIsRefused() throws Exception {
        SqliteLog.open(folder, CLOCK).close();
        try (SqliteFile other = new SqliteFile(folder)) {
            other.run("PRAGMA locking_mode = EXCLUSIVE", "BEGIN EXCLUSIVE");
            assertOpenRefused("Another process has kept " + file + " locked for 0.2 s. It was left as it is."
                    + " Stop that process, or try again.");
        }
    }

    @Test
    void aFullDiskKeepsNothingOfTheBatchAndLosesNothingBefore() {
        SqliteLimits small = new SqliteLimits(Duration.ofMillis(200), 24);
        try (SqliteLog log = SqliteLog.open(folder, CLOCK, small)) {
            log.append(notes("n", 20), true);
            LogFailure refused = assertThrows(LogFailure.class, () -> log.append(notes("m", 1_000), true));
            assertEquals(
                    "The disk that holds " + file + " is full. Nothing of this batch was kept. Free some space and try"
                            + " again.",
                    refused.getMessage());
            assertEquals(20, log.last());
            assertTrue(log.verify().whole());
            assertEquals(21, log.append(List.of(note("small", "x")), true).last(), "a small one still fits");
        }
        try (SqliteLog log = SqliteLog.open(folder, CLOCK)) {
            assertEquals(1_021, log.append(notes("m", 1_000), true).last(), "and all of it with more space");
            assertTrue(log.verify().whole());
        }
    }

    @Test
    void aFileThatIsTakenAwayWhileInUseAcknowledgesNothingMore() throws IOException {
        try (SqliteLog log = SqliteLog.open(folder, CLOCK)) {
            log.append(notes("n", 2), true);
            Path away = folder.resolve("away.db");
            Files.move(file, away);
            LogFailure refused = assertThrows(LogFailure.class, () -> log.append(List.of(note("lost", "x")), true));
            assertEquals(
                    file + " was moved or removed while it was in use. Nothing of this batch was kept."
                            + " Stop the server, put the file back and start again.",
                    refused.getMessage());
            Files.copy(away, file);
            assertThrows(LogFailure.class, () -> log.append(List.of(note("lost", "x")), true));
            Files.move(away, file, StandardCopyOption.REPLACE_EXISTING);
            assertEquals(3, log.append(List.of(note("kept", "x")), true).last());
        }
    }

    @Test
    void aClosedLogRefusesInOneSentence() {
        SqliteLog log = SqliteLog.open(folder, CLOCK);
        log.close();
        for (Executable use : List.<Executable>of(() -> log.append(notes("n", 1), true), log::last)) {
            LogFailure refused = assertThrows(LogFailure.class, use);
            assertEquals("The log in " + file + " is closed. Open it again.", refused.getMessage());
        }
        log.close();
    }

    @Test
    void twoLogsOnOneFolderSeeEachOthersEvents() {
        try (SqliteLog one = SqliteLog.open(folder, CLOCK);
                SqliteLog two = SqliteLog.open(folder, CLOCK)) {
            one.append(notes("n", 3), true);
            assertEquals(3, two.last());
            assertEquals(4, two.append(List.of(note("of two", "x")), true).last());
            assertEquals(
                    List.of(DUPLICATE),
                    one.append(List.of(note("of two", "x")), true).outcomes());
            assertEquals(5, one.append(List.of(note("of one", "x")), true).last());
            assertEquals(one.verify(), two.verify());
            assertFalse(one.verify().head().equals(HashChain.BEGINNING));
        }
    }

    @Test
    void manyMayOpenANewFolderAtOnce() throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(8);
        try {
            for (int round = 0; round < 60; round++) {
                Path fresh = folder.resolve("round" + round);
                CyclicBarrier together = new CyclicBarrier(8);
                List<Callable<Long>> openers = Collections.nCopies(8, () -> {
                    together.await();
                    try (SqliteLog log = SqliteLog.open(fresh, CLOCK)) {
                        return log.append(List.of(note("the same", "x")), true).last();
                    }
                });
                for (Future<Long> opener : pool.invokeAll(openers)) {
                    assertEquals(1, opener.get());
                }
            }
        } finally {
            pool.shutdown();
        }
    }
}
