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
 * Brings a PostgreSQL database to the newest schema, one plain SQL script after another; the table {@code wisp_schema}
 * holds a row for each script that ran. A script that has been released is never edited: a change is a new script.
 */
final class PostgresMigrations {
    private static final List<String> SCRIPTS = List.of("V1__events.sql");

    private PostgresMigrations() {}

    /** Refuses a database that is not a log, or a log of a newer schema, without writing to it; says its version. */
    static int check(Connection connection, PostgresAddress place) throws SQLException {
        if (!text(connection, "SHOW server_encoding").equals("UTF8")) {
            throw new LogFailure(
                    "Texts in " + place + " are not kept in UTF-8. Make the database with encoding UTF8.", null);
        }
        // in this order: another process may make both tables, in one transaction, between the two questions
        boolean events = there(connection, "event");
        int version = version(connection);
        if (version == 0 && events) {
            throw new LogFailure(
                    "There is a table event of another program in " + place + ". Choose another database.", null);
        }
        if (version > SCRIPTS.size()) {
            throw new LogFailure(
                    "The log in " + place + " was written by a newer Wisp (schema " + version + ", this one knows "
                            + SCRIPTS.size() + "). Start the newer Wisp.",
                    null);
        }
        return version;
    }

    /** Runs the scripts that have not run yet, all in one transaction. */
    static void apply(Connection connection) throws SQLException {
        if (version(connection) == SCRIPTS.size()) {
            return;
        }
        connection.setAutoCommit(false);
        try (Statement sql = connection.createStatement()) {
            PostgresConnections.lock(connection);
            for (int done = version(connection); done < SCRIPTS.size(); done++) {
                sql.execute(script(SCRIPTS.get(done)));
                sql.execute("INSERT INTO wisp_schema (version) VALUES (" + (done + 1) + ")");
            }
            connection.commit();
        }
    }

    private static int version(Connection connection) throws SQLException {
        if (!there(connection, "wisp_schema")) {
            return 0;
        }
        return Integer.parseInt(text(connection, "SELECT coalesce(max(version), 0) FROM wisp_schema"));
    }

    /**
     * Whether there is a table of this name. To read the catalogue itself matters: a name that was looked up in vain
     * before another process made the table would be remembered as missing.
     */
    private static boolean there(Connection connection, String table) throws SQLException {
        return text(connection, "SELECT count(*) FROM pg_class WHERE oid = to_regclass('" + table + "')")
                .equals("1");
    }

    private static String text(Connection connection, String query) throws SQLException {
        try (Statement sql = connection.createStatement();
                ResultSet result = sql.executeQuery(query)) {
            result.next();
            return result.getString(1);
        }
    }

    private static String script(String name) {
        try (InputStream in = PostgresMigrations.class.getResourceAsStream("postgres/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
