package wisp.log;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.locks.LockSupport;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jooq.SQLDialect;
import org.jooq.conf.Settings;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;

/**
 * The connections to one SQLite file: one that writes, one writer at a time, and as many that read as are reading. With
 * a write-ahead log a reader sees the last whole batch and stands in no writer's way, in this process or another.
 */
final class SqliteConnections implements AutoCloseable {
    private static final Settings SETTINGS = new Settings().withExecuteLogging(false);
    private static final int IDLE_READERS = 8;
    private static final long TRY_AGAIN_NANOS = 10_000_000;

    private final Path file;
    private final SqliteFailure failure;
    private final SqliteLimits limits;
    private final ReentrantLock writing = new ReentrantLock(true);
    private final ConcurrentLinkedQueue<Connection> idle = new ConcurrentLinkedQueue<>();
    /** Open to the test that asks it whether a commit waits for the disk: nothing outside SQLite shows it. */
    final Connection writer;

    private final FilePlace place;
    private volatile boolean closed;

    /**
     * Opens the file, makes it where there is none and brings it to the newest schema.
     *
     * @throws LogFailure where it cannot be opened; what is there is then left as it is
     */
    SqliteConnections(Path file, SqliteLimits limits) {
        this.file = file;
        this.limits = limits;
        this.failure = new SqliteFailure(file, limits.busyTimeout());
        FilePlace.refuseEmpty(file, limits.busyTimeout());
        this.writer = openWriter();
        this.place = FilePlace.of(file);
    }

    /** Does some writing in one transaction, whole or not at all. */
    <T> T write(Function<EventTable, T> work) {
        return write(work, () -> true);
    }

    /** Does some writing in one transaction, and takes it back where it is not to be kept, asked at the end. */
    <T> T write(Function<EventTable, T> work, BooleanSupplier keep) {
        refuseClosed();
        writing.lock();
        try {
            execute(writer, "BEGIN IMMEDIATE");
            T result = work.apply(table(writer));
            boolean kept = keep.getAsBoolean();
            if (kept) {
                place.check();
            }
            execute(writer, kept ? "COMMIT" : "ROLLBACK");
            return result;
        } catch (SQLException | DataAccessException failed) {
            rollback(writer, failed);
            throw failure.of(failed, "Nothing of this batch was kept.");
        } catch (RuntimeException | Error refused) {
            rollback(writer, refused);
            throw refused;
        } finally {
            writing.unlock();
        }
    }

    /** Does some reading on one snapshot. */
    <T> T read(Function<EventTable, T> work) {
        return reading(connection -> work.apply(table(connection)));
    }

    /**
     * Asks SQLite whether its file is sound, indexes included.
     *
     * @throws LogFailure where it is not
     */
    void checkFile() {
        String answer = reading(connection -> {
            try (Statement sql = connection.createStatement();
                    ResultSet result = sql.executeQuery("PRAGMA integrity_check(1)")) {
                return result.getString(1);
            }
        });
        if (!answer.equals("ok")) {
            throw new DamagedLog(
                    file + " is damaged, though every event in it can be read: "
                            + answer.strip().replaceAll("\\s+", " ")
                            + ". Export the events, import them into an empty folder and use that.",
                    null);
        }
    }

    private <T> T reading(Reading<T> work) {
        refuseClosed();
        Connection connection = null;
        try {
            connection = reader();
            execute(connection, "BEGIN");
            T result = work.on(connection);
            execute(connection, "COMMIT");
            giveBack(connection);
            return result;
        } catch (SQLException | DataAccessException failed) {
            close(connection);
            throw failure.of(failed, "Nothing was read.");
        } catch (RuntimeException | Error refused) {
            close(connection);
            throw refused;
        }
    }

    /** Undoes what has begun; the reason is what matters to the caller, not whether there was something to undo. */
    static void rollback(Connection connection, Throwable reason) {
        try {
            execute(connection, "ROLLBACK");
        } catch (SQLException undoneAlready) {
            reason.addSuppressed(undoneAlready);
        }
    }

    @Override
    public void close() {
        writing.lock();
        try {
            closed = true;
            for (Connection each = idle.poll(); each != null; each = idle.poll()) {
                close(each);
            }
            close(writer);
        } finally {
            writing.unlock();
        }
    }

    /**
     * Opens the writer. SQLite answers that the file is locked without waiting where several connections turn a new
     * file to a write-ahead log at once, as no busy handler is asked then; so the whole is tried again until the time
     * that a locked file is waited for is over.
     */
    private Connection openWriter() {
        long giveUp = System.nanoTime() + limits.busyTimeout().toNanos();
        while (true) {
            Connection connection = null;
            try {
                connection = open();
                prepare(connection);
                return connection;
            } catch (SQLException failed) {
                close(connection);
                if (!SqliteFailure.locked(failed) || System.nanoTime() - giveUp >= 0) {
                    throw failure.of(failed, "It was left as it is.");
                }
                LockSupport.parkNanos(TRY_AGAIN_NANOS);
            } catch (RuntimeException | Error refused) {
                close(connection);
                throw refused;
            }
        }
    }

    private void prepare(Connection connection) throws SQLException {
        Migrations.check(connection, file.toString());
        execute(connection, "PRAGMA journal_mode = WAL");
        execute(connection, "PRAGMA synchronous = FULL");
        execute(connection, "PRAGMA max_page_count = " + limits.pages());
        Migrations.apply(connection);
    }

    private Connection reader() throws SQLException {
        Connection connection = idle.poll();
        if (connection == null) {
            connection = open();
            execute(connection, "PRAGMA query_only = ON");
        }
        return connection;
    }

    private void giveBack(Connection connection) {
        if (closed || idle.size() >= IDLE_READERS) {
            close(connection);
        } else {
            idle.add(connection);
        }
    }

    private Connection open() throws SQLException {
        Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file.toUri());
        execute(connection, "PRAGMA busy_timeout = " + limits.busyTimeout().toMillis());
        return connection;
    }

    private void refuseClosed() {
        if (closed) {
            throw new LogFailure("The log in " + file + " is closed. Open it again.", null);
        }
    }

    private interface Reading<T> {
        T on(Connection connection) throws SQLException;
    }

    private static EventTable table(Connection connection) {
        return new EventTable(DSL.using(connection, SQLDialect.SQLITE, SETTINGS));
    }

    private static void execute(Connection connection, String statement) throws SQLException {
        try (Statement sql = connection.createStatement()) {
            sql.execute(statement);
        }
    }

    private static void close(Connection connection) {
        if (connection == null) {
            return;
        }
        try {
            connection.close();
        } catch (SQLException nothingToLose) {
            // What was acknowledged is on the disk already.
        }
    }
}
