package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.log.Appended.Outcome.ACCEPTED;
import static wisp.log.Appended.Outcome.DUPLICATE;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import wisp.testing.OwnPostgres;
import wisp.testing.PostgresServer;

/** What a database must look like for a log to be opened in it, and what a log of an earlier schema becomes. */
@ExtendWith(OwnPostgres.class)
class PostgresSchemaTest {
    // The head of schema-1.db, whose events these are: the same hashes in either store.
    private static final String HEAD_1 = "1e4a58ead3e7614ad2a2cf9dd29222963d20fc9f05476998d01c4706a2f58ab8";

    private final PostgresServer server;
    private final String address;

    PostgresSchemaTest(PostgresServer server) {
        this.server = server;
        this.address = server.newSchema();
    }

    private String refused() {
        return assertThrows(
                        LogFailure.class, () -> Logs.open(address, Notes.CLOCK).close())
                .getMessage();
    }

    private String place() {
        return "the PostgreSQL database postgres at 127.0.0.1:" + server.port();
    }

    @Test
    void aLogOfSchema1OpensWithItsHashes() throws Exception {
        try (InputStream fixture = getClass().getResourceAsStream("postgres-schema-1.sql")) {
            PostgresServer.run(address, new String(fixture.readAllBytes(), StandardCharsets.UTF_8));
        }
        try (EventLog log = Logs.open(address, Notes.CLOCK)) {
            assertEquals(new Verification(8, HEAD_1, 0, ""), log.verify());
            StoredEvent known = log.read(4, 1).get(0);
            assertEquals(
                    List.of(DUPLICATE, ACCEPTED),
                    log.append(List.of(known.event(), Notes.note("new", "x")), true)
                            .outcomes());
            assertEquals(9, log.verify().events());
        }
    }

    @Test
    void aNewerSchemaIsRefused() throws Exception {
        Logs.open(address, Notes.CLOCK).close();
        PostgresServer.run(address, "INSERT INTO wisp_schema VALUES (99)");
        assertEquals(
                "The log in " + place()
                        + " was written by a newer Wisp (schema 99, this one knows 1). Start the newer Wisp.",
                refused());
    }

    @Test
    void anotherProgramsTableIsLeftAlone() throws Exception {
        PostgresServer.run(address, "CREATE TABLE event (mine INTEGER)");
        assertEquals(
                "There is a table event of another program in " + place() + ". Choose another database.", refused());
    }

    @Test
    void aDatabaseInAnotherEncodingIsRefused() throws Exception {
        PostgresServer.run(
                address, "CREATE DATABASE latin TEMPLATE template0 ENCODING 'LATIN1' LC_COLLATE 'C' LC_CTYPE 'C'");
        LogFailure refused = assertThrows(
                LogFailure.class,
                () -> Logs.open(server.address("latin"), Notes.CLOCK).close());
        assertEquals(
                "Texts in the PostgreSQL database latin at 127.0.0.1:" + server.port()
                        + " are not kept in UTF-8. Make the database with encoding UTF8.",
                refused.getMessage());
    }

    @Test
    void aNewDatabaseThatManyOpenAtOnceIsMadeOnce() {
        assertFalse(Logs.exists(address));
        List<CompletableFuture<Long>> many = IntStream.range(0, 5)
                .mapToObj(i -> CompletableFuture.supplyAsync(() -> {
                    try (EventLog log = Logs.open(address, Notes.CLOCK)) {
                        return log.append(Notes.notes("n" + i + "-", 2), true).last();
                    }
                }))
                .toList();
        List<Long> lasts = new ArrayList<>();
        many.forEach(one -> lasts.add(one.join()));
        assertEquals(List.of(2L, 4L, 6L, 8L, 10L), lasts.stream().sorted().toList());
        assertTrue(Logs.exists(address));
    }

    @Test
    void aUserWhoMayOnlyAddAndReadIsEnough() throws Exception {
        Logs.open(address, Notes.CLOCK).close();
        String schema = address.replaceAll(".*currentSchema=", "");
        PostgresServer.run(
                address,
                "CREATE ROLE milker_" + schema + " LOGIN",
                "GRANT USAGE ON SCHEMA " + schema + " TO milker_" + schema,
                "GRANT SELECT, INSERT ON event TO milker_" + schema,
                "GRANT SELECT ON wisp_schema TO milker_" + schema);
        String milker = address.replace("user=wisp", "user=milker_" + schema);
        try (EventLog log = Logs.open(milker, Notes.CLOCK)) {
            assertEquals(4, log.append(Notes.notes("n", 4), true).last());
            assertEquals(4, log.verify().events());
        }
        for (String forbidden : List.of("DROP TRIGGER event_is_never_removed ON event", "DELETE FROM event")) {
            assertThrows(SQLException.class, () -> PostgresServer.run(milker, forbidden));
        }
        String other = server.newSchema();
        PostgresServer.run(
                other, "GRANT USAGE ON SCHEMA " + other.replaceAll(".*currentSchema=", "") + " TO milker_" + schema);
        String refused = assertThrows(
                        LogFailure.class,
                        () -> Logs.open(other.replace("user=wisp", "user=milker_" + schema), Notes.CLOCK)
                                .close())
                .getMessage();
        assertTrue(refused.contains("Let its owner start Wisp once"), refused);
    }

    @Test
    void aListenerHearsOfAnotherConnectionsEvents() throws Exception {
        try (EventLog one = Logs.open(address, Notes.CLOCK);
                EventLog other = Logs.open(address, Notes.CLOCK)) {
            Semaphore rung = new Semaphore(0);
            EventLog.Listening listening = one.listen(rung::release);
            assertRings(rung, "when it begins to listen");
            other.append(Notes.notes("n", 3), true);
            assertRings(rung, "for another's events");
            server.stop();
            server.start();
            assertRings(rung, "when it listens again");
            other.append(Notes.notes("m", 3), true);
            assertRings(rung, "for events after the restart");
            listening.close();
        }
    }

    private static void assertRings(Semaphore rung, String when) throws InterruptedException {
        assertTrue(rung.tryAcquire(30, TimeUnit.SECONDS), "the bell rings " + when);
    }
}
