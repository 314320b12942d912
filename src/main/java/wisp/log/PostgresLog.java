package wisp.log;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Iterator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import wisp.event.Event;

/**
 * The log in one PostgreSQL database, for several servers on one herd; the format is drawn in {@link EventTable} and
 * the hashes are those of every other store. Nothing that another process could change is remembered between calls.
 */
final class PostgresLog implements EventLog {
    private final PostgresAddress address;
    private final PostgresConnections connections;
    private final Clock clock;

    private PostgresLog(PostgresAddress address, PostgresConnections connections, Clock clock) {
        this.address = address;
        this.connections = connections;
        this.clock = clock;
    }

    /**
     * Opens the log in a database and makes its table where it is missing.
     *
     * @param clock tells when an event was recorded
     * @throws LogFailure where it cannot be opened; what is there is then left as it is
     */
    static PostgresLog open(PostgresAddress address, Clock clock) {
        return new PostgresLog(address, new PostgresConnections(address), clock);
    }

    /** Whether there is a log in a database. */
    static boolean exists(PostgresAddress address) {
        try (Connection connection = address.connect()) {
            return PostgresMigrations.check(connection, address) > 0;
        } catch (SQLException failed) {
            throw new PostgresFailure(address).of(failed, "Nothing was read.");
        }
    }

    @Override
    public Appended append(List<Event> events, boolean whole) {
        List<Offered> batch = events.stream().map(Offered::of).toList();
        return connections.write(table -> new TableAppend(table, clock).batch(batch, whole), () -> true);
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
        return new ChainWalk(this::from).walk();
    }

    @Override
    public Listening listen(Runnable bell) {
        return PostgresBell.hang(address, bell);
    }

    @Override
    public void close() {
        connections.close();
    }

    /**
     * A page is a statement of its own, found by its first number: a slow reader holds no snapshot open, and a server
     * that is restarted in between is not noticed.
     */
    private List<StoredRow> from(long from, long limit) {
        return connections.read(table -> table.from(from, limit));
    }
}
