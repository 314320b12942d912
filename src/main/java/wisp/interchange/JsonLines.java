package wisp.interchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Queue;
import java.util.Set;
import java.util.TreeSet;
import wisp.event.Fault;

/**
 * JSON Lines: one JSON value a line, in UTF-8, a byte-order mark and blank lines allowed. A line that cannot be read is
 * refused by itself.
 */
final class JsonLines implements Rows {
    /** The longest line that is read. */
    static final int LONGEST_LINE_BYTES = 1 << 20;

    private final InputStream in;
    private final Queue<Row> ready = new ArrayDeque<>();
    private final Set<String> leftOut = new TreeSet<>();
    private long bytes;
    private long line;
    private int index;
    private boolean ended;

    JsonLines(Path file) throws IOException {
        in = new BufferedInputStream(Files.newInputStream(file), 1 << 16);
    }

    @Override
    public boolean hasNext() {
        while (ready.isEmpty() && !ended) {
            try {
                readLine();
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
        return !ready.isEmpty();
    }

    @Override
    public Row next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        return ready.remove();
    }

    private void readLine() throws IOException {
        ByteArrayOutputStream held = new ByteArrayOutputStream();
        long length = 0;
        int next = in.read();
        while (next >= 0 && next != '\n') {
            if (++length <= LONGEST_LINE_BYTES) {
                held.write(next);
            }
            next = in.read();
        }
        ended = next < 0;
        bytes += length + 1;
        line++;
        if (length > LONGEST_LINE_BYTES) {
            refuse(new Fault(
                    "", "The line is longer than 1 MB, which no event is.", "Write one event a line, with line ends."));
            return;
        }
        read(held.toByteArray());
    }

    private void read(byte[] held) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(held))
                    .toString();
            String bare = line == 1 && text.startsWith("\uFEFF") ? text.substring(1) : text;
            if (!bare.isBlank()) {
                JsonNode node = JsonRecord.STRICT.readTree(bare);
                members(node);
            }
        } catch (CharacterCodingException notUtf8) {
            refuse(new Fault("", "The line is not in UTF-8.", "Save the file in UTF-8, as JSON must be."));
        } catch (JsonProcessingException notJson) {
            refuse(JsonRecord.notJson(notJson));
        }
    }

    private void members(JsonNode node) {
        JsonNode members = node.isArray() ? node : node.get("member");
        if (members != null && members.isArray() && !node.has("specversion")) {
            members.forEach(member -> ready.add(JsonRecord.row(line, index++, member, leftOut)));
        } else {
            ready.add(JsonRecord.row(line, index++, node, leftOut));
        }
    }

    private void refuse(Fault fault) {
        ready.add(Row.faulty(line, index++, List.of(fault)));
    }

    @Override
    public long bytes() {
        return bytes;
    }

    @Override
    public List<String> notes() {
        return IcarReader.notes(leftOut);
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
