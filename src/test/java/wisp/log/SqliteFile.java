package wisp.log;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;

/** Another tool's hand on a log's database file. */
final class SqliteFile implements AutoCloseable {
    private final Connection connection;

    SqliteFile(Path folder) throws SQLException {
        connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(SqliteLog.FILE));
    }

    SqliteFile run(String... statements) throws SQLException {
        for (String each : statements) {
            try (Statement sql = connection.createStatement()) {
                sql.executeUpdate(each);
            }
        }
        return this;
    }

    /** Takes away all that would refuse tampering. */
    SqliteFile withoutTriggers() throws SQLException {
        return run(
                "PRAGMA ignore_check_constraints = ON",
                "DROP TRIGGER event_is_never_changed",
                "DROP TRIGGER event_is_never_removed",
                "DROP TRIGGER event_is_never_replaced",
                "DROP TRIGGER event_follows_the_last");
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
