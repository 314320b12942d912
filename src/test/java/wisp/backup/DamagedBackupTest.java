package wisp.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.event.Event;
import wisp.event.EventReader;
import wisp.log.MemoryLog;

/** A backup that was cut, whose bits turned, or that somebody edited is refused, and its first bad event named. */
class DamagedBackupTest {
    private static final Clock CLOCK = Clock.systemUTC();
    private static final int EVENTS = 60;

    @TempDir
    private Path folder;

    private final MemoryLog log = new MemoryLog(CLOCK);
    private Path file;
    private byte[] bytes;

    @BeforeEach
    void aSoundBackup() throws IOException {
        List<Event> events = IntStream.rangeClosed(1, EVENTS)
                .mapToObj(i -> EventReader.recorded()
                        .read("{\"specversion\":\"1.0\",\"id\":\"" + i + "\",\"source\":\"s\",\"type\":\"noted\","
                                + "\"subject\":\"c\",\"time\":\"2026-03-01T00:00:00Z\",\"data\":{\"text\":\"note " + i
                                + "\"}}")
                        .event())
                .toList();
        log.append(events, true);
        file = folder.resolve("wisp.zip");
        new Backup(log, null, CLOCK).write(file);
        bytes = Files.readAllBytes(file);
    }

    private String refusal() {
        MemoryLog into = new MemoryLog(CLOCK);
        String sentence = assertThrows(
                        BackupFailure.class, () -> Restore.of(file, null).into(into, null))
                .getMessage();
        assertEquals(0, into.last());
        assertFalse(sentence.contains("Exception"), sentence);
        return sentence;
    }

    /** Writes the backup anew with one entry changed, as somebody with a ZIP program would. */
    private void edit(String name, UnaryOperator<String> change) throws IOException {
        Map<String, String> entries = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(file))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                entries.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        entries.computeIfPresent(name, (key, text) -> change.apply(text));
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    private void editEvents(UnaryOperator<String> change) throws IOException {
        edit("events.jsonl", change);
    }

    @Test
    void aChangedEventIsNamed() throws IOException {
        editEvents(all -> all.replace("note 17", "forged"));
        assertEquals(
                file + " is damaged at event 17: it does not follow from event 16. Take another backup, or keep the"
                        + " events before it with --as-of 16.",
                refusal());
        MemoryLog into = new MemoryLog(CLOCK);
        Restored restored = Restore.of(file, "16").into(into, null);
        assertEquals("What comes later in the backup is damaged at event 17.", restored.note());
        assertEquals(log.read(0, 16), into.read(0, 100));
        assertThrows(BackupFailure.class, () -> Restore.of(file, "17"));
    }

    @Test
    void aChangedFirstEventIsNamed() throws IOException {
        editEvents(all -> all.replaceFirst("note 1", "forged"));
        assertEquals(
                file + " is damaged at event 1: the chain does not begin with it. Take another backup.", refusal());
    }

    @Test
    void aRemovedEventIsNamed() throws IOException {
        editEvents(all -> all.replaceFirst("(?m)^.*note 30.*\n", ""));
        assertTrue(refusal().contains(" is damaged at event 30: it does not follow from event 29."));
    }

    @Test
    void anEndThatIsMissingIsNamed() throws IOException {
        editEvents(all -> all.replaceFirst("(?m)^.*note 59.*\n.*note 60.*\n", ""));
        assertTrue(refusal().contains(" is damaged at event 59: the events end before it, and should go on to 60."));
    }

    @Test
    void oneThatWasWrittenAnewShowsAgainstTheHeadBesideIt() throws IOException {
        String noted = Files.readString(Backup.headFile(file));
        Files.delete(file);
        Files.delete(Backup.headFile(file));
        MemoryLog forged = new MemoryLog(CLOCK);
        forged.append(List.of(log.read(0, 1).get(0).event()), true);
        new Backup(forged, null, CLOCK).write(file);
        Files.writeString(Backup.headFile(file), noted);
        String refused = refusal();
        assertTrue(
                refused.startsWith("The head in " + Backup.headFile(file) + " is not that of the backup, 1:"), refused);
    }

    @Test
    void aCutFileNamesTheFirstEventThatIsMissing() throws IOException {
        Files.delete(Backup.headFile(file));
        for (int length = 1_000; length < bytes.length - 200; length += 517) {
            Files.write(file, Arrays.copyOf(bytes, length));
            assertTrue(
                    refusal().matches("(?s).* is damaged (at event \\d+|before its first event).*"),
                    length + ": " + refusal());
        }
    }

    @Test
    void aTurnedBitIsFoundOrHarmless() throws IOException {
        long seed = 20261125;
        System.out.println("seed of the turned bits of a backup: " + seed);
        Random random = new Random(seed);
        int found = 0;
        for (int i = 0; i < 200; i++) {
            byte[] copy = bytes.clone();
            copy[random.nextInt(copy.length)] ^= (byte) (1 << random.nextInt(8));
            Files.write(file, copy);
            MemoryLog into = new MemoryLog(CLOCK);
            try {
                Restore.of(file, null).into(into, null);
                assertEquals(log.read(0, 100), into.read(0, 100));
            } catch (BackupFailure refused) {
                assertEquals(0, into.last());
                assertTrue(refused.getMessage().startsWith(file.toString()), refused.getMessage());
                found++;
            }
        }
        assertTrue(found > 150, found + " of 200 were found; the others lie in what only other programs read");
    }

    @Test
    void aNewerFormatIsRefused() throws IOException {
        edit("backup.json", head -> head.replace("\"format\" : 1", "\"format\" : 2"));
        assertEquals(
                file + " was written by a newer Wisp (backup format 2, this one knows 1). Restore it with the newer"
                        + " Wisp.",
                refusal());
    }

    @Test
    void whatIsNoBackupIsRefused() throws IOException {
        Files.writeString(file, "These are my holiday pictures.");
        assertEquals(file + " is not a backup, or its beginning is damaged. Give a file that backup wrote.", refusal());
        Files.delete(file);
        assertEquals("There is no file " + file + ". Check its name and folder.", refusal());
    }
}
