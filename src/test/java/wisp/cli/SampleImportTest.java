package wisp.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A laboratory's results, brought in by tag number. */
class SampleImportTest {
    private static final String MAPPING = """
            source: laboratory
            zone: Europe/London
            dates: [dd/MM/yyyy]
            ignore: [Printed]
            events:
              - type: {is: sample-result}
                subject: {tag: Tag}
                time: Reported
                data:
                  result: {column: Result, values: {NEG: negative, POS: positive, RPT: inconclusive}}
                  test: {is: antigen}
            """;
    private static final String HEADER = "Tag,Reported,Result,Printed\n";
    private static final String FIRST = "826123450600001,10/03/2026,NEG,x\nUK 123450 700002,10/03/2026,POS,x\n";

    @TempDir
    private Path folder;

    private int next = 1;

    @BeforeEach
    void herd() throws IOException {
        Files.writeString(folder.resolve("map.yaml"), MAPPING);
        add("birth", "A", "2026-03-01T08:00:00Z", "\"alive\":true");
        add("birth", "B", "2026-03-01T08:00:00Z", "\"alive\":true");
        add("tag-fitted", "A", "2026-03-02T08:00:00Z", "\"number\":\"UK 123450 600001\"");
    }

    private void add(String type, String subject, String time, String data) throws IOException {
        Path file = folder.resolve("e.jsonl");
        Files.writeString(
                file,
                "{\"specversion\":\"1.0\",\"id\":\"" + next++ + "\",\"source\":\"shed\",\"type\":\"" + type
                        + "\",\"subject\":\"" + subject + "\",\"time\":\"" + time + "\",\"data\":{" + data + "}}\n");
        Spoken.by("import", file, "--data", folder.resolve("data")).exits(0);
    }

    private Spoken bring(String name, String rows) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, HEADER + rows);
        return Spoken.by("import", file, "--mapping", folder.resolve("map.yaml"), "--data", folder.resolve("data"));
    }

    private List<String> results() throws IOException {
        Path out = folder.resolve("out.jsonl");
        Files.deleteIfExists(out);
        Spoken.by("export", "--format", "jsonl", "--out", out, "--data", folder.resolve("data"))
                .exits(0);
        List<String> subjects = new ArrayList<>();
        for (String line : Files.readAllLines(out)) {
            if (line.contains("\"sample-result\"")) {
                subjects.add(line.replaceAll(".*\"subject\":\"([^\"]*)\".*", "$1"));
            }
        }
        return subjects;
    }

    @Test
    void rowsGoToTheirCalvesAndWhatMatchesNobodyIsKeptUnderItsNumber() throws IOException {
        Spoken said = bring("march.csv", FIRST).exits(0);
        assertTrue(said.out().contains("1 rows matched to animals by tag number, 1 unmatched."), said.out());
        assertTrue(said.out().contains("line 3, UK 123450 700002: No animal has it."), said.out());
        assertTrue(said.out().contains("2 events added"), said.out());
        assertEquals(List.of("A", "UK 123450 700002"), results());
    }

    @Test
    void theSameFileAgainAddsNothingThoughATagWasFittedSince() throws IOException {
        bring("march.csv", FIRST).exits(0);
        add("tag-fitted", "B", "2026-03-02T09:00:00Z", "\"number\":\"UK 123450 700002\"");
        Spoken again = bring("march.csv", FIRST).exits(0);
        assertTrue(again.out().contains("0 events added, 2 were there already"), again.out());
        assertEquals(List.of("A", "UK 123450 700002"), results(), "a row keeps its subject");
    }

    @Test
    void aLongerFileUnderAnotherNameAddsItsNewRowsAlone() throws IOException {
        bring("march.csv", FIRST).exits(0);
        add("tag-fitted", "B", "2026-03-02T09:00:00Z", "\"number\":\"UK 123450 700002\"");
        Spoken longer = bring("april.csv", FIRST + "UK 123450 700002,10/04/2026,NEG,y\n")
                .exits(0);
        assertTrue(longer.out().contains("1 events added, 2 were there already"), longer.out());
        assertTrue(longer.out().contains("1 rows matched to animals by tag number, 0 unmatched, 2 were there"));
        assertEquals(List.of("A", "UK 123450 700002", "B"), results());
    }

    @Test
    void aTagThatIsTakenBackChangesNoRowThatIsInAlready() throws IOException {
        bring("march.csv", FIRST).exits(0);
        add("retracted", "A", "2026-03-20T09:00:00Z", "\"event_source\":\"shed\",\"event_id\":\"3\"");
        bring("march.csv", FIRST).exits(0);
        assertEquals(List.of("A", "UK 123450 700002"), results());
    }

    @Test
    void aNumberThatTwoHaveHadIsUnmatchedAndBothAreNamed() throws IOException {
        add("tag-fitted", "B", "2026-03-03T08:00:00Z", "\"number\":\"uk123450600001\"");
        Spoken said = bring("march.csv", "UK 123450 600001,10/03/2026,NEG,x\n").exits(0);
        assertTrue(said.out().contains("Several animals have had it: A, B."), said.out());
        assertEquals(List.of("UK 123450 600001"), results());
    }

    @Test
    void aWrongDigitNamesTheLikelyCalf() throws IOException {
        Spoken said = bring("march.csv", "UK 123450 600007,10/03/2026,NEG,x\n").exits(0);
        assertTrue(said.out().contains("No animal has it. Perhaps meant: A."), said.out());
    }

    @Test
    void aDryRunSaysWhoIsMatchedAndRecordsNothing() throws IOException {
        Path file = folder.resolve("march.csv");
        Files.writeString(file, HEADER + FIRST);
        Spoken said = Spoken.by(
                        "import",
                        file,
                        "--dry-run",
                        "--mapping",
                        folder.resolve("map.yaml"),
                        "--data",
                        folder.resolve("data"))
                .exits(0);
        assertTrue(said.out().contains("1 rows matched"), said.out());
        assertEquals(List.of(), results());
    }

    @Test
    void anEmptyNumberIsRefusedAndAMappingWithoutASourceToo() throws IOException {
        assertTrue(bring("march.csv", ",10/03/2026,NEG,x\n").exits(1).err().contains("The cell is empty"));
        Files.writeString(folder.resolve("map.yaml"), MAPPING.replace("source: laboratory\n", ""));
        Spoken refused = bring("march.csv", FIRST);
        assertFalse(refused.code() == 0, refused.out());
        assertTrue(refused.err().contains("names no source"), refused.err());
    }
}
