package wisp.backup;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.event.Event;
import wisp.event.EventReader;
import wisp.log.Appended;
import wisp.log.ChainHead;
import wisp.log.EventLog;
import wisp.log.Logs;
import wisp.log.MemoryLog;

class BackupTest {
    private static final Clock CLOCK = Clock.systemUTC();

    @TempDir
    private Path folder;

    private Path data;
    private Path file;
    private EventLog log;

    @BeforeEach
    void aLogOfNineDays() {
        data = folder.resolve("data");
        file = folder.resolve("wisp.zip");
        log = Logs.open(data.toString(), CLOCK);
        for (int day = 1; day <= 9; day++) {
            record(day, "2026-03-0" + day + "T22:30:00Z");
        }
    }

    @AfterEach
    void close() {
        log.close();
    }

    private void record(int id, String recorded) {
        String json = "{\"specversion\":\"1.0\",\"id\":\"" + id + "\",\"source\":\"s\",\"type\":\"noted\","
                + "\"subject\":\"calf-é\",\"time\":\"2026-03-01T00:00:00Z\",\"recordedtime\":\"" + recorded
                + "\",\"data\":{\"text\":\"note " + id + "\"}}";
        Event event = EventReader.recorded().read(json).event();
        assertEquals(
                List.of(Appended.Outcome.ACCEPTED),
                log.append(List.of(event), true).outcomes());
    }

    private ChainHead backup() {
        return new Backup(log, data.resolve("analytics"), CLOCK).write(file);
    }

    private Restored restored(EventLog into, String asOf) {
        return Restore.of(file, asOf).into(into, folder.resolve("other/analytics"));
    }

    private String refusal(String asOf) {
        try (EventLog empty = new MemoryLog(CLOCK)) {
            String sentence = assertThrows(BackupFailure.class, () -> restored(empty, asOf))
                    .getMessage();
            assertEquals(0, empty.last(), "nothing is recorded");
            return sentence;
        }
    }

    @Test
    void whatIsRestoredHasTheSameEventsAndHashes() throws IOException {
        ChainHead head = backup();
        assertEquals(ChainHead.of(log.verify()), head);
        assertEquals(head + "\n", Files.readString(folder.resolve("wisp.zip.head")));
        try (EventLog other = Logs.open(folder.resolve("other").toString(), CLOCK)) {
            assertEquals(new Restored(head, 0, 0, ""), restored(other, null));
            assertEquals(log.read(0, 100), other.read(0, 100));
            assertEquals(log.verify(), other.verify());
        }
    }

    @Test
    void aBackupOfNothingRestoresNothing() {
        try (EventLog none = new MemoryLog(CLOCK);
                EventLog other = new MemoryLog(CLOCK)) {
            assertEquals(ChainHead.OF_NOTHING, new Backup(none, null, CLOCK).write(file));
            assertEquals(new Restored(ChainHead.OF_NOTHING, 0, 0, ""), restored(other, null));
        }
    }

    @Test
    void aBackupNeverGoesOverAnotherFile() throws IOException {
        Files.writeString(file, "mine");
        String there = " is there already, and a backup never goes over another file. Choose another name.";
        assertEquals(
                file + there, assertThrows(BackupFailure.class, this::backup).getMessage());
        assertEquals("mine", Files.readString(file));
        Files.delete(file);
        Files.writeString(Backup.headFile(file), "mine");
        assertEquals(
                file + ".head" + there,
                assertThrows(BackupFailure.class, this::backup).getMessage());
        assertFalse(Files.exists(file));
    }

    @Test
    void aBackupThatCannotBeWrittenLeavesNothingBehind() throws IOException {
        file = folder.resolve("missing/wisp.zip");
        String refused = assertThrows(BackupFailure.class, this::backup).getMessage();
        assertTrue(refused.startsWith(file + " cannot be written ("), refused);
        assertTrue(
                refused.endsWith("Nothing was backed up. Check the folder, its rights and its free space."), refused);
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(data), left.toList());
        }
    }

    @Test
    void aDamagedLogIsNotBackedUp() throws Exception {
        log.close();
        byte[] bytes = Files.readAllBytes(data.resolve("wisp.db"));
        int at = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1).indexOf("note 5");
        bytes[at + 5] ^= 1;
        Files.write(data.resolve("wisp.db"), bytes);
        log = Logs.open(data.toString(), CLOCK);
        String refused = assertThrows(RuntimeException.class, this::backup).getMessage();
        assertTrue(refused.startsWith("Event 5 of the log is not as it was written: "), refused);
        assertFalse(Files.exists(file));
    }

    @Test
    void aBackupIsOneMomentWhileOthersWrite() throws Exception {
        AtomicBoolean stop = new AtomicBoolean();
        ExecutorService writer = Executors.newSingleThreadExecutor();
        try {
            Future<?> writing = writer.submit(() -> {
                for (int i = 100; !stop.get(); i++) {
                    record(i, "2026-03-10T00:00:00Z");
                }
            });
            for (int i = 0; i < 5; i++) {
                file = folder.resolve("during" + i + ".zip");
                ChainHead head = backup();
                try (EventLog other = new MemoryLog(CLOCK)) {
                    assertEquals(head, Restore.of(file, null).into(other, null).head());
                    assertEquals(java.util.Optional.empty(), head.missedBy(log));
                }
            }
            stop.set(true);
            writing.get();
            assertTrue(log.verify().whole());
        } finally {
            stop.set(true);
            writer.shutdown();
        }
    }

    @Test
    void onlyAnEmptyPlaceIsRestoredInto() {
        backup();
        String refused =
                assertThrows(BackupFailure.class, () -> restored(log, null)).getMessage();
        assertEquals(
                "There are 9 events already, and a backup is restored into an empty place only. Give --data another"
                        + " folder or database.",
                refused);
        assertEquals(9, log.last());
    }

    @Test
    void aPointInTimeKeepsABeginningOfTheChain() {
        record(10, "2026-03-02T00:00:00Z");
        backup();
        assertKept(4, "4");
        assertKept(0, "0");
        assertKept(10, "99");
        assertKept(3, "2026-03-03");
        assertKept(2, "2026-03-03T22:29:59Z");
        assertKept(3, "2026-03-03T22:30:00Z");
        assertKept(3, "2026-03-03T23:30:00+01:00");
        assertKept(10, "2026-03-09");
    }

    private void assertKept(long events, String asOf) {
        try (EventLog other = new MemoryLog(CLOCK)) {
            Restored restored = restored(other, asOf);
            assertEquals(events, other.last(), asOf);
            assertEquals(10 - events, restored.leftOut(), asOf);
            assertEquals(log.read(0, 100).subList(0, (int) events), other.read(0, 100), asOf);
        }
    }

    @Test
    void aDateEndsByTheClocksOfTheFarm() {
        String farm = "{\"specversion\":\"1.0\",\"id\":\"farm\",\"source\":\"s\",\"type\":\"farm-described\","
                + "\"subject\":\"farm\",\"time\":\"2026-01-01T00:00:00Z\",\"recordedtime\":\"2026-03-09T23:00:00Z\","
                + "\"data\":{\"zone\":\"Europe/Athens\"}}";
        log.append(List.of(EventReader.recorded().read(farm).event()), true);
        backup();
        try (EventLog other = new MemoryLog(CLOCK)) {
            // 22:30 in London is the next day in Athens
            assertEquals(2, restored(other, "2026-03-03").head().sequence());
        }
    }

    @Test
    void whatIsNoPointInTimeIsRefused() {
        backup();
        assertEquals("\"2026-02-30\" is no day of the calendar. Check day and month.", refusal("2026-02-30"));
        assertEquals(
                "\"yesterday\" is not a time with an offset. Write it as 2026-03-01T07:30:00+00:00, the offset being"
                        + " that of the clock on the wall. A date or an event's sequence will do as well.",
                refusal("yesterday"));
    }

    @Test
    void theFarmsOwnDefinitionsAreInTheBackup() throws IOException {
        Path targets = data.resolve("analytics/targets.yaml");
        Path own = data.resolve("analytics/indicators/own.yaml");
        Files.createDirectories(own.getParent());
        Files.writeString(targets, "stillbirth: {below: 0.04}\n");
        Files.writeString(own, "id: own\n");
        backup();
        try (EventLog other = new MemoryLog(CLOCK)) {
            assertEquals(2, restored(other, null).files());
        }
        for (Path each : List.of(targets, own)) {
            Path back = folder.resolve("other").resolve(data.relativize(each));
            assertArrayEquals(Files.readAllBytes(each), Files.readAllBytes(back));
        }
        Path back = folder.resolve("other/analytics/targets.yaml");
        Files.writeString(back, "stillbirth: {below: 0.10}\n");
        assertEquals(back + " is there already and says something else. Restore into an empty folder.", refusal(null));
        try (EventLog database = new MemoryLog(CLOCK)) {
            assertEquals(
                    "2 of the farm's own definitions stay in the file: a database has no place for them unless"
                            + " --analytics names one.",
                    Restore.of(file, null).into(database, null).note());
        }
    }
}
