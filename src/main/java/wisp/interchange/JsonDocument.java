package wisp.interchange;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.TreeSet;
import wisp.event.Fault;

/**
 * A JSON document: one object, objects one after another, an array of them, or a collection whose {@code member} is
 * such an array. Read as a stream; what follows a place that is not JSON cannot be read.
 */
final class JsonDocument implements Rows {
    private final JsonParser parser;
    private final Set<String> leftOut = new TreeSet<>();
    private Row ahead;
    private boolean ended;
    private int index;
    private boolean inside;
    private boolean collection;

    JsonDocument(Path file) throws IOException {
        BufferedReader text = Files.newBufferedReader(file, StandardCharsets.UTF_8);
        text.mark(1);
        if (text.read() != '\uFEFF') {
            text.reset();
        }
        parser = JsonRecord.STREAM.createParser(text);
    }

    /** Whether the file's first line that is not blank is a JSON object by itself. */
    static boolean firstLineIsWhole(Path file) throws IOException {
        try (BufferedReader text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            StringBuilder line = new StringBuilder();
            for (int next = text.read(); next >= 0; next = text.read()) {
                if (next == '\n' && !line.toString().isBlank()) {
                    break;
                }
                if (line.length() > JsonLines.LONGEST_LINE_BYTES) {
                    return false;
                }
                line.append((char) next);
            }
            String bare = line.toString().replaceFirst("^\uFEFF", "").strip();
            return bare.startsWith("{")
                    && bare.endsWith("}")
                    && JsonRecord.STRICT.readTree(bare).isObject();
        } catch (JsonProcessingException part) {
            return false;
        } catch (MalformedInputException notUtf8) {
            throw new RefusedFile("", "It is JSON that is not in UTF-8.", "Save the file in UTF-8, as JSON must be.");
        }
    }

    @Override
    public boolean hasNext() {
        if (ahead == null && !ended) {
            try {
                ahead = read();
            } catch (JsonProcessingException wrong) {
                ahead = broken(wrong);
            } catch (MalformedInputException notUtf8) {
                ahead = Row.faulty(line(), index, List.of(new Fault("", "It is not in UTF-8.", "Save it in UTF-8.")));
                ended = true;
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
        return ahead != null;
    }

    @Override
    public Row next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        Row row = ahead;
        ahead = null;
        return row;
    }

    private Row read() throws IOException {
        for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
            if (token == JsonToken.START_ARRAY && !inside) {
                inside = true;
            } else if (token == JsonToken.END_ARRAY) {
                inside = false;
                skipRestOfCollection();
            } else if (token == JsonToken.START_OBJECT && !inside) {
                Row single = outermost();
                if (single != null) {
                    return single;
                }
            } else if (inside || token.isScalarValue()) {
                return record(parser.readValueAsTree());
            }
        }
        ended = true;
        return null;
    }

    /** An object at the top: a record itself, or a collection, of which null is returned inside its members. */
    private Row outermost() throws IOException {
        ObjectNode object = JsonRecord.STREAM.createObjectNode();
        long line = line();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            JsonToken value = parser.nextToken();
            if (name.equals("member") && value == JsonToken.START_ARRAY) {
                inside = true;
                collection = true;
                return null;
            }
            JsonNode node = parser.readValueAsTree();
            object.set(name, node);
        }
        return JsonRecord.row(line, index++, object, leftOut);
    }

    private void skipRestOfCollection() throws IOException {
        while (collection && parser.nextToken() == JsonToken.FIELD_NAME) {
            parser.nextToken();
            parser.skipChildren();
        }
        collection = false;
    }

    private Row record(JsonNode node) {
        return JsonRecord.row(line(), index++, node, leftOut);
    }

    private Row broken(JsonProcessingException wrong) {
        ended = true;
        Fault fault = JsonRecord.notJson(wrong);
        String rest = "Mend it there; nothing after that place could be read.";
        return Row.faulty(line(), index++, List.of(new Fault("", fault.problem(), rest)));
    }

    private long line() {
        return parser.currentLocation().getLineNr();
    }

    @Override
    public long bytes() {
        return Math.max(0, parser.currentLocation().getCharOffset());
    }

    @Override
    public List<String> notes() {
        return IcarReader.notes(leftOut);
    }

    @Override
    public void close() throws IOException {
        parser.close();
    }
}
