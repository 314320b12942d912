package wisp.log;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/** Opens the log that a data folder or a database's address names. */
public final class Logs {
    private static final String DATABASE = "jdbc:";

    private Logs() {}

    /**
     * Opens a log and makes it where there is none.
     *
     * @param data a folder, or the JDBC address of a PostgreSQL database
     * @param clock tells when an event was recorded
     * @throws LogFailure where it cannot be opened; what is there is then left as it is
     */
    public static EventLog open(String data, Clock clock) {
        Optional<Path> folder = folder(data);
        return folder.isPresent()
                ? SqliteLog.open(folder.get(), clock)
                : PostgresLog.open(PostgresAddress.of(data), clock);
    }

    /** Whether there is a data folder, or a log in the database. */
    public static boolean exists(String data) {
        return folder(data).map(Files::exists).orElseGet(() -> PostgresLog.exists(PostgresAddress.of(data)));
    }

    /** The data folder; none for a database's address. */
    public static Optional<Path> folder(String data) {
        if (data.startsWith(DATABASE)) {
            return Optional.empty();
        }
        try {
            return Optional.of(Path.of(data));
        } catch (InvalidPathException wrong) {
            throw new LogFailure("\"" + data + "\" is not a path. Give a data folder.", wrong);
        }
    }

    /** Where a log lies, as it may be printed: an address without user and password. */
    public static String place(String data) {
        return folder(data)
                .map(Path::toString)
                .orElseGet(() -> PostgresAddress.of(data).toString());
    }
}
