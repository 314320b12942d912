package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The database file of seven events is changed with another tool; verify names the place and what happened. */
class TamperingTest {
    @TempDir
    private Path folder;

    private String head;

    @BeforeEach
    void sevenEvents() {
        try (SqliteLog log = SqliteLog.open(folder, Notes.CLOCK)) {
            log.append(Notes.notes("n", 7), true);
            head = log.verify().head();
        }
    }

    private Verification after(String... statements) throws SQLException {
        try (SqliteFile file = new SqliteFile(folder)) {
            file.withoutTriggers().run(statements);
        }
        try (SqliteLog log = SqliteLog.open(folder, Notes.CLOCK)) {
            return log.verify();
        }
    }

    private void assertBroken(long sequence, String problem, String... statements) throws SQLException {
        Verification found = after(statements);
        assertFalse(found.whole());
        assertEquals(sequence + ": " + problem, found.broken() + ": " + found.problem());
        assertEquals(sequence - 1, found.events());
        try (SqliteLog log = SqliteLog.open(folder, Notes.CLOCK)) {
            assertThrows(LogFailure.class, () -> log.read(0, 10), "a broken event must not be served");
            assertEquals(sequence - 1, log.read(0, (int) sequence - 1).size());
        }
    }

    @Test
    void aChangedEventIsNamed() throws SQLException {
        assertBroken(
                3,
                "It does not follow from event 2: one of the two was changed, or an event was inserted or removed there.",
                "UPDATE event SET json = replace(json, 'note 3', 'note 9') WHERE sequence = 3");
    }

    @Test
    void aChangedFirstEventIsNamed() throws SQLException {
        assertBroken(
                1,
                "It does not follow from the beginning of the log: it was changed, or an event was inserted or removed"
                        + " there.",
                "UPDATE event SET json = replace(json, 'note 1', 'note 9') WHERE sequence = 1");
    }

    @Test
    void aChangedHashIsNamed() throws SQLException {
        assertBroken(
                7,
                "It does not follow from event 6: one of the two was changed, or an event was inserted or removed there.",
                "UPDATE event SET hash = replace(hash, substr(hash, 9, 1), 'x') WHERE sequence = 7");
    }

    @Test
    void anEventThatWasChangedWithItsHashBreaksTheNext() throws SQLException {
        String json = Notes.json("phone", "n3", "forged")
                .put("recordedtime", Notes.NOW)
                .toString();
        String canonical = wisp.event.CanonicalJson.of(json);
        String previous;
        try (SqliteLog log = SqliteLog.open(folder, Notes.CLOCK)) {
            previous = log.read(1, 1).get(0).hash();
        }
        assertBroken(
                4,
                "It does not follow from event 3: one of the two was changed, or an event was inserted or removed there.",
                "UPDATE event SET json = '" + canonical + "', hash = '" + HashChain.next(previous, canonical)
                        + "' WHERE sequence = 3");
    }

    @Test
    void aColumnThatNoLongerSaysWhatTheEventSaysIsNamed() throws SQLException {
        assertBroken(
                5,
                "It was changed: its column subject says calf-2 and its JSON calf-1.",
                "UPDATE event SET subject = 'calf-2' WHERE sequence = 5");
    }

    @Test
    void everyColumnIsHeldAgainstTheEvent() throws SQLException {
        for (String column : List.of("recordedtime", "time", "subject", "type", "id", "source")) {
            Verification found = after2("UPDATE event SET " + column + " = 'x' WHERE sequence = 2");
            assertEquals(2, found.broken());
            assertTrue(found.problem().startsWith("It was changed: its column " + column + " says x"), found.problem());
        }
    }

    private Verification after2(String statement) throws SQLException {
        try (SqliteFile file = new SqliteFile(folder)) {
            file.run("DROP TRIGGER IF EXISTS event_is_never_changed", statement);
        }
        try (SqliteLog log = SqliteLog.open(folder, Notes.CLOCK)) {
            return log.verify();
        }
    }

    @Test
    void aRemovedEventIsNamed() throws SQLException {
        assertBroken(4, "It was removed: event 5 comes after event 3.", "DELETE FROM event WHERE sequence = 4");
    }

    @Test
    void severalRemovedEventsAreNamed() throws SQLException {
        assertBroken(1, "Events 1 to 3 were removed.", "DELETE FROM event WHERE sequence <= 3");
    }

    @Test
    void aRemovedEventWithTheOthersRenumberedIsNamed() throws SQLException {
        assertBroken(
                4,
                "It does not follow from event 3: one of the two was changed, or an event was inserted or removed there.",
                "DELETE FROM event WHERE sequence = 4",
                "UPDATE event SET sequence = -sequence WHERE sequence > 4",
                "UPDATE event SET sequence = -sequence - 1 WHERE sequence < 0");
    }

    @Test
    void anInsertedEventIsNamed() throws SQLException {
        assertBroken(
                4,
                "It was inserted: the event that was written here stands at 5.",
                "UPDATE event SET sequence = -sequence WHERE sequence >= 4",
                "UPDATE event SET sequence = -sequence + 1 WHERE sequence < 0",
                "INSERT INTO event SELECT 4, source, 'forged', type, subject, time, recordedtime, hash,"
                        + " replace(json, '\"n3\"', '\"forged\"') FROM event WHERE sequence = 3");
    }

    @Test
    void anEventInsertedBeforeTheFirstIsNamed() throws SQLException {
        assertBroken(
                1,
                "An event numbered 0 was inserted before it.",
                "INSERT INTO event SELECT 0, source, 'forged', type, subject, time, recordedtime, hash, json"
                        + " FROM event WHERE sequence = 3");
    }

    @Test
    void aForgedEventAtTheEndIsNamed() throws SQLException {
        assertBroken(
                8,
                "It does not follow from event 7: one of the two was changed, or an event was inserted or removed there.",
                "INSERT INTO event SELECT 8, source, 'forged', type, subject, time, recordedtime, hash,"
                        + " replace(json, '\"n3\"', '\"forged\"') FROM event WHERE sequence = 3");
    }

    @Test
    void swappedEventsAreNamed() throws SQLException {
        assertBroken(
                2,
                "The events were reordered: the one that was written here stands at 5.",
                "UPDATE event SET sequence = -2 WHERE sequence = 2",
                "UPDATE event SET sequence = 2 WHERE sequence = 5",
                "UPDATE event SET sequence = 5 WHERE sequence = -2");
    }

    @Test
    void swappedNeighboursAtTheEndAreNamed() throws SQLException {
        assertBroken(
                6,
                "The events were reordered: the one that was written here stands at 7.",
                "UPDATE event SET sequence = -6 WHERE sequence = 6",
                "UPDATE event SET sequence = 6 WHERE sequence = 7",
                "UPDATE event SET sequence = 7 WHERE sequence = -6");
    }

    @Test
    void anEventRewrittenInAnotherFormIsNamedThoughItsHashFits() throws SQLException {
        String previous;
        String json;
        try (SqliteLog log = SqliteLog.open(folder, Notes.CLOCK)) {
            List<StoredEvent> last = log.read(5, 2);
            previous = last.get(0).hash();
            json = last.get(1).event().json().replace(",\"type\"", ", \"type\"");
        }
        Verification found = after("UPDATE event SET json = '" + json + "', hash = '" + HashChain.next(previous, json)
                + "' WHERE sequence = 7");
        assertEquals(7, found.broken());
        assertEquals("It was changed: its JSON is not in the canonical form of RFC 8785.", found.problem());
    }

    @Test
    void anEventThatBreaksTheRulesIsNamedThoughItsHashFits() throws SQLException {
        String previous;
        String json;
        try (SqliteLog log = SqliteLog.open(folder, Notes.CLOCK)) {
            List<StoredEvent> last = log.read(5, 2);
            previous = last.get(0).hash();
            json = last.get(1).event().json().replace("\"text\"", "\"test\"");
        }
        Verification found = after("UPDATE event SET json = '" + json + "', hash = '" + HashChain.next(previous, json)
                + "' WHERE sequence = 7");
        assertEquals(7, found.broken());
        assertEquals(
                "It can no longer be read: data.text: It is missing. Give it; this type of event says nothing without"
                        + " it.",
                found.problem());
    }

    @Test
    void aTailCutOffShowsAgainstTheNotedHead() throws SQLException {
        Verification found = after("DELETE FROM event WHERE sequence > 5");
        assertTrue(found.whole(), "the chain alone cannot know of what followed");
        assertEquals(5, found.events());
        assertNotEquals(head, found.head());
    }

    @Test
    void nothingIsAppendedBehindABrokenHead() throws SQLException {
        after("UPDATE event SET json = replace(json, 'note 7', 'note 9') WHERE sequence = 7");
        try (SqliteLog log = SqliteLog.open(folder, Notes.CLOCK)) {
            LogFailure refused =
                    assertThrows(LogFailure.class, () -> log.append(List.of(Notes.note("new", "x")), true));
            assertEquals(
                    "Event 7 of the log is not as it was written: its hash does not follow from its content and the"
                            + " hash before it. Run verify, and restore the last backup that it finds whole.",
                    refused.getMessage());
            assertEquals(7, log.last());
        }
    }

    @Test
    void triggersRefuseChangingRemovingReplacingAndSkipping() throws SQLException {
        try (SqliteFile file = new SqliteFile(folder)) {
            assertRefused(file, "an event is never changed", "UPDATE event SET subject = 'x' WHERE sequence = 1");
            assertRefused(file, "an event is never removed", "DELETE FROM event WHERE sequence = 7");
            String copy = " SELECT %s, source, %s, type, subject, time, recordedtime, hash, json FROM event"
                    + " WHERE sequence = 7";
            assertRefused(
                    file, "an event is never replaced", "INSERT OR REPLACE INTO event" + copy.formatted("8", "id"));
            assertRefused(file, "has no gaps", "INSERT OR REPLACE INTO event" + copy.formatted("7", "'new'"));
            assertRefused(file, "has no gaps", "INSERT INTO event" + copy.formatted("9", "'new'"));
            assertRefused(file, "has no gaps", "INSERT INTO event" + copy.formatted("NULL", "'new'"));
        }
        try (SqliteLog log = SqliteLog.open(folder, Notes.CLOCK)) {
            assertEquals(new Verification(7, head, 0, ""), log.verify());
        }
    }

    private static void assertRefused(SqliteFile file, String why, String statement) {
        SQLException refused = assertThrows(SQLException.class, () -> file.run(statement), statement);
        assertTrue(refused.getMessage().contains(why), refused.getMessage());
    }
}
