package wisp.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import wisp.event.CanonicalJson;
import wisp.log.StoredEvent;

/**
 * Events in Wisp's own columns, one row each. Every row is read back before it is written: where the cells cannot hold
 * all of an event, such as an attribute that Wisp does not know, the {@code json} column holds it whole, so that an
 * import into an empty log gets the same hashes.
 */
final class CsvFileWriter implements EventWriter {
    private static final List<String> HEADER =
            Column.ALL.stream().map(Column::name).toList();

    private final CsvWriter out;
    private final CanonicalReading reading = new CanonicalReading("csv", false, ZoneOffset.UTC);
    private long written;

    CsvFileWriter(Path file) throws IOException {
        out = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(file);
        out.writeRecord(HEADER);
        reading.header(HEADER);
    }

    @Override
    public void write(StoredEvent stored) throws IOException {
        String json = stored.event().json();
        Map<String, String> told = CsvCells.of((ObjectNode) JsonRecord.STRICT.readTree(json));
        List<String> cells =
                HEADER.stream().map(name -> told.getOrDefault(name, "")).toList();
        if (!readBack(cells).equals(json)) {
            told.put(Column.JSON, json);
            cells = HEADER.stream().map(name -> told.getOrDefault(name, "")).toList();
        }
        out.writeRecord(cells);
        written++;
    }

    private String readBack(List<String> cells) {
        Row row = reading.row(0, 0, cells);
        return row.faults().isEmpty() ? CanonicalJson.of(row.events().get(0).toString()) : "";
    }

    @Override
    public long written() {
        return written;
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
