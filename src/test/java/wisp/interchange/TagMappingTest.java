package wisp.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.event.SampleResult;
import wisp.log.MemoryLog;
import wisp.log.StoredEvent;

class TagMappingTest {
    private static final String HEAD = "source: laboratory\ndates: [dd/MM/yyyy]\nevents:\n";
    private static final String RESULT =
            "  - {type: {is: sample-result}, subject: {tag: Tag}, time: Day, data: {result: Result}}\n";

    @TempDir
    private Path folder;

    private final MemoryLog log = new MemoryLog(Imports.CLOCK);
    private final Map<String, String> herd = new HashMap<>(Map.of("UK1", "A"));
    private final List<Instant> asked = new ArrayList<>();

    private TagSubjects.Whose whose(String number, Instant time) {
        asked.add(time);
        String subject = herd.get(number);
        return new TagSubjects.Whose(subject, subject == null ? "Nobody's." : "");
    }

    private ImportReport bring(String mapping, String rows) throws IOException {
        Path file = folder.resolve("lab.csv");
        Files.writeString(file, "Tag,Day,Result\n" + rows);
        ImportOptions options =
                new ImportOptions(false, false, Imports.LONDON, Mapping.read("map.yaml", mapping), this::whose);
        return Imports.run(log, options, file);
    }

    private List<StoredEvent> stored() {
        return log.read(0, 100);
    }

    private static String faults(String mapping) {
        return assertThrows(MappingRefused.class, () -> Mapping.read("map.yaml", mapping))
                .getMessage();
    }

    @Test
    void theNumberIsKeptAsItWasWrittenBesideTheCalf() throws IOException {
        ImportReport report = bring(HEAD + RESULT, "UK1,10/03/2026,negative\n");
        assertEquals("A", stored().get(0).event().subject());
        assertEquals("UK1", ((SampleResult) stored().get(0).event().data()).tagNumber());
        assertEquals(List.of("lab.csv: 1 rows matched to animals by tag number, 0 unmatched."), report.notes());
        assertEquals(List.of(Instant.parse("2026-03-10T00:00:00Z")), asked, "whose it was on the day of the result");
    }

    @Test
    void aTagNumberThatTheMappingFillsItselfStays() throws IOException {
        String own = RESULT.replace("{result: Result}", "{result: Result, tag_number: {text: \"UK {Tag}\"}}");
        bring(HEAD + own, "UK1,10/03/2026,negative\n");
        assertEquals("UK UK1", ((SampleResult) stored().get(0).event().data()).tagNumber());
    }

    @Test
    void theNumberCanBePutTogether() throws IOException {
        bring(HEAD + RESULT.replace("{tag: Tag}", "{tag: {text: \"UK{Tag}\"}}"), "1,10/03/2026,negative\n");
        assertEquals("A", stored().get(0).event().subject());
    }

    @Test
    void everyUnmatchedRowIsListedAndKept() throws IOException {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < 60; i++) {
            rows.append("N").append(i).append(",10/03/2026,negative\n");
        }
        ImportReport report = bring(HEAD + RESULT, rows.toString());
        assertEquals(60, stored().size());
        assertEquals("N59", stored().get(59).event().subject());
        assertEquals(1 + 50 + 1, report.notes().size());
        assertTrue(
                report.notes().get(1).endsWith("line 2, N0: Nobody's."),
                report.notes().get(1));
        assertTrue(
                report.notes().get(51).contains("10 more unmatched rows"),
                report.notes().get(51));
    }

    @Test
    void aRowThatIsInAlreadyIsADuplicateWhoeverHasTheNumberNow() throws IOException {
        String rows = "UK1,10/03/2026,negative\nUK2,10/03/2026,positive\n";
        bring(HEAD + RESULT, rows);
        herd.put("UK1", "B");
        herd.put("UK2", "C");
        asked.clear();
        ImportReport again = bring(HEAD + RESULT, rows + "UK2,11/03/2026,negative\n");
        assertEquals(2, again.duplicate());
        assertEquals(0, again.conflict());
        assertEquals(1, asked.size(), "only of the new row");
        assertEquals(
                List.of("A", "UK2", "C"),
                stored().stream().map(one -> one.event().subject()).toList());
    }

    @Test
    void equalRowsOfOneFileAreEachTakenInOnce() throws IOException {
        String rows = "UK1,10/03/2026,negative\nUK1,10/03/2026,negative\n";
        bring(HEAD + RESULT, rows);
        assertEquals(2, bring(HEAD + RESULT, rows).duplicate());
        assertEquals(2, stored().size());
    }

    @Test
    void aRefusedRowIsNotLostAmongTheMatchedOnes() throws IOException {
        ImportReport report = bring(HEAD + RESULT, "UK1,10/03/2026,maybe\n");
        assertEquals(1, report.refusedRows());
        assertEquals(0, stored().size());
    }

    @Test
    void aMappingThatFindsByTagMustNameItsSourceAndNothingBeside() {
        assertTrue(faults(HEAD.replace("source: laboratory\n", "") + RESULT).contains("names no source"));
        String both = faults(HEAD + RESULT.replace("{tag: Tag}", "{tag: Tag, column: Key}"));
        assertTrue(both.contains("column"), both);
    }
}
