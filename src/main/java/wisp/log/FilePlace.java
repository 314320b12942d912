package wisp.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * The database file at its place. SQLite goes on writing to a file that was removed or moved while it was open, and
 * takes an empty one for a new database: either way events would be acknowledged and lost.
 *
 * @param key the file system's own name of the file
 */
record FilePlace(Path file, Object key) {

    static FilePlace of(Path file) {
        return new FilePlace(file, key(file));
    }

    /** Refuses to go on where another file, or none, is at this place now. */
    void check() {
        if (!Objects.equals(key, key(file))) {
            throw gone(file, null);
        }
    }

    /** Refuses a file without a byte, unless another process has only just made it. */
    static void refuseEmpty(Path file, Duration patience) {
        long until = System.nanoTime() + patience.toNanos();
        while (isEmptyFile(file)) {
            if (System.nanoTime() > until) {
                throw new LogFailure(
                        file + " is empty: the log that was there has been cut off, or was never begun."
                                + " Restore the last backup, or remove the file to begin a new log.",
                        null);
            }
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(20));
        }
    }

    private static boolean isEmptyFile(Path file) {
        try {
            return Files.isRegularFile(file) && Files.size(file) == 0;
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static Object key(Path file) {
        try {
            return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
        } catch (IOException missing) {
            throw gone(file, missing);
        }
    }

    private static LogFailure gone(Path file, IOException cause) {
        return new LogFailure(
                file + " was moved or removed while it was in use. Nothing of this batch was kept."
                        + " Stop the server, put the file back and start again.",
                cause);
    }
}
