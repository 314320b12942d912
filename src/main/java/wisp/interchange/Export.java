package wisp.interchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import wisp.log.EventLog;

/** A log's events written into one file. The file is there whole or, after a failure, not at all. */
public final class Export {
    private static final int EVENTS_BETWEEN_PROGRESS = 5000;

    private Export() {}

    /**
     * Writes every event that is in the log now.
     *
     * @param file is replaced where there is one
     * @throws FileFailure where the file cannot be written; what was there before is then still there
     */
    public static ExportReport write(ExportFormat format, Path file, EventLog log, ExportListener listener) {
        Path target = file.toAbsolutePath();
        Path part = target.resolveSibling(target.getFileName() + ".part");
        try {
            ExportReport report = writePart(format, part, log, listener);
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
            return report;
        } catch (IOException | UncheckedIOException failed) {
            throw new FileFailure(
                    file + " cannot be written (" + reason(failed) + "). Choose a folder that is there, that you may"
                            + " write to, and that has room.",
                    failed);
        } finally {
            discard(part);
        }
    }

    private static ExportReport writePart(ExportFormat format, Path part, EventLog log, ExportListener listener)
            throws IOException {
        long all = log.last();
        EventWriter writer = open(format, part, log);
        try (writer) {
            log.replay(0, stored -> {
                try {
                    writer.write(stored);
                } catch (IOException failed) {
                    throw new UncheckedIOException(failed);
                }
                if (stored.sequence() % EVENTS_BETWEEN_PROGRESS == 0 || stored.sequence() == all) {
                    listener.progress(stored.sequence(), all);
                }
            });
        }
        return new ExportReport(writer.written(), writer.notExported(), writer.fieldsLeftOut());
    }

    private static EventWriter open(ExportFormat format, Path part, EventLog log) throws IOException {
        return switch (format) {
            case JSONL -> new JsonLinesWriter(part);
            case CSV -> new CsvFileWriter(part);
            case PARQUET -> new ParquetEventWriter(part);
            case ICAR -> new IcarWriter(part, Corrections.of(log));
        };
    }

    private static String reason(Exception failed) {
        Throwable cause = failed instanceof UncheckedIOException ? failed.getCause() : failed;
        if (cause instanceof NoSuchFileException) {
            return "its folder is not there";
        }
        if (cause instanceof AccessDeniedException) {
            return "its folder may not be written to";
        }
        if (cause instanceof DirectoryNotEmptyException) {
            return "a folder of that name is there";
        }
        return String.valueOf(cause.getMessage());
    }

    private static void discard(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException leftOver) {
            // The half file stays beside the target under its own name, .part.
        }
    }
}
