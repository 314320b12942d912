package wisp.interchange;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import wisp.log.StoredEvent;

/** Events as the log keeps them, one canonical line each: imported into an empty log they get the same hashes. */
final class JsonLinesWriter implements EventWriter {
    private final BufferedWriter out;
    private long written;

    JsonLinesWriter(Path file) throws IOException {
        out = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
    }

    @Override
    public void write(StoredEvent stored) throws IOException {
        out.write(stored.event().json());
        out.write('\n');
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
