package wisp.log;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jooq.SQLDialect;
import org.jooq.conf.Settings;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;

/**
 * The connections to one PostgreSQL database. One batch is written at a time, by whichever process: a writer first
 * takes an advisory lock that ends with its transaction, so that the next number is known to be free. Readers ask for
 * no lock and see the last whole batch. A connection that broke, as when the server was restarted, is replaced.
 */
final class PostgresConnections implements AutoCloseable {
    /** The advisory lock's key: "WISP" in ASCII before the table's own number, so that two schemas do not wait. */
    private static final String LOCK =
            "((" + 0x57495350 + "::bigint << 32) | coalesce(to_regclass('event')::oid::bigint, 0))";

    private static final Settings SETTINGS = new Settings().withExecuteLogging(false);
    private static final int READERS_MOST = 8;

    /** A writer waits 10 s for another process, or as long as the address or the server says. */
    private static final String TAKE_LOCK = "SELECT set_config('lock_timeout',"
            + " coalesce(nullif(current_setting('lock_timeout'), '0'), '10s'), true),"
            + " set_config('synchronous_commit', 'on', true), current_setting('fsync'),"
            + " pg_advisory_xact_lock" + LOCK;

    private final PostgresAddress place;
    private final PostgresFailure failure;
    private final ReentrantLock writing = new ReentrantLock(true);
    private final Semaphore free = new Semaphore(READERS_MOST, true);
    private final Queue<Connection> idle = new ConcurrentLinkedQueue<>();
    private volatile boolean closed;

    /**
     * Connects to a database and brings it to the newest schema.
     *
     * @throws LogFailure where that cannot be done; what is there is then left as it is
     */
    PostgresConnections(PostgresAddress place) {
        this.place = place;
        this.failure = new PostgresFailure(place);
        try (Connection connection = place.connect()) {
            PostgresMigrations.check(connection, place);
            PostgresMigrations.apply(connection);
        } catch (SQLException failed) {
            throw failure.of(failed, "It was left as it is.");
        }
    }

    /** Does some writing in one transaction, and takes it back where it is not to be kept, asked at the end. */
    <T> T write(Function<EventTable, T> work, BooleanSupplier keep) {
        refuseClosed();
        boolean committing = false;
        Connection connection = null;
        writing.lock();
        try {
            // Nothing was done before the lock is there.
            connection = onAny(PostgresConnections::locking);
            T result = work.apply(table(connection));
            committing = keep.getAsBoolean();
            if (committing) {
                connection.commit();
            } else {
                connection.rollback();
            }
            giveBack(connection);
            return result;
        } catch (SQLException | DataAccessException failed) {
            close(connection);
            throw failure.of(failed, outcome(committing && PostgresFailure.lost(failed)));
        } catch (RuntimeException | Error refused) {
            // PostgreSQL takes back what a connection that ends has not committed.
            close(connection);
            throw refused;
        } finally {
            writing.unlock();
        }
    }

    private static String outcome(boolean unknown) {
        return unknown
                ? "It broke off while this batch was being kept, so that nobody knows yet whether it was; send it"
                        + " again: what is there already does not come in twice."
                : "Nothing of this batch was kept.";
    }

    /** Does some reading; each statement sees the last whole batch. */
    <T> T read(Function<EventTable, T> work) {
        refuseClosed();
        free.acquireUninterruptibly();
        try {
            return onAny(connection -> reading(connection, work));
        } catch (SQLException | DataAccessException failed) {
            throw failure.of(failed, "Nothing was read.");
        } finally {
            free.release();
        }
    }

    private <T> T reading(Connection connection, Function<EventTable, T> work) throws SQLException {
        try {
            connection.setAutoCommit(true);
            T result = work.apply(table(connection));
            giveBack(connection);
            return result;
        } catch (SQLException | RuntimeException | Error failed) {
            close(connection);
            throw failed;
        }
    }

    private static Connection locking(Connection connection) throws SQLException {
        try {
            connection.setAutoCommit(false);
            lock(connection);
            return connection;
        } catch (SQLException | RuntimeException | Error failed) {
            close(connection);
            throw failed;
        }
    }

    /**
     * Uses a connection that is idle; where that proves to be broken, and so with it all that are idle, a new one. What
     * is done must be harmless to do again.
     */
    private <T> T onAny(Use<T> use) throws SQLException {
        Connection kept = idle.poll();
        if (kept != null) {
            try {
                return use.on(kept);
            } catch (SQLException | DataAccessException failed) {
                if (!PostgresFailure.lost(failed)) {
                    throw failed;
                }
                closeIdle();
            }
        }
        return use.on(place.connect());
    }

    private interface Use<T> {
        T on(Connection connection) throws SQLException;
    }

    /**
     * Takes the lock until the end of the transaction, whose commit then waits for the disk whatever the server's
     * settings say.
     */
    static void lock(Connection connection) throws SQLException {
        try (Statement sql = connection.createStatement();
                ResultSet result = sql.executeQuery(TAKE_LOCK)) {
            result.next();
            if (!result.getString(2).equals("on") || !result.getString(3).equals("on")) {
                throw new LogFailure(
                        "This PostgreSQL does not wait for its disk (fsync is off), so that a power cut could lose what"
                                + " was acknowledged. Nothing of this batch was kept. Turn fsync on.",
                        null);
            }
        }
    }

    private static EventTable table(Connection connection) {
        return new EventTable(DSL.using(connection, SQLDialect.POSTGRES, SETTINGS));
    }

    private void refuseClosed() {
        if (closed) {
            throw new LogFailure("The log in " + place + " is closed. Open it again.", null);
        }
    }

    private void giveBack(Connection connection) {
        idle.add(connection);
        if (closed) {
            closeIdle();
        }
    }

    private void closeIdle() {
        for (Connection each = idle.poll(); each != null; each = idle.poll()) {
            close(each);
        }
    }

    private static void close(Connection connection) {
        try {
            if (connection != null) {
                connection.close();
            }
        } catch (SQLException gone) {
            // It holds nothing that is not committed.
        }
    }

    @Override
    public void close() {
        writing.lock();
        try {
            closed = true;
            closeIdle();
        } finally {
            writing.unlock();
        }
    }
}
