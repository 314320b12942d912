package wisp.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupCommandTest {
    private static final String EVENTS = """
            {"specversion":"1.0","id":"1","source":"shed","type":"birth","subject":"A","time":"2026-03-01T08:00:00Z",\
            "recordedtime":"2026-03-01T09:00:00Z","data":{"alive":true}}
            {"specversion":"1.0","id":"2","source":"shed","type":"birth","subject":"B","time":"2026-03-02T08:00:00Z",\
            "recordedtime":"2026-03-02T09:00:00Z","data":{"alive":false}}
            """;

    @TempDir
    private Path folder;

    private Path data;
    private Path file;
    private String head;

    @BeforeEach
    void twoEventsAndATarget() throws IOException {
        data = folder.resolve("data");
        file = folder.resolve("herd.zip");
        Path events = Files.writeString(folder.resolve("events.jsonl"), EVENTS);
        Spoken.by("import", "--data", data, events).exits(0);
        Files.createDirectories(data.resolve("analytics"));
        Files.writeString(data.resolve("analytics/targets.yaml"), "stillbirth: {below: 0.04}\n");
        head = Spoken.by("verify", "--data", data, "--head").exits(0).out().strip();
    }

    private Spoken backup() {
        return Spoken.by("backup", "--data", data, file);
    }

    @Test
    void aBackupSaysItsHeadAndARestoreHasIt() throws IOException {
        assertEquals(
                "2 events are backed up in " + file + " and read back whole. Head " + head + ", written to " + file
                        + ".head too.",
                backup().exits(0).out().strip());
        Path other = folder.resolve("other");
        assertEquals(
                "2 events are restored into " + other + " with their hashes. Head " + head
                        + ". The farm's own definitions put back: 1.",
                Spoken.by("restore", "--data", other, file).exits(0).out().strip());
        String noted = Files.readString(folder.resolve("herd.zip.head"));
        Spoken.by("verify", "--data", other, "--head", noted).exits(0);
        for (String format : new String[] {"json", "table"}) {
            assertEquals(figures(data, format), figures(other, format));
        }
    }

    private static String figures(Path data, String format) {
        return Spoken.by("figures", "--data", data, "--season", "all", "--format", format)
                .exits(0)
                .out();
    }

    @Test
    void aPointInTimeSaysWhatItLeftOut() {
        backup().exits(0);
        Path other = folder.resolve("other");
        String said = Spoken.by("restore", "--data", other, file, "--as-of", "2026-03-01")
                .exits(0)
                .out();
        assertTrue(said.startsWith("One event is restored into " + other), said);
        assertTrue(said.contains(" Left out, as recorded later: 1."), said);
    }

    @Test
    void itIsNeverRestoredOverEvents() {
        backup().exits(0);
        Spoken.by("restore", "--data", data, file)
                .exits(1)
                .saysOnlyOneLineWith("There are 2 events already, and a backup is restored into an empty place only.");
        assertEquals(head, Spoken.by("verify", "--data", data, "--head").out().strip());
    }

    @Test
    void aDamagedBackupIsRefusedAndMakesNoFolder() throws IOException {
        backup().exits(0);
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, java.util.Arrays.copyOf(bytes, bytes.length - 300));
        Path other = folder.resolve("other");
        Spoken.by("restore", "--data", other, file).exits(1).saysOnlyOneLineWith(file + " is damaged ");
        assertFalse(Files.exists(other));
    }

    @Test
    void aBackupIsNeverWrittenOver() {
        backup().exits(0);
        backup().exits(1).saysOnlyOneLineWith(file + " is there already");
    }
}
