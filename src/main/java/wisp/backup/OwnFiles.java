package wisp.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The farm's own definitions and targets: the files under {@code analytics} in its data folder. Without them a restored
 * log would give other figures.
 *
 * @param texts their bytes, by their path from the data folder, with slashes
 */
record OwnFiles(Map<String, byte[]> texts) {
    private static final String FOLDER = "analytics";

    static OwnFiles none() {
        return new OwnFiles(Map.of());
    }

    /** Those of a data folder; none where the folder is null, as a database has none. */
    static OwnFiles of(Path dataFolder) {
        Map<String, byte[]> texts = new TreeMap<>();
        if (dataFolder != null && Files.isDirectory(dataFolder.resolve(FOLDER))) {
            try (Stream<Path> all = Files.walk(dataFolder.resolve(FOLDER))) {
                List<Path> files = all.filter(Files::isRegularFile).toList();
                for (Path each : files) {
                    texts.put(dataFolder.relativize(each).toString().replace('\\', '/'), Files.readAllBytes(each));
                }
            } catch (IOException refused) {
                throw new BackupFailure(
                        "The folder " + dataFolder.resolve(FOLDER) + " cannot be read (" + refused.getMessage()
                                + "). Check the right to read it.",
                        refused);
            }
        }
        return new OwnFiles(Collections.unmodifiableMap(texts));
    }

    OwnFiles with(String name, byte[] text) {
        Map<String, byte[]> more = new TreeMap<>(texts);
        more.put(name, text);
        return new OwnFiles(Collections.unmodifiableMap(more));
    }

    /**
     * Puts them into a data folder.
     *
     * @throws BackupFailure where one would go over another file, or leave {@code analytics}
     */
    void writeInto(Path dataFolder) {
        texts.forEach((name, text) -> write(target(dataFolder, name), text));
    }

    /** Refuses what {@link #writeInto} would refuse, and writes nothing. */
    void check(Path dataFolder) {
        texts.forEach((name, text) -> differs(target(dataFolder, name), text));
    }

    private static Path target(Path dataFolder, String name) {
        Path own = dataFolder.resolve(FOLDER).normalize();
        Path target = dataFolder.resolve(name).normalize();
        if (!target.startsWith(own) || target.equals(own)) {
            throw new BackupFailure(
                    "The backup holds a file " + name + " that does not belong under " + FOLDER
                            + ": it was not written by backup. Take another one.",
                    null);
        }
        return target;
    }

    private static void write(Path target, byte[] text) {
        if (!differs(target, text)) {
            return;
        }
        try {
            Files.createDirectories(target.getParent());
            Files.write(target, text);
        } catch (IOException refused) {
            throw new BackupFailure(
                    target + " cannot be written (" + refused.getMessage() + "). Check the folder and its rights.",
                    refused);
        }
    }

    /** Whether it still has to be written; another file in its place is refused. */
    private static boolean differs(Path target, byte[] text) {
        if (Files.notExists(target)) {
            return true;
        }
        try {
            if (Arrays.equals(Files.readAllBytes(target), text)) {
                return false;
            }
        } catch (IOException unreadable) {
            throw new BackupFailure(target + " is in the way. Restore into an empty folder.", unreadable);
        }
        throw new BackupFailure(
                target + " is there already and says something else. Restore into an empty folder.", null);
    }
}
