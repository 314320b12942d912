package wisp.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;

/**
 * A real PostgreSQL of the tests' own on a free port, its data in a temporary folder. Its default is not to wait for
 * the disk at a commit ({@code synchronous_commit=off}), so that the log has to ask for that itself.
 */
public final class PostgresServer implements AutoCloseable {
    private static final String USER = "wisp";
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(60);

    private final Path folder;
    private final PostgresBinaries binaries;
    private final int port;
    private final AtomicInteger databases = new AtomicInteger();
    private Process postmaster;

    private PostgresServer(Path folder, PostgresBinaries binaries, int port) {
        this.folder = folder;
        this.binaries = binaries;
        this.port = port;
    }

    /** Makes a new server and starts it. */
    public static PostgresServer create() {
        try {
            Path folder = Files.createTempDirectory("wisp-postgres-");
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
            PostgresBinaries binaries = PostgresBinaries.find(folder.resolve("programs"));
            Path data = Files.createDirectory(folder.resolve("data"));
            Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("rwx------"));
            binaries.own(data);
            String said = PostgresBinaries.run(binaries.command(
                    "initdb", "-D", data.toString(), "-U", USER, "-A", "trust", "-E", "UTF8", "--locale=C", "-N"));
            if (!Files.exists(data.resolve("PG_VERSION"))) {
                throw new IllegalStateException("PostgreSQL's initdb failed: " + said);
            }
            Files.writeString(data.resolve("pg_hba.conf"), """
                    host all asked_for_password 127.0.0.1/32 scram-sha-256
                    host all all 127.0.0.1/32 trust
                    """);
            PostgresServer server = new PostgresServer(folder, binaries, freePort());
            Runtime.getRuntime().addShutdownHook(new Thread(server::endWithTheTests));
            server.start();
            return server;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket any = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return any.getLocalPort();
        }
    }

    /** Starts the server, again after it was stopped or killed, and waits until it answers. */
    public void start() {
        long giveUp = System.nanoTime() + PATIENCE_NANOS;
        while (true) {
            try {
                postmaster = new ProcessBuilder(binaries.command(
                                "postgres",
                                "-D",
                                folder.resolve("data").toString(),
                                "-p",
                                Integer.toString(port),
                                "-c",
                                "listen_addresses=127.0.0.1",
                                "-c",
                                "unix_socket_directories=",
                                "-c",
                                "synchronous_commit=off",
                                "-c",
                                "max_connections=60",
                                "-c",
                                "shared_buffers=32MB"))
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.appendTo(
                                folder.resolve("log").toFile()))
                        .start();
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
            // Right after a kill the old server's last children may still hold its memory: then it is tried again.
            if (answers(giveUp)) {
                return;
            }
            if (System.nanoTime() > giveUp) {
                throw new IllegalStateException("PostgreSQL does not start; its log is " + folder.resolve("log"));
            }
        }
    }

    private boolean answers(long giveUp) {
        while (postmaster.isAlive() && System.nanoTime() < giveUp) {
            try (Connection connection = DriverManager.getConnection(address("postgres"))) {
                return connection.isValid(10);
            } catch (SQLException notYet) {
                LockSupport.parkNanos(20_000_000);
            }
        }
        LockSupport.parkNanos(100_000_000);
        return false;
    }

    /** Kills the server (SIGKILL), as a crash would. */
    public void kill() {
        postmaster.toHandle().destroyForcibly();
        ended();
    }

    /** Stops the server in good order, breaking off every connection. */
    public void stop() {
        // SIGINT asks for PostgreSQL's fast shutdown, SIGTERM would wait for the clients.
        PostgresBinaries.run(List.of("kill", "-INT", Long.toString(postmaster.pid())));
        ended();
    }

    /** A run that is broken off does not close it, and must not leave it behind. */
    private void endWithTheTests() {
        if (postmaster != null) {
            postmaster.toHandle().destroyForcibly();
        }
    }

    private void ended() {
        try {
            if (!postmaster.waitFor(1, TimeUnit.MINUTES)) {
                postmaster.destroyForcibly();
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** A new, empty schema, which is faster than a database; its JDBC address. */
    public String newSchema() {
        String name = "schema" + databases.incrementAndGet();
        administer("CREATE SCHEMA " + name);
        return address("postgres") + "&currentSchema=" + name;
    }

    /** A new, empty database; its JDBC address. */
    public String newDatabase() {
        String name = "test" + databases.incrementAndGet();
        administer("CREATE DATABASE " + name);
        return address(name);
    }

    /** The JDBC address of a database. */
    public String address(String database) {
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + database + "?user=" + USER;
    }

    /** Changes a setting of the whole server and waits until it holds. */
    public void set(String name, String value) throws SQLException {
        run(address("postgres"), "ALTER SYSTEM SET " + name + " = " + value);
        run(address("postgres"), "SELECT pg_reload_conf()");
        while (!shown(name).equals(value)) {
            LockSupport.parkNanos(10_000_000);
        }
    }

    private String shown(String name) throws SQLException {
        try (Connection connection = DriverManager.getConnection(address("postgres"));
                Statement sql = connection.createStatement();
                ResultSet result = sql.executeQuery("SHOW " + name)) {
            result.next();
            return result.getString(1);
        }
    }

    /** The port that it listens on. */
    public int port() {
        return port;
    }

    private void administer(String statement) {
        try {
            run(address("postgres"), statement);
        } catch (SQLException refused) {
            throw new IllegalStateException(refused);
        }
    }

    /** Does something in a database as its owner, with no Wisp in between. */
    public static void run(String address, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection(address);
                Statement sql = connection.createStatement()) {
            for (String each : statements) {
                sql.execute(each);
            }
        }
    }

    @Override
    public void close() {
        if (postmaster.isAlive()) {
            stop();
        }
        remove(folder);
    }

    /** Removes a folder with everything in it. */
    public static void remove(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException left) {
            throw new UncheckedIOException(left);
        }
    }
}
