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
 * The farm's own definitions and targets: the files of its {@code analytics} folder. Without them a restored log would
 * give other figures.
 *
 * @param texts their bytes, by their path in the backup: {@code analytics/} and the path in that folder, with slashes
 */
record OwnFiles(Map<String, byte[]> texts) {
    private static final String FOLDER = "analytics/";

    static OwnFiles none() {
        return new OwnFiles(Map.of());
    }

    /** Those of a folder of definitions; none where it is null or not there. */
    static OwnFiles of(Path analytics) {
        Map<String, byte[]> texts = new TreeMap<>();
        if (analytics != null && Files.isDirectory(analytics)) {
            try (Stream<Path> all = Files.walk(analytics)) {
                List<Path> files = all.filter(Files::isRegularFile).toList();
                for (Path each : files) {
                    String name = analytics.relativize(each).toString().replace('\\', '/');
                    texts.put(FOLDER + name, Files.readAllBytes(each));
                }
            } catch (IOException refused) {
                throw new BackupFailure(
                        "The folder " + analytics + " cannot be read (" + refused.getMessage()
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
     * Puts them into a folder of definitions.
     *
     * @throws BackupFailure where one would go over another file, or leave that folder
     */
    void writeInto(Path analytics) {
        texts.forEach((name, text) -> write(target(analytics, name), text));
    }

    /** Refuses what {@link #writeInto} would refuse, and writes nothing. */
    void check(Path analytics) {
        texts.forEach((name, text) -> differs(target(analytics, name), text));
    }

    private static Path target(Path analytics, String name) {
        Path own = analytics.normalize();
        Path target = name.startsWith(FOLDER)
                ? own.resolve(name.substring(FOLDER.length())).normalize()
                : own;
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
