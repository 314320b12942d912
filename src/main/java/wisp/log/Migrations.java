package wisp.log;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/**
 * Brings a SQLite database to the newest schema, one plain SQL script after another; {@code PRAGMA user_version} holds
 * the number of the last script that ran. A script that has been released is never edited: a change is a new script.
 */
final class Migrations {
    /** "WISP" in ASCII; tells the log from another program's database. */
    static final int APPLICATION_ID = 0x57495350;

    private static final List<String> SCRIPTS = List.of("V1__events.sql");

    private Migrations() {}

    /** Refuses a database that is not a log, or a log of a newer schema, without writing to it. */
    static void check(Connection connection, String place) throws SQLException {
        int application;
        int version;
        boolean empty;
        // One snapshot: another process may be making the log at this moment.
        try (Statement sql = connection.createStatement()) {
            sql.execute("BEGIN");
            empty = number(connection, "SELECT count(*) FROM sqlite_master") == 0;
            application = number(connection, "PRAGMA application_id");
            version = number(connection, "PRAGMA user_version");
            sql.execute("COMMIT");
        }
        if (application != APPLICATION_ID && !(empty && application == 0 && version == 0)) {
            throw new LogFailure(place + " is the database of another program. Choose another data folder.", null);
        }
        if (version > SCRIPTS.size()) {
            throw new LogFailure(
                    place + " was written by a newer Wisp (schema " + version + ", this one knows " + SCRIPTS.size()
                            + "). Start the newer Wisp.",
                    null);
        }
    }

    /** Runs the scripts that have not run yet, all in one transaction. */
    static void apply(Connection connection) throws SQLException {
        if (number(connection, "PRAGMA user_version") == SCRIPTS.size()) {
            return;
        }
        try (Statement sql = connection.createStatement()) {
            sql.execute("BEGIN IMMEDIATE");
            try {
                for (int done = number(connection, "PRAGMA user_version"); done < SCRIPTS.size(); done++) {
                    sql.executeUpdate(script(SCRIPTS.get(done)));
                }
                sql.execute("PRAGMA application_id = " + APPLICATION_ID);
                sql.execute("PRAGMA user_version = " + SCRIPTS.size());
                sql.execute("COMMIT");
            } catch (SQLException failed) {
                SqliteConnections.rollback(connection, failed);
                throw failed;
            }
        }
    }

    static int number(Connection connection, String query) throws SQLException {
        try (Statement sql = connection.createStatement();
                ResultSet result = sql.executeQuery(query)) {
            return result.getInt(1);
        }
    }

    private static String script(String name) {
        try (InputStream in = Migrations.class.getResourceAsStream("sqlite/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
