package wisp.interchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;

/** The rows of one open file, one after another, and how far the reading has come. */
interface Rows extends Iterator<Row>, AutoCloseable {

    /** Bytes of the file read so far, about. */
    long bytes();

    /** What a reader should know besides the rows; complete after the last row. */
    List<String> notes();

    @Override
    void close() throws IOException;

    /**
     * Opens a file by what it is.
     *
     * @param matching finds animals by tag number; null where the mapping does not ask for it
     * @throws RefusedFile where it cannot be read as anything
     */
    static Rows open(Path file, ImportOptions options, TagMatching matching) throws IOException {
        return switch (FileKind.of(file)) {
            case JSON_LINES -> new JsonLines(file);
            case JSON_DOCUMENT -> new JsonDocument(file);
            case CSV -> csv(file, options, matching);
        };
    }

    private static Rows csv(Path file, ImportOptions options, TagMatching matching) throws IOException {
        CsvFile csv = CsvFile.open(file, options.mapping());
        Mapping mapping = options.mapping();
        CsvReading reading = mapping == null
                ? new CanonicalReading("csv:" + file.getFileName(), csv.delimiter() == ';', options.zone())
                : mapping.reading(file, csv, options, matching);
        return new CsvRows(csv, reading);
    }
}
