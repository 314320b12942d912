package wisp.backup;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import wisp.log.ChainHead;
import wisp.log.StoredEvent;

/**
 * The events of a backup, one after another, each held against the hash before it. The file is read from its beginning
 * on, so that all before a damage can be had.
 */
final class BackupEvents implements Iterator<StoredEvent>, AutoCloseable {
    static final String HEAD = "backup.json";
    static final String EVENTS = "events.jsonl";

    private final Path file;
    private final ZipInputStream zip;
    private final BackupHead head;
    private final OwnFiles files;
    private StoredEvent next;
    private boolean ended;
    private ChainHead at = ChainHead.OF_NOTHING;

    /**
     * Opens a backup and reads all that stands before its events.
     *
     * @throws BackupFailure where it is no backup, or one of a newer form, or damaged there
     */
    BackupEvents(Path file) {
        this.file = file;
        try {
            zip = new ZipInputStream(new BufferedInputStream(Files.newInputStream(file)), StandardCharsets.UTF_8);
        } catch (NoSuchFileException missing) {
            throw new BackupFailure("There is no file " + file + ". Check its name and folder.", missing);
        } catch (IOException refused) {
            throw unreadable(refused);
        }
        try {
            head = readHead();
            files = readFiles();
        } catch (IOException | IllegalArgumentException broken) {
            close();
            throw new DamagedBackup(
                    file + " is damaged before its first event (" + broken.getMessage() + "). Take another backup.",
                    0,
                    broken);
        } catch (RuntimeException refused) {
            close();
            throw refused;
        }
    }

    BackupHead head() {
        return head;
    }

    OwnFiles files() {
        return files;
    }

    private BackupHead readHead() throws IOException {
        ZipEntry first = zip.getNextEntry();
        BackupHead read = first == null || !first.getName().equals(HEAD)
                ? null
                : BackupHead.read(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
        if (read == null) {
            throw new BackupFailure(
                    file + " is not a backup, or its beginning is damaged. Give a file that backup wrote.", null);
        }
        if (read.format() > BackupHead.FORMAT) {
            throw new BackupFailure(
                    file + " was written by a newer Wisp (backup format " + read.format() + ", this one knows "
                            + BackupHead.FORMAT + "). Restore it with the newer Wisp.",
                    null);
        }
        return read;
    }

    private OwnFiles readFiles() throws IOException {
        OwnFiles own = OwnFiles.none();
        for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
            if (entry.getName().equals(EVENTS)) {
                return own;
            }
            own = own.with(entry.getName(), zip.readAllBytes());
        }
        throw new IOException("it has no events");
    }

    @Override
    public boolean hasNext() {
        if (next == null && !ended) {
            read();
        }
        return next != null;
    }

    private void read() {
        String line;
        try {
            line = line();
        } catch (IOException broken) {
            throw damaged("the file cannot be read there (" + broken.getMessage() + ")", broken);
        }
        if (line == null) {
            ended = true;
            holdAgainstHead();
            return;
        }
        Optional<StoredEvent> event = EventLine.next(line, at.sequence() + 1, at.hash());
        next = event.orElseThrow(() -> damaged(
                at.sequence() == 0
                        ? "the chain does not begin with it"
                        : "it does not follow from event " + at.sequence(),
                null));
    }

    /** The next line, null at the end. Read byte by byte, so that not a line before a damage is lost with it. */
    private String line() throws IOException {
        ByteArrayOutputStream held = new ByteArrayOutputStream(512);
        int next = zip.read();
        if (next < 0) {
            return null;
        }
        while (next >= 0 && next != '\n') {
            held.write(next);
            next = zip.read();
        }
        return held.toString(StandardCharsets.UTF_8);
    }

    private void holdAgainstHead() {
        if (at.sequence() < head.head().sequence()) {
            throw damaged(
                    "the events end before it, and should go on to "
                            + head.head().sequence(),
                    null);
        }
        if (!at.equals(head.head())) {
            throw damaged("the backup should have ended before it", null);
        }
    }

    private DamagedBackup damaged(String how, Throwable cause) {
        long whole = at.sequence();
        return new DamagedBackup(
                file + " is damaged at event " + (whole + 1) + ": " + how + ". Take another backup"
                        + (whole == 0 ? "." : ", or keep the events before it with --as-of " + whole + "."),
                whole,
                cause);
    }

    private BackupFailure unreadable(IOException refused) {
        return new BackupFailure(
                file + " cannot be read (" + refused.getMessage() + "). Check its folder and the right to read it.",
                refused);
    }

    @Override
    public StoredEvent next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        StoredEvent event = next;
        at = new ChainHead(event.sequence(), event.hash());
        next = null;
        return event;
    }

    @Override
    public void close() {
        try {
            zip.close();
        } catch (IOException nothingToLose) {
            // It was only read.
        }
    }
}
