package wisp.interchange;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;

/**
 * A CSV file (RFC 4180, and what spreadsheets make of it) as lines of cells. After a line whose quotation marks do not
 * match the reading takes up again at the next line of the file.
 */
final class CsvFile implements Iterator<CsvFile.Line>, AutoCloseable {
    private static final int LONGEST_CELL = 1 << 20;

    /**
     * One record of the file.
     *
     * @param number the line of the file where it begins, from 1
     * @param cells its cells; null where the line cannot be read
     */
    record Line(long number, List<String> cells) {}

    private final Path file;
    private final TextEncoding encoding;
    private final char delimiter;
    private FileChannel channel;
    private CsvReader<CsvRecord> reader;
    private Iterator<CsvRecord> records;
    private long skipped;
    private long lastLine;
    private Line ahead;

    private CsvFile(Path file, TextEncoding encoding, char delimiter, long skip) throws IOException {
        this.file = file;
        this.encoding = encoding;
        this.delimiter = delimiter;
        open(skip);
    }

    /** Opens a file; a mapping's word on its form, where there is one, goes before what the file looks like. */
    static CsvFile open(Path file, Mapping mapping) throws IOException {
        CsvFormat format = mapping == null ? new CsvFormat(null, null) : mapping.format();
        TextEncoding encoding =
                format.encoding() == null ? TextEncoding.of(file) : TextEncoding.stated(format.encoding(), file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            String header = Delimiter.header(text(channel, encoding));
            boolean told = header.length() == 5 && header.startsWith("sep=");
            char sniffed = told ? header.charAt(4) : Delimiter.sniff(header);
            return new CsvFile(file, encoding, format.delimiter() == null ? sniffed : format.delimiter(), told ? 1 : 0);
        }
    }

    /** What stands between the cells. */
    char delimiter() {
        return delimiter;
    }

    TextEncoding encoding() {
        return encoding;
    }

    @Override
    public boolean hasNext() {
        if (ahead == null) {
            ahead = read();
        }
        return ahead != null;
    }

    @Override
    public Line next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        Line line = ahead;
        ahead = null;
        return line;
    }

    private Line read() {
        long before = lastLine;
        try {
            while (records.hasNext()) {
                CsvRecord found = records.next();
                long number = found.getStartingLineNumber() + skipped;
                lastLine = number
                        + found.getFields().stream().mapToInt(CsvFile::breaks).sum();
                if (found.getFields().stream().anyMatch(cell -> !cell.isBlank())) {
                    return new Line(number, found.getFields());
                }
                before = lastLine;
            }
            return null;
        } catch (CsvParseException unmatched) {
            long number = before + 1;
            reopen(number);
            return new Line(number, null);
        }
    }

    private void reopen(long after) {
        try {
            close();
            open(after);
            lastLine = after;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private void open(long skip) throws IOException {
        channel = FileChannel.open(file, StandardOpenOption.READ);
        BufferedReader text = text(channel, encoding);
        for (long i = 0; i < skip; i++) {
            text.readLine();
        }
        skipped = skip;
        lastLine = skip;
        reader = CsvReader.builder()
                .fieldSeparator(delimiter)
                .skipEmptyLines(false)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .maxBufferSize(LONGEST_CELL)
                .ofCsvRecord(text);
        records = reader.iterator();
    }

    private static BufferedReader text(FileChannel channel, TextEncoding encoding) throws IOException {
        channel.position(encoding.markBytes());
        return new BufferedReader(new InputStreamReader(Channels.newInputStream(channel), encoding.charset()), 1 << 16);
    }

    private static int breaks(String cell) {
        int count = 0;
        for (int i = 0; i < cell.length(); i++) {
            boolean lone = cell.charAt(i) == '\r' && (i + 1 == cell.length() || cell.charAt(i + 1) != '\n');
            count += cell.charAt(i) == '\n' || lone ? 1 : 0;
        }
        return count;
    }

    long bytes() {
        try {
            return channel.position();
        } catch (IOException closed) {
            return 0;
        }
    }

    @Override
    public void close() throws IOException {
        reader.close();
        channel.close();
    }
}
