package wisp.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.jerolba.carpet.CarpetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.event.EventData;
import wisp.event.EventType;
import wisp.log.MemoryLog;
import wisp.log.StoredEvent;

class ExportTest {
    @TempDir
    private Path folder;

    private final MemoryLog log = new MemoryLog(Imports.CLOCK);

    @BeforeEach
    void recordOneEventOfEveryType() {
        log.append(EveryType.events(), true);
    }

    private ExportReport export(ExportFormat format, Path file) {
        return Export.write(format, file, log, ExportListener.silent());
    }

    private static List<String> hashes(MemoryLog log) {
        return log.read(0, 1000).stream().map(StoredEvent::hash).toList();
    }

    private MemoryLog imported(Path file) {
        MemoryLog other = new MemoryLog(Imports.CLOCK);
        ImportReport report = Imports.run(other, Imports.WHOLE, file);
        assertEquals(List.of(), Imports.sentences(report));
        return other;
    }

    @Test
    void theExamplesHaveEveryTypeOfEvent() {
        assertEquals(
                EnumSet.allOf(EventType.class),
                log.read(0, 1000).stream().map(s -> s.event().type()).collect(Collectors.toSet()));
    }

    @Test
    void jsonLinesImportedIntoAnEmptyLogGetTheSameHashes() {
        Path file = folder.resolve("events.jsonl");
        ExportReport report = export(ExportFormat.JSONL, file);
        assertEquals(log.last(), report.written());
        assertEquals(hashes(log), hashes(imported(file)));
    }

    @Test
    void csvImportedIntoAnEmptyLogGetsTheSameHashes() throws IOException {
        Path file = folder.resolve("events.csv");
        ExportReport report = export(ExportFormat.CSV, file);
        assertEquals(log.last(), report.written());
        assertEquals(hashes(log), hashes(imported(file)));
        long whole = Files.readString(file)
                .lines()
                .filter(line -> line.contains("specversion"))
                .count();
        assertEquals(2, whole, "only the unknown attribute and the blanks round a text need the json column");
    }

    @Test
    void everyFieldOfEveryEventHasAColumn() {
        for (Class<?> data : EventData.class.getPermittedSubclasses()) {
            for (var component : data.getRecordComponents()) {
                String field = component.getName().replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
                String column = data.getSimpleName().equals("Amended") && field.matches("time|data_json")
                        ? "amended_" + field.replace("_json", "")
                        : field;
                assertTrue(Column.BY_NAME.containsKey(column), data.getSimpleName() + " " + field);
            }
        }
    }

    /** Some columns of the Parquet file. */
    record Line(
            long sequence,
            String hash,
            Instant time,
            Instant recordedtime,
            String type,
            String number,
            Double weight_kg,
            Boolean alive,
            Boolean time_known,
            String pain_relief,
            String seasons,
            Instant amended_time,
            String json) {}

    @Test
    void parquetHoldsTypedColumnsAndTheWholeEvent() throws IOException {
        Path file = folder.resolve("events.parquet");
        assertEquals(log.last(), export(ExportFormat.PARQUET, file).written());
        List<Line> lines = new CarpetReader<>(file.toFile(), Line.class).toList();
        assertEquals(hashes(log), lines.stream().map(Line::hash).toList());
        assertEquals(
                log.read(0, 1000).stream().map(s -> s.event().json()).toList(),
                lines.stream().map(Line::json).toList());
        Line birth = lines.get(0);
        assertEquals(1, birth.sequence());
        assertEquals(Instant.parse("2026-02-28T23:30:00Z"), birth.time());
        assertEquals(Instant.parse("2026-03-05T10:00:00.5Z"), birth.recordedtime());
        assertEquals(41.25, birth.weight_kg());
        assertEquals(true, birth.alive());
        assertEquals("0123", lines.get(7).number());
        assertEquals("meloxicam", lines.get(12).pain_relief());
        assertEquals(false, lines.get(21).time_known());
        assertEquals(
                "[{\"from\":\"2026-01-01\",\"name\":\"Spring\",\"to\":\"2026-07-01\"}]",
                lines.get(28).seasons());
        assertEquals(Instant.parse("2026-03-02T09:00:00Z"), lines.get(30).amended_time());
    }

    @Test
    void anEmptyLogGivesAnEmptyFileInEveryFormat() throws IOException {
        try (MemoryLog empty = new MemoryLog(Imports.CLOCK)) {
            for (ExportFormat format : ExportFormat.values()) {
                Path file = folder.resolve("empty." + format.word());
                assertEquals(
                        0,
                        Export.write(format, file, empty, ExportListener.silent())
                                .written());
                assertTrue(Files.exists(file));
            }
        }
        assertEquals("[]\n", Files.readString(folder.resolve("empty.icar")));
    }

    @Test
    void aFileThatCannotBeWrittenLeavesNothingBehind() throws IOException {
        Path nowhere = folder.resolve("gone").resolve("events.jsonl");
        FileFailure failure = assertThrows(FileFailure.class, () -> export(ExportFormat.JSONL, nowhere));
        String mend = "Choose a folder that is there, that you may write to, and that has room.";
        assertEquals(nowhere + " cannot be written (its folder is not there). " + mend, failure.getMessage());
        assertFalse(Files.exists(nowhere.getParent()));
        Path taken = Files.createDirectories(folder.resolve("taken").resolve("inside"))
                .getParent();
        failure = assertThrows(FileFailure.class, () -> export(ExportFormat.CSV, taken));
        assertEquals(taken + " cannot be written (a folder of that name is there). " + mend, failure.getMessage());
        try (var files = Files.list(folder)) {
            assertEquals(List.of(taken), files.toList());
        }
    }

    @Test
    void theWordsOfTheFormatsAreThoseOfTheCommandLine() {
        assertEquals("jsonl, csv, parquet, icar", ExportFormat.allWords());
        assertTrue(Arrays.stream(ExportFormat.values())
                .allMatch(f -> ExportFormat.named(f.word()).get() == f));
        assertTrue(ExportFormat.named("xml").isEmpty());
    }
}
