package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.log.Appended.Outcome.ACCEPTED;
import static wisp.log.Appended.Outcome.DUPLICATE;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import wisp.testing.OwnPostgres;
import wisp.testing.PostgresServer;

/** What can go wrong between the log and PostgreSQL: each says one sentence, loses nothing and shows no password. */
@Timeout(120)
@ExtendWith(OwnPostgres.class)
class PostgresFaultsTest {
    private static final String SECRET = "hush-4711";

    private final PostgresServer server;
    private final String address;

    PostgresFaultsTest(PostgresServer server) {
        this.server = server;
        this.address = server.newSchema();
    }

    private static String refused(String address) {
        LogFailure refused = assertThrows(
                LogFailure.class, () -> Logs.open(address, Notes.CLOCK).close());
        for (Throwable cause = refused; cause != null; cause = cause.getCause()) {
            assertFalse(String.valueOf(cause.getMessage()).contains(SECRET), cause::toString);
        }
        return refused.getMessage();
    }

    private String at() {
        return "127.0.0.1:" + server.port();
    }

    @Test
    void aRestartInBetweenIsNotNoticedAndWhileItIsAwayThatIsSaid() {
        try (EventLog log = Logs.open(address, Notes.CLOCK)) {
            log.append(Notes.notes("before", 3), true);
            server.stop();
            server.start();
            assertEquals(3, log.read(0, 10).size());
            server.stop();
            String away = "The PostgreSQL database postgres at " + at() + " does not answer. ";
            String mend = " See that PostgreSQL runs there, and try again.";
            LogFailure read = assertThrows(LogFailure.class, log::last);
            assertEquals(away + "Nothing was read." + mend, read.getMessage());
            LogFailure write = assertThrows(LogFailure.class, () -> log.append(Notes.notes("lost", 2), true));
            assertEquals(away + "Nothing of this batch was kept." + mend, write.getMessage());
            assertEquals(away + "It was left as it is." + mend, refused(address));
            server.start();
            assertEquals(5, log.append(Notes.notes("lost", 2), true).last());
            assertEquals("", log.verify().problem());
        }
    }

    @ParameterizedTest
    @EnumSource(names = "NEVER", mode = EnumSource.Mode.EXCLUDE)
    void aBatchWhoseFateIsUnknownIsAFailureAndSafeToSendAgain(CuttingProxy.Cut cut) throws Exception {
        try (CuttingProxy proxy = new CuttingProxy(server.port());
                EventLog log = Logs.open(through(proxy), Notes.CLOCK)) {
            log.append(Notes.notes("before", 2), true);
            proxy.cutAtTheNext(cut);
            LogFailure unknown = assertThrows(LogFailure.class, () -> log.append(Notes.notes("n", 3), true));
            assertTrue(
                    unknown.getMessage()
                            .contains("nobody knows yet whether it was; send it again: what is there already does not"
                                    + " come in twice."),
                    unknown.getMessage());
            Appended again = log.append(Notes.notes("n", 3), true);
            Appended.Outcome kept = cut == CuttingProxy.Cut.AFTER_THE_COMMIT ? DUPLICATE : ACCEPTED;
            assertEquals(List.of(kept, kept, kept), again.outcomes());
            assertEquals(5, log.last());
            assertEquals(5, log.verify().events());
        }
    }

    /** Without prepared statements, so that the commit can be read on the line. */
    private String through(CuttingProxy proxy) {
        return address.replace(":" + server.port(), ":" + proxy.port()) + "&prepareThreshold=0";
    }

    @Test
    void aPasswordIsNeverShown() throws Exception {
        PostgresServer.run(address, "DROP ROLE IF EXISTS asked_for_password");
        PostgresServer.run(address, "CREATE ROLE asked_for_password LOGIN PASSWORD 'right'");
        PrintStream before = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
        try {
            assertEquals(
                    "The user or the password for the PostgreSQL database postgres at " + at()
                            + " is refused. It was left"
                            + " as it is. Check both; a password may also stand in the file .pgpass.",
                    refused("jdbc:postgresql://" + at() + "/postgres?user=asked_for_password&password=" + SECRET));
            assertEquals(
                    "There is no such database: the PostgreSQL database nowhere at " + at()
                            + ". It was left as it is. Make it with createdb.",
                    refused("jdbc:postgresql://" + at() + "/nowhere?user=wisp&password=" + SECRET));
            refused("jdbc:postgresql://127.0.0.1:1/wisp?user=wisp&password=" + SECRET);
        } finally {
            System.setErr(before);
        }
        assertFalse(said.toString(StandardCharsets.UTF_8).contains(SECRET), said::toString);
        String place = Logs.place("jdbc:postgresql://b:5/wisp?user=wisp&password=" + SECRET);
        assertEquals("the PostgreSQL database wisp at b:5", place);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "jdbc:postgresql://127.0.0.1:port/wisp?password=" + SECRET,
                "jdbc:postgresql://127.0.0.1?password=" + SECRET,
                "jdbc:postgresql://wisp:" + SECRET + "@127.0.0.1:5432/wisp",
                "jdbc:postgresql://127.0.0.1:5432/wisp?password=%zz" + SECRET
            })
    void anAddressThatCannotBeReadIsNotRepeated(String wrong) {
        PrintStream before = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
        try {
            assertEquals(
                    "The database's address cannot be read. Write jdbc:postgresql://HOST:PORT/DATABASE?user=NAME, other"
                            + " signs than letters and digits in a value as %-codes.",
                    refused(wrong));
        } finally {
            System.setErr(before);
        }
        assertEquals("", said.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aServerThatDoesNotWaitForItsDiskIsRefused() throws Exception {
        Logs.open(address, Notes.CLOCK).close();
        server.set("fsync", "off");
        try (EventLog log = Logs.open(address, Notes.CLOCK)) {
            LogFailure refused = assertThrows(LogFailure.class, () -> log.append(Notes.notes("n", 1), true));
            assertEquals(
                    "This PostgreSQL does not wait for its disk (fsync is off), so that a power cut could lose what was"
                            + " acknowledged. Nothing of this batch was kept. Turn fsync on.",
                    refused.getMessage());
        } finally {
            server.set("fsync", "on");
        }
    }

    @Test
    void aWriterWaitsForAnotherAndThenSaysSo() throws Exception {
        try (EventLog holder = Logs.open(address, Notes.CLOCK);
                EventLog log = Logs.open(address + "&options=-c%20lock_timeout=300", Notes.CLOCK)) {
            CountDownLatch holding = new CountDownLatch(1);
            CountDownLatch tried = new CountDownLatch(1);
            Thread slow =
                    new Thread(() -> holder.appendAll(Notes.notes("slow", 2).iterator(), outcome -> {}, () -> {
                        holding.countDown();
                        return await(tried);
                    }));
            slow.start();
            assertTrue(holding.await(30, TimeUnit.SECONDS));
            assertEquals(0, log.last(), "a reader neither waits nor sees half a batch");
            LogFailure refused = assertThrows(LogFailure.class, () -> log.append(Notes.notes("n", 1), true));
            assertEquals(
                    "Another process has kept the PostgreSQL database postgres at " + at() + " locked for too long."
                            + " Nothing of this batch was kept. Stop that process, or try again.",
                    refused.getMessage());
            tried.countDown();
            slow.join();
            assertEquals(3, log.append(Notes.notes("n", 1), true).last());
        }
    }

    private static boolean await(CountDownLatch latch) {
        try {
            return latch.await(60, TimeUnit.SECONDS);
        } catch (InterruptedException ended) {
            return false;
        }
    }

    @Test
    void aClosedLogSaysSo() {
        EventLog log = Logs.open(address, Notes.CLOCK);
        log.close();
        String closed = "The log in the PostgreSQL database postgres at " + at() + " is closed. Open it again.";
        assertEquals(closed, assertThrows(LogFailure.class, log::last).getMessage());
        assertEquals(
                closed,
                assertThrows(LogFailure.class, () -> log.append(List.of(), true))
                        .getMessage());
    }
}
