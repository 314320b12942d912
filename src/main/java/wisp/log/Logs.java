package wisp.log;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;

/** Opens the log that a data folder or a database's address names. */
public final class Logs {
    private Logs() {}

    /**
     * Opens a log and makes it where there is none.
     *
     * @param data a folder
     * @param clock tells when an event was recorded
     * @throws LogFailure where it cannot be opened; what is there is then left as it is
     */
    public static EventLog open(String data, Clock clock) {
        if (data.startsWith("jdbc:")) {
            throw new LogFailure("There is no store for " + data + ". Give a data folder.", null);
        }
        try {
            return SqliteLog.open(Path.of(data), clock);
        } catch (InvalidPathException wrong) {
            throw new LogFailure("\"" + data + "\" is not a path. Give a data folder.", wrong);
        }
    }
}
