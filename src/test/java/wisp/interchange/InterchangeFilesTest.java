package wisp.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wisp.log.MemoryLog;

/**
 * Every tiny file in {@code interchange/good} beside the events that it stands for, and every one in
 * {@code interchange/bad} beside the whole messages that it gets. A file NAME.x may have a NAME.mapping.yaml. Adding a
 * case needs no Java.
 */
class InterchangeFilesTest {
    private static final Path FOLDER = Path.of("src/test/resources/interchange");
    private static final String RECORDED = "\"recordedtime\":\"2026-06-01T12:00:00.000Z\",";

    static Stream<Path> good() throws IOException {
        return offered(FOLDER.resolve("good"));
    }

    static Stream<Path> bad() throws IOException {
        return offered(FOLDER.resolve("bad"));
    }

    private static Stream<Path> offered(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files
                    .filter(file -> !file.toString().contains(".expected."))
                    .filter(file -> !file.toString().contains(".mapping."))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("good")
    void aGoodFileGivesItsEvents(Path file) throws IOException {
        try (MemoryLog log = new MemoryLog(Imports.CLOCK)) {
            ImportReport report = Imports.run(log, options(file, false), file);
            List<String> told = new ArrayList<>(report.notes());
            told.addAll(Imports.sentences(report));
            Imports.json(log).forEach(json -> told.add(json.replace(RECORDED, "")));
            assertEquals(
                    Files.readString(beside(file, ".expected.jsonl")).strip(),
                    String.join("\n", told),
                    file.toString());
            assertTrue(report.sound());
            assertEquals(log.last(), report.accepted());
            ImportReport again = Imports.run(log, options(file, false), file);
            assertEquals(0, again.accepted());
            assertEquals(report.accepted() + report.duplicate(), again.duplicate(), "importing twice changes nothing");
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bad")
    void aBadFileGetsItsWholeMessagesAndStoresNothing(Path file) throws IOException {
        try (MemoryLog log = new MemoryLog(Imports.CLOCK)) {
            List<String> said = new ArrayList<>();
            try {
                ImportReport report = Imports.run(log, options(file, false), file);
                said.addAll(Imports.sentences(report));
                assertFalse(report.sound());
                assertEquals(0, report.accepted());
            } catch (MappingRefused refused) {
                said.addAll(refused.sentences());
            }
            assertEquals(
                    Files.readString(beside(file, ".expected.txt")).strip(), String.join("\n", said), file.toString());
            assertEquals(0, log.last());
        }
    }

    private static ImportOptions options(Path file, boolean partial) {
        Path mapping = beside(file, ".mapping.yaml");
        return new ImportOptions(false, partial, Imports.LONDON, Files.exists(mapping) ? Mapping.read(mapping) : null);
    }

    private static Path beside(Path file, String ending) {
        String name = file.getFileName().toString();
        return file.resolveSibling(name.substring(0, name.lastIndexOf('.')) + ending);
    }
}
