package wisp.log;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.locks.LockSupport;
import org.postgresql.PGConnection;

/** Rings when PostgreSQL tells that events were appended (LISTEN), on a connection and a thread of its own. */
final class PostgresBell implements EventLog.Listening {
    /** What the trigger of the event table notifies. */
    private static final String CHANNEL = "wisp_event";

    private static final int LISTEN_MS = 10_000;
    private static final int ANSWER_SECONDS = 5;
    private static final long TRY_AGAIN_NANOS = 500_000_000;

    private final PostgresAddress address;
    private final Runnable bell;
    private volatile boolean closed;
    private volatile Connection connection;

    private PostgresBell(PostgresAddress address, Runnable bell) {
        this.address = address;
        this.bell = bell;
    }

    /** Begins to listen, now and again after every loss of the connection. */
    static PostgresBell hang(PostgresAddress address, Runnable bell) {
        PostgresBell hung = new PostgresBell(address, bell);
        Thread thread = new Thread(hung::listen, "appended-events");
        thread.setDaemon(true);
        thread.start();
        return hung;
    }

    private void listen() {
        while (!closed) {
            try (Connection own = address.connect()) {
                connection = own;
                try (Statement sql = own.createStatement()) {
                    sql.execute("LISTEN " + CHANNEL);
                }
                // Something may have been appended while nobody listened.
                bell.run();
                PGConnection told = own.unwrap(PGConnection.class);
                while (!closed && own.isValid(ANSWER_SECONDS)) {
                    if (told.getNotifications(LISTEN_MS).length > 0) {
                        bell.run();
                    }
                }
            } catch (SQLException away) {
                LockSupport.parkNanos(TRY_AGAIN_NANOS);
            }
        }
    }

    @Override
    public void close() {
        closed = true;
        Connection own = connection;
        if (own != null) {
            try {
                // Closing it would wait for the listening to end; this breaks it off.
                own.abort(Runnable::run);
            } catch (SQLException gone) {
                // There is nothing left to break off.
            }
        }
    }
}
