package wisp.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.jerolba.carpet.CarpetWriter;
import com.jerolba.carpet.io.FileSystemOutputFile;
import com.jerolba.carpet.model.FieldType;
import com.jerolba.carpet.model.FieldTypes;
import com.jerolba.carpet.model.WriteRecordModelType;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.function.Function;
import org.apache.parquet.hadoop.metadata.CompressionCodecName;
import wisp.log.StoredEvent;

/**
 * Events as Parquet, one row each, in the columns of Wisp's own CSV with types: text, double, boolean; {@code time} and
 * {@code recordedtime} as instants in UTC; besides {@code sequence}, {@code hash}, and in {@code json} the whole event.
 */
final class ParquetEventWriter implements EventWriter {

    /** An event with its JSON read once for all columns. */
    private record Parsed(StoredEvent stored, ObjectNode json) {}

    private final CarpetWriter<Parsed> out;
    private long written;

    ParquetEventWriter(Path file) throws IOException {
        out = new CarpetWriter.Builder<>(new FileSystemOutputFile(file.toFile()), Parsed.class)
                .withWriteRecordModel(model())
                .withCompressionCodec(CompressionCodecName.ZSTD)
                .build();
    }

    private static WriteRecordModelType<Parsed> model() {
        WriteRecordModelType<Parsed> model = FieldTypes.writeRecordModel(Parsed.class)
                .withField(
                        "sequence",
                        FieldTypes.LONG.notNull(),
                        parsed -> parsed.stored().sequence())
                .withField(
                        "hash",
                        FieldTypes.STRING.notNull(),
                        parsed -> parsed.stored().hash());
        for (Column column : Column.ALL) {
            model = model.withField(column.name(), type(column), value(column));
        }
        return model;
    }

    private static FieldType type(Column column) {
        return switch (column.kind()) {
            case NUMBER -> FieldTypes.DOUBLE;
            case FLAG -> FieldTypes.BOOLEAN;
            case TIME -> FieldTypes.INSTANT;
            case TEXT, RELIEF, JSON -> FieldTypes.STRING;
        };
    }

    private static Function<Parsed, Object> value(Column column) {
        return switch (column.name()) {
            case "time" -> parsed -> parsed.stored().event().time().toInstant();
            case "recordedtime" ->
                parsed -> parsed.stored().event().recordedTime().toInstant();
            case Column.JSON -> parsed -> parsed.stored().event().json();
            default -> parsed -> cell(column, parsed.json());
        };
    }

    private static Object cell(Column column, ObjectNode event) {
        boolean amended = "amended".equals(event.path("type").textValue());
        JsonNode value = (column.data() ? event.path("data") : event).get(column.field());
        if (value == null || value.isNull() || Column.AMENDED.containsKey(column.name()) && !amended) {
            return null;
        }
        return switch (column.kind()) {
            case NUMBER -> value.doubleValue();
            case FLAG -> value.booleanValue();
            case TIME -> Instant.from(OffsetDateTime.parse(value.textValue()));
            case TEXT, RELIEF, JSON -> value.isTextual() ? value.textValue() : value.toString();
        };
    }

    @Override
    public void write(StoredEvent stored) throws IOException {
        out.write(new Parsed(
                stored, (ObjectNode) JsonRecord.STRICT.readTree(stored.event().json())));
        written++;
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
