package wisp.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.log.SqliteLog;

/** A CSV of 100 MB, imported by a Java of its own that has 128 MB of heap. */
class LargeFileTest {
    private static final long BYTES = 100_000_000;
    private static final String HEAP = "-Xmx128m";

    @TempDir
    private Path folder;

    @Test
    void aFileOfAHundredMegabytesNeedsNoMoreMemoryThanASmallOne() throws Exception {
        Path file = folder.resolve("notes.csv");
        long rows = write(file);
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        HEAP,
                        "-cp",
                        System.getProperty("java.class.path"),
                        LargeFileTest.class.getName(),
                        file.toString(),
                        folder.resolve("data").toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        int code = process.waitFor();
        String last = Files.readAllLines(said).stream()
                .filter(line -> line.startsWith("import: "))
                .reduce("", (earlier, later) -> later);
        assertEquals(
                "import: " + (rows - 1) + " events added, 0 were there already, 1 of " + rows + " rows refused.",
                last,
                () -> "exit " + code + ": " + said);
        assertEquals(0, code);
    }

    /** Rows of some 1,000 bytes, every thousandth with quoted line breaks, one in the middle refused. */
    private static long write(Path file) throws IOException {
        String text = "the calf stood, sucked and lay in deep straw; ".repeat(21);
        long rows = 0;
        long bytes = 0;
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            out.write("time,type,subject,text\n");
            while (bytes < BYTES) {
                String time = rows == 50_000 ? "yesterday" : "2026-03-01T07:30:00Z";
                String shown = rows % 1000 == 0 ? text.replace("; ", ";\n") : text;
                String row = time + ",noted,calf-" + rows / 20 + ",\"" + rows + " " + shown + "\"\n";
                out.write(row);
                bytes += row.length();
                rows++;
            }
        }
        return rows;
    }

    /** The other Java: imports a file into a fresh log, partially, and says how it went. */
    public static void main(String[] arguments) {
        try (SqliteLog log = SqliteLog.open(Path.of(arguments[1]), Imports.CLOCK)) {
            ImportReport report = Import.run(
                    List.of(Path.of(arguments[0])), Imports.PARTIAL, log, Imports.READER, ImportListener.silent());
            System.out.println("import: " + report.sentence());
        }
    }
}
