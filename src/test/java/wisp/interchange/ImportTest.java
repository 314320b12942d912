package wisp.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.log.SqliteLog;

class ImportTest {
    private static final String HEADER = "time,type,subject,text\n";

    @TempDir
    private Path folder;

    private SqliteLog log;

    @BeforeEach
    void openTheLog() {
        log = SqliteLog.open(folder.resolve("data"), Imports.CLOCK);
    }

    @AfterEach
    void closeTheLog() {
        log.close();
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private Path sound() throws IOException {
        return file("sound.csv", HEADER + "2026-03-01,noted,c1,a\n2026-03-02,noted,c1,b\n");
    }

    private Path half() throws IOException {
        return file("half.csv", HEADER + "2026-03-03,noted,c1,c\n2026-03-99,noted,c1,d\n2026-03-05,noted,c1,e\n");
    }

    @Test
    void aFaultInOneFileKeepsEveryFileOut() throws IOException {
        ImportReport report = Imports.run(log, Imports.WHOLE, sound(), half());
        assertEquals(0, log.last());
        assertEquals(5, report.read());
        assertEquals(0, report.accepted());
        assertEquals(4, report.heldBack());
        assertEquals(1, report.refusedRows());
        assertEquals(
                List.of("half.csv, line 3, time: \"2026-03-99\" is no day or hour of the calendar."
                        + " Check day, month and hour."),
                Imports.sentences(report));
        assertEquals(
                "0 events added, 0 were there already, 1 of 5 rows refused, 4 sound events held back.",
                report.sentence());
    }

    @Test
    void inAPartialImportAMalformedLineStopsNothingElse() throws IOException {
        ImportReport report = Imports.run(log, Imports.PARTIAL, sound(), half());
        assertEquals(4, log.last());
        assertEquals(4, report.accepted());
        assertEquals(0, report.heldBack());
        assertEquals(1, report.refusedRows());
        assertEquals(1, report.refused().get(0).index());
        assertEquals(4, report.last());
    }

    @Test
    void aDryRunSaysWhatWouldHappenAndWritesNothing() throws IOException {
        Imports.run(log, Imports.WHOLE, sound());
        Path more = file(
                "sound.csv",
                HEADER
                        + "2026-03-01,noted,c1,a\n2026-03-02,noted,c1,b\n"
                        + "2026-03-07,noted,c1,z\n2026-03-07,noted,c1,z\n");
        ImportReport dry = Imports.run(log, Imports.DRY, more);
        assertEquals(2, log.last());
        assertEquals(2, dry.accepted());
        assertEquals(2, dry.duplicate());
        assertEquals("Dry run, nothing is written: 2 events would be added, 2 were there already.", dry.sentence());
        ImportReport wet = Imports.run(log, Imports.WHOLE, more);
        assertEquals(dry.accepted(), wet.accepted());
        assertEquals(4, log.last());
        assertTrue(log.verify().whole());
    }

    @Test
    void aConflictKeepsEverythingOutUnlessPartialIsSaid() throws IOException {
        String header = "time,type,subject,id,source,text\n";
        Imports.run(log, Imports.WHOLE, file("one.csv", header + "2026-03-01,noted,c1,1,book,a\n"));
        Path two = file("two.csv", header + "2026-03-01,noted,c1,2,book,b\n2026-03-01,noted,c1,1,book,other\n");
        ImportReport whole = Imports.run(log, Imports.WHOLE, two);
        assertEquals(1, log.last());
        assertEquals(1, whole.conflict());
        assertEquals(1, whole.heldBack());
        assertEquals(3, whole.refused().get(0).row());
        ImportReport partial = Imports.run(log, Imports.PARTIAL, two);
        assertEquals(2, log.last());
        assertEquals(1, partial.accepted());
        assertEquals(1, partial.conflict());
        assertFalse(partial.sound());
    }

    @Test
    void columnsInAnotherOrderOrAnotherDelimiterGiveTheSameEvents() throws IOException {
        Imports.run(log, Imports.WHOLE, sound());
        Path turned = file("sound.csv", "text;subject;type;time\na;c1;noted;2026-03-01\nb;c1;noted;2026-03-02\n");
        ImportReport report = Imports.run(log, Imports.WHOLE, turned);
        assertEquals(2, report.duplicate());
        assertEquals(2, log.last());
    }

    @Test
    void aMappingThatReadsTheSameRowsOtherwiseIsAConflictAndNotASecondSetOfEvents() throws IOException {
        Path rows = file("book.csv", "Calf,Day,Weight\nK1,2026-03-01,41\n");
        String mapping = "events: [{type: weighed, subject: Calf, time: Day, data: {weight_kg: Weight}}]\n";
        Imports.run(log, Imports.mapped(file("m.yaml", mapping)), rows);
        Path other = file("n.yaml", "zone: America/Chicago\n" + mapping);
        ImportReport report = Imports.run(log, Imports.mapped(other), rows);
        assertEquals(1, report.conflict());
        assertEquals(1, log.last());
    }

    @Test
    void aFileThatIsMissingIsNamedAndTheOthersAreStillRead() throws IOException {
        ImportReport report = Imports.run(log, Imports.PARTIAL, folder.resolve("gone.csv"), folder, sound());
        assertEquals(2, report.accepted());
        assertEquals(
                List.of(
                        "gone.csv: There is no such file. Check its name and folder.",
                        folder.getFileName() + ": It is a folder. Name the files in it."),
                Imports.sentences(report));
        assertEquals(0, report.refused().get(0).row());
        assertEquals(-1, report.refused().get(0).index());
    }

    @Test
    void aRowOfSeveralEventsGoesInWholeOrNotAtAll() throws IOException {
        Path mapping = file(
                "m.yaml",
                "events:\n"
                        + "  - {type: birth, subject: Calf, time: Born, data: {alive: {is: true}}}\n"
                        + "  - {type: weighed, subject: Calf, time: Born, data: {weight_kg: Weight}}\n");
        Path rows = file("book.csv", "Calf,Born,Weight\nK1,2026-03-01,9999\nK2,2026-03-01,40\n");
        ImportOptions partial = new ImportOptions(false, true, Imports.LONDON, Mapping.read(mapping));
        ImportReport report = Imports.run(log, partial, rows);
        assertEquals(2, report.accepted());
        assertEquals(
                List.of("K2", "K2"),
                log.read(0, 9).stream().map(s -> s.event().subject()).toList());
    }

    @Test
    void aLineOfMoreThanAMegabyteIsRefusedByItself() throws IOException {
        String line = "{\"specversion\":\"1.0\",\"id\":\"%s\",\"source\":\"s\",\"type\":\"weaned\",\"subject\":\"c\","
                + "\"time\":\"2026-03-01T00:00:00Z\"}\n";
        Path rows = file("long.jsonl", line.formatted("1") + "\"" + "m".repeat(1 << 20) + "\"\n" + line.formatted("2"));
        ImportReport report = Imports.run(log, Imports.PARTIAL, rows);
        assertEquals(2, report.accepted());
        assertEquals(
                List.of("long.jsonl, line 2: The line is longer than 1 MB, which no event is."
                        + " Write one event a line, with line ends."),
                Imports.sentences(report));
    }

    @Test
    void everyRefusalIsHeardOfThoughTheReportKeepsTheFirstTenThousand() throws IOException {
        StringBuilder text = new StringBuilder(HEADER);
        for (int i = 0; i < 10_500; i++) {
            text.append("yesterday,noted,c1,a\n");
        }
        List<Refusal> heard = new ArrayList<>();
        List<Long> rows = new ArrayList<>();
        ImportReport report = Import.run(
                List.of(file("many.csv", text.toString())), Imports.WHOLE, log, Imports.READER, new ImportListener() {
                    @Override
                    public void refused(Refusal refusal) {
                        heard.add(refusal);
                    }

                    @Override
                    public void progress(Path file, long bytes, long size, long read) {
                        assertTrue(bytes <= size);
                        rows.add(read);
                    }
                });
        assertEquals(10_500, report.refusedRows());
        assertEquals(10_500, heard.size());
        assertEquals(ImportReport.REFUSALS_KEPT, report.refused().size());
        assertEquals(List.of(5000L, 10_000L, 10_500L), rows);
    }
}
