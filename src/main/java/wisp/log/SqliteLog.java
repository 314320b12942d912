package wisp.log;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Iterator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import wisp.event.Event;

/**
 * The log in one SQLite file, {@code wisp.db} in the data folder; the format is drawn in {@link EventTable}. The file
 * is in write-ahead mode with {@code synchronous=FULL}: a batch that was acknowledged outlives the process and the
 * power. Several processes may use one file: nothing that another could change is remembered between calls.
 */
public final class SqliteLog implements EventLog {
    /** The name of the file in the data folder. */
    public static final String FILE = "wisp.db";

    private final SqliteConnections connections;
    private final Clock clock;

    private SqliteLog(SqliteConnections connections, Clock clock) {
        this.connections = connections;
        this.clock = clock;
    }

    /**
     * Opens the log in a data folder and makes both where they are missing.
     *
     * @param clock tells when an event was recorded
     * @throws LogFailure where it cannot be opened; what is there is then left as it is
     */
    public static SqliteLog open(Path folder, Clock clock) {
        return open(folder, clock, SqliteLimits.USUAL);
    }

    static SqliteLog open(Path folder, Clock clock, SqliteLimits limits) {
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException notAFolder) {
            throw new LogFailure(folder + " is a file, not a folder. Choose another data folder.", notAFolder);
        } catch (IOException refused) {
            throw new LogFailure(
                    "The data folder " + folder + " cannot be made (" + refused.getMessage()
                            + "). Choose a folder that this user may write to.",
                    refused);
        }
        return new SqliteLog(new SqliteConnections(folder.resolve(FILE), limits), clock);
    }

    @Override
    public Appended append(List<Event> events, boolean whole) {
        List<Offered> batch = events.stream().map(Offered::of).toList();
        return connections.write(table -> new TableAppend(table, clock).batch(batch, whole));
    }

    @Override
    public long appendAll(Iterator<Event> events, Consumer<Appended.Outcome> each, BooleanSupplier keep) {
        connections.write(
                table -> {
                    new TableAppend(table, clock).stream(events, each);
                    return null;
                },
                keep);
        return last();
    }

    @Override
    public List<StoredEvent> read(long after, int limit) {
        return connections.read(table -> CheckedRead.page(table, after, limit));
    }

    @Override
    public void replay(long after, Consumer<StoredEvent> reader) {
        CheckedRead.replay(this::from, after, last(), reader);
    }

    @Override
    public long last() {
        return connections.read(EventTable::last);
    }

    @Override
    public Verification verify() {
        Verification walked = new ChainWalk(this::from).walk();
        if (walked.whole()) {
            connections.checkFile();
        }
        return walked;
    }

    @Override
    public void close() {
        connections.close();
    }

    /** A page has a snapshot of its own: a slow reader then keeps no write-ahead log from being folded in. */
    private List<StoredRow> from(long from, long limit) {
        return connections.read(table -> table.from(from, limit));
    }
}
