package wisp.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import wisp.log.ChainHead;
import wisp.log.EventLog;
import wisp.log.StoredEvent;

/**
 * Writes a backup while others go on writing to the log. The log only grows, so that the events up to the newest at the
 * beginning are one moment's log, whatever is recorded meanwhile. The copy is read back and walked along its chain
 * before it gets its name; its head is written beside it.
 */
public final class Backup {
    private final EventLog log;
    private final Path analytics;
    private final Clock clock;

    /**
     * A backup of a log.
     *
     * @param analytics the folder of the farm's own definitions; null where there is none
     */
    public Backup(EventLog log, Path analytics, Clock clock) {
        this.log = log;
        this.analytics = analytics;
        this.clock = clock;
    }

    /** The file beside a backup that holds its head. */
    public static Path headFile(Path file) {
        return file.resolveSibling(file.getFileName() + ".head");
    }

    /**
     * Writes the backup.
     *
     * @return the newest event in it
     * @throws BackupFailure where the file is there already or cannot be written; nothing is then left behind
     */
    public ChainHead write(Path file) {
        List.of(file, headFile(file)).forEach(Backup::refuseExisting);
        OwnFiles files = OwnFiles.of(analytics);
        ChainHead head = head();
        Path part = file.resolveSibling(
                file.getFileName() + ".part-" + ProcessHandle.current().pid());
        try {
            try {
                write(part, head, files);
                readBack(part);
                refuseExisting(file);
                Files.move(part, file);
                Files.writeString(headFile(file), head + "\n");
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException | UncheckedIOException refused) {
            throw new BackupFailure(
                    file + " cannot be written (" + refused.getMessage()
                            + "). Nothing was backed up. Check the folder, its rights and its free space.",
                    refused);
        }
        return head;
    }

    private ChainHead head() {
        long last = log.last();
        return last == 0
                ? ChainHead.OF_NOTHING
                : new ChainHead(last, log.read(last - 1, 1).get(0).hash());
    }

    private void write(Path part, ChainHead head, OwnFiles files) throws IOException {
        String made = clock.instant().truncatedTo(ChronoUnit.MILLIS).toString();
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ZipOutputStream zip = new ZipOutputStream(Channels.newOutputStream(channel), StandardCharsets.UTF_8);
            entry(
                    zip,
                    BackupEvents.HEAD,
                    new BackupHead(BackupHead.FORMAT, head, made).json().getBytes(StandardCharsets.UTF_8));
            for (String name : files.texts().keySet()) {
                entry(zip, name, files.texts().get(name));
            }
            zip.putNextEntry(new ZipEntry(BackupEvents.EVENTS));
            for (long at = 0; at < head.sequence(); ) {
                for (StoredEvent stored : log.read(at, (int) Math.min(1_000, head.sequence() - at))) {
                    zip.write((EventLine.of(stored) + "\n").getBytes(StandardCharsets.UTF_8));
                    at = stored.sequence();
                }
            }
            zip.closeEntry();
            zip.finish();
            zip.flush();
            channel.force(true);
        }
    }

    private static void entry(OutputStream out, String name, byte[] text) throws IOException {
        ZipOutputStream zip = (ZipOutputStream) out;
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text);
        zip.closeEntry();
    }

    /** Walks the copy, which throws where it is not whole. */
    private static void readBack(Path part) {
        try (BackupEvents copy = new BackupEvents(part)) {
            copy.forEachRemaining(stored -> {});
        }
    }

    private static void refuseExisting(Path file) {
        if (Files.exists(file)) {
            throw new BackupFailure(
                    file + " is there already, and a backup never goes over another file. Choose another name.", null);
        }
    }
}
