package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wisp.testing.OwnPostgres;
import wisp.testing.PostgresServer;

/** Seven events in PostgreSQL meet somebody with psql, first with the triggers in place, then without them. */
@ExtendWith(OwnPostgres.class)
class PostgresTamperingTest {
    private static final String COPY =
            " SELECT %s, source, %s, type, subject, time, recordedtime, hash, json FROM event WHERE sequence = 7";

    private final String address;
    private EventLog log;
    private String head;

    PostgresTamperingTest(PostgresServer server) {
        this.address = server.newSchema();
    }

    @BeforeEach
    void sevenEvents() {
        log = Logs.open(address, Notes.CLOCK);
        log.append(Notes.notes("n", 7), true);
        head = log.verify().head();
    }

    @AfterEach
    void closeTheLog() {
        log.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE event SET subject = 'x' WHERE sequence = 1",
                "UPDATE event SET subject = 'x' WHERE sequence = 99",
                "INSERT INTO event SELECT * FROM event WHERE sequence = 7"
                        + " ON CONFLICT (sequence) DO UPDATE SET subject = 'x'"
            })
    void changingIsRefused(String statement) {
        assertRefused("an event is never changed: record an amendment", statement);
    }

    @ParameterizedTest
    @ValueSource(strings = {"DELETE FROM event WHERE sequence = 7", "TRUNCATE event", "TRUNCATE event CASCADE"})
    void removingIsRefused(String statement) {
        assertRefused("an event is never removed: record a retraction", statement);
    }

    @ParameterizedTest
    @CsvSource({"9, 'new'", "0, 'new'", "-1, 'new'", "7, 'new'"})
    void aGapIsRefused(String sequence, String id) {
        assertRefused("has no gaps", "INSERT INTO event" + COPY.formatted(sequence, "'" + id + "'"));
    }

    @Test
    void aNameThatIsTakenIsRefused() {
        assertRefused("duplicate key", "INSERT INTO event" + COPY.formatted("8", "id"));
    }

    @Test
    void aSessionThatSaysThatItReplicatesIsRefusedToo() {
        String[] statements = {"SET session_replication_role = replica", "DELETE FROM event WHERE sequence = 7"};
        assertRefused("an event is never removed", statements);
    }

    private void assertRefused(String why, String... statements) {
        SQLException refused = assertThrows(SQLException.class, () -> PostgresServer.run(address, statements));
        assertTrue(refused.getMessage().contains(why), refused.getMessage());
        assertEquals(new Verification(7, head, 0, ""), log.verify());
    }

    private void assertBroken(long sequence, String problem, String... statements) throws SQLException {
        PostgresServer.run(
                address,
                "DROP TRIGGER event_is_never_changed ON event",
                "DROP TRIGGER event_is_never_removed ON event",
                "DROP TRIGGER event_is_never_emptied ON event",
                "DROP TRIGGER event_follows_the_last ON event");
        PostgresServer.run(address, statements);
        Verification found = log.verify();
        assertEquals(sequence + ": " + problem, found.broken() + ": " + found.problem());
        assertEquals(sequence - 1, found.events());
        assertThrows(LogFailure.class, () -> log.read(0, 10), "a broken event must not be served");
        assertEquals(sequence - 1, log.read(0, (int) sequence - 1).size());
    }

    @Test
    void aChangedEventIsNamed() throws SQLException {
        assertBroken(
                3,
                "It does not follow from event 2: one of the two was changed, or an event was inserted or removed there.",
                "UPDATE event SET json = replace(json, 'note 3', 'note 9') WHERE sequence = 3");
    }

    @Test
    void aColumnThatNoLongerSaysWhatTheEventSaysIsNamed() throws SQLException {
        assertBroken(
                5,
                "It was changed: its column subject says calf-2 and its JSON calf-1.",
                "UPDATE event SET subject = 'calf-2' WHERE sequence = 5");
    }

    @Test
    void aRemovedEventIsNamed() throws SQLException {
        assertBroken(4, "It was removed: event 5 comes after event 3.", "DELETE FROM event WHERE sequence = 4");
    }

    @Test
    void anInsertedEventIsNamed() throws SQLException {
        assertBroken(
                4,
                "It was inserted: the event that was written here stands at 5.",
                "UPDATE event SET sequence = sequence + 100 WHERE sequence >= 4",
                "UPDATE event SET sequence = sequence - 99 WHERE sequence > 100",
                "INSERT INTO event SELECT 4, source, 'forged', type, subject, time, recordedtime, hash,"
                        + " replace(json, '\"n3\"', '\"forged\"') FROM event WHERE sequence = 3");
    }

    @Test
    void swappedEventsAreNamed() throws SQLException {
        assertBroken(
                2,
                "The events were reordered: the one that was written here stands at 5.",
                "UPDATE event SET sequence = 99 WHERE sequence = 2",
                "UPDATE event SET sequence = 2 WHERE sequence = 5",
                "UPDATE event SET sequence = 5 WHERE sequence = 99");
    }

    @Test
    void nothingIsAppendedBehindABrokenHead() throws SQLException {
        assertBroken(
                7,
                "It does not follow from event 6: one of the two was changed, or an event was inserted or removed there.",
                "UPDATE event SET json = replace(json, 'note 7', 'note 9') WHERE sequence = 7");
        assertThrows(LogFailure.class, () -> log.append(List.of(Notes.note("new", "x")), true));
        assertEquals(7, log.last());
    }

    @Test
    void aTailCutOffShowsAgainstTheNotedHead() throws SQLException {
        PostgresServer.run(
                address, "DROP TRIGGER event_is_never_removed ON event", "DELETE FROM event WHERE sequence > 5");
        Verification found = log.verify();
        assertTrue(found.whole(), "the chain alone cannot know of what followed");
        assertEquals(5, found.events());
        assertTrue(!head.equals(found.head()));
    }
}
