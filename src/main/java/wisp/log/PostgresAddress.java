package wisp.log;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Map;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.postgresql.Driver;
import org.postgresql.PGProperty;

/**
 * The JDBC address of a PostgreSQL database. It may hold a password, and so prints itself as host, port and database
 * alone.
 */
final class PostgresAddress {
    private static final String SCHEME = "jdbc:postgresql:";

    /** The driver would write a wrong address into its own log, password and all; its failures are exceptions too. */
    private static final Logger DRIVER_LOG = Logger.getLogger("org.postgresql");

    private static final Map<PGProperty, String> USUAL = Map.of(
            PGProperty.APPLICATION_NAME, "wisp",
            PGProperty.CONNECT_TIMEOUT, "5",
            PGProperty.SOCKET_TIMEOUT, "60",
            PGProperty.TCP_KEEP_ALIVE, "true",
            PGProperty.REWRITE_BATCHED_INSERTS, "true");

    private final String url;
    private final String place;

    private PostgresAddress(String url, String place) {
        this.url = url;
        this.place = place;
    }

    /**
     * Reads an address.
     *
     * @throws LogFailure where it is not one of PostgreSQL; the sentence shows none of it that could be secret
     */
    static PostgresAddress of(String url) {
        if (!url.startsWith(SCHEME)) {
            String scheme = url.substring(0, Math.max(0, url.indexOf(':', url.indexOf(':') + 1)));
            throw new LogFailure(
                    "There is no store for " + (scheme.isEmpty() ? "this address" : scheme)
                            + ". Give a data folder, or a PostgreSQL database as"
                            + " jdbc:postgresql://HOST/DATABASE?user=NAME.",
                    null);
        }
        DRIVER_LOG.setLevel(Level.OFF);
        Properties read = read(url);
        // NAME:PASSWORD@HOST is not the driver's way: it would take all of that for the host, and name it in its
        // failures
        if (read == null
                || PGProperty.PG_DBNAME.getOrDefault(read) == null
                || PGProperty.PG_HOST.getOrDefault(read).contains("@")) {
            throw new LogFailure(
                    "The database's address cannot be read. Write jdbc:postgresql://HOST:PORT/DATABASE?user=NAME, other"
                            + " signs than letters and digits in a value as %-codes.",
                    null);
        }
        return new PostgresAddress(url, place(read));
    }

    private static Properties read(String url) {
        try {
            return Driver.parseURL(url, null);
        } catch (RuntimeException wrong) {
            // Its message may hold the address.
            return null;
        }
    }

    private static String place(Properties read) {
        String[] hosts = PGProperty.PG_HOST.getOrDefault(read).split(",");
        String[] ports = PGProperty.PG_PORT.getOrDefault(read).split(",");
        StringBuilder place =
                new StringBuilder("the PostgreSQL database ").append(PGProperty.PG_DBNAME.getOrDefault(read));
        for (int i = 0; i < hosts.length; i++) {
            place.append(i == 0 ? " at " : " or ")
                    .append(hosts[i])
                    .append(':')
                    .append(ports[Math.min(i, ports.length - 1)]);
        }
        return place.toString();
    }

    /** Opens a connection; each of its statements sees what was committed when it began. */
    Connection connect() throws SQLException {
        Properties usual = new Properties();
        USUAL.forEach((property, value) -> property.set(usual, value));
        Connection connection = new Driver().connect(url, usual);
        connection.setTransactionIsolation(Connection.TRANSACTION_READ_COMMITTED);
        return connection;
    }

    @Override
    public String toString() {
        return place;
    }
}
