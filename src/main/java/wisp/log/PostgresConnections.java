package wisp.log;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.pool.HikariPool.PoolInitializationException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
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
    /** How long a writer waits for another process to finish. */
    static final Duration LOCK_WAIT = Duration.ofSeconds(10);

    /** The advisory lock's key: "WISP" in ASCII before the table's own number, so that two schemas do not wait. */
    private static final String LOCK =
            "((" + 0x57495350 + "::bigint << 32) | coalesce(to_regclass('event')::oid::bigint, 0))";

    private static final Settings SETTINGS = new Settings().withExecuteLogging(false);
    private static final int CONNECTIONS_MOST = 10;
    private static final Duration CONNECTION_WAIT = Duration.ofSeconds(5);
    private static final String TAKE_LOCK = "SELECT set_config('lock_timeout', '" + LOCK_WAIT.toMillis()
            + "', true), set_config('synchronous_commit', 'on', true), current_setting('fsync'),"
            + " pg_advisory_xact_lock" + LOCK;

    private final PostgresAddress place;
    private final PostgresFailure failure;
    private final ReentrantLock writing = new ReentrantLock(true);
    private final HikariDataSource pool;

    /**
     * Connects to a database and brings it to the newest schema.
     *
     * @throws LogFailure where that cannot be done; what is there is then left as it is
     */
    PostgresConnections(PostgresAddress place) {
        this.place = place;
        this.failure = new PostgresFailure(place);
        this.pool = pool();
        try {
            prepare();
        } catch (RuntimeException | Error refused) {
            pool.close();
            throw refused;
        }
    }

    private HikariDataSource pool() {
        HikariConfig config = new HikariConfig();
        config.setPoolName("wisp");
        config.setJdbcUrl(place.url());
        config.setDataSourceProperties(PostgresAddress.settings());
        config.setMaximumPoolSize(CONNECTIONS_MOST);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(CONNECTION_WAIT.toMillis());
        config.setInitializationFailTimeout(1);
        // Each statement of a writer must see what was there when it got the lock, not when its transaction began.
        config.setTransactionIsolation("TRANSACTION_READ_COMMITTED");
        try {
            return new HikariDataSource(config);
        } catch (PoolInitializationException failed) {
            throw failure.of(failed, "It was left as it is.");
        }
    }

    private void prepare() {
        try (Connection connection = pool.getConnection()) {
            PostgresMigrations.check(connection, place);
            PostgresMigrations.apply(connection);
        } catch (SQLException failed) {
            throw failure.of(failed, "It was left as it is.");
        }
    }

    /** Does some writing in one transaction, and takes it back where it is not to be kept, asked at the end. */
    <T> T write(Function<EventTable, T> work, BooleanSupplier keep) {
        boolean committing = false;
        writing.lock();
        try (Connection connection = locked()) {
            T result = work.apply(table(connection));
            committing = keep.getAsBoolean();
            if (committing) {
                connection.commit();
            }
            // Otherwise the pool takes back what was not committed.
            return result;
        } catch (SQLException | DataAccessException failed) {
            throw failure.of(failed, outcome(committing && PostgresFailure.lost(failed)));
        } finally {
            writing.unlock();
        }
    }

    private static String outcome(boolean unknown) {
        return unknown
                ? "It broke off while this batch was being kept, so that nobody knows yet whether it was; send it again:"
                        + " what is there already does not come in twice."
                : "Nothing of this batch was kept.";
    }

    /** Does some reading; each statement sees the last whole batch. */
    <T> T read(Function<EventTable, T> work) {
        try {
            try {
                return reading(work);
            } catch (SQLException | DataAccessException failed) {
                replaceIfLost(failed);
                return reading(work);
            }
        } catch (SQLException | DataAccessException failed) {
            throw failure.of(failed, "Nothing was read.");
        }
    }

    private <T> T reading(Function<EventTable, T> work) throws SQLException {
        try (Connection connection = open()) {
            return work.apply(table(connection));
        }
    }

    /** A connection that holds the lock; nothing was done before, so that a broken one may be replaced. */
    private Connection locked() throws SQLException {
        try {
            return locking();
        } catch (SQLException failed) {
            replaceIfLost(failed);
            return locking();
        }
    }

    private Connection locking() throws SQLException {
        Connection connection = open();
        try {
            connection.setAutoCommit(false);
            lock(connection);
            return connection;
        } catch (SQLException | RuntimeException | Error failed) {
            connection.close();
            throw failed;
        }
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

    private void replaceIfLost(Exception failed) throws SQLException {
        if (!PostgresFailure.lost(failed) || pool.isClosed()) {
            if (failed instanceof SQLException sql) {
                throw sql;
            }
            throw (DataAccessException) failed;
        }
        pool.getHikariPoolMXBean().softEvictConnections();
    }

    private Connection open() throws SQLException {
        if (pool.isClosed()) {
            throw new LogFailure("The log in " + place + " is closed. Open it again.", null);
        }
        return pool.getConnection();
    }

    private static EventTable table(Connection connection) {
        return new EventTable(DSL.using(connection, SQLDialect.POSTGRES, SETTINGS));
    }

    @Override
    public void close() {
        writing.lock();
        try {
            pool.close();
        } finally {
            writing.unlock();
        }
    }
}
