package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.log.Appended.Outcome.ACCEPTED;
import static wisp.log.Appended.Outcome.CONFLICT;
import static wisp.log.Appended.Outcome.DUPLICATE;
import static wisp.log.Appended.Outcome.HELD_BACK;
import static wisp.log.Notes.CLOCK;
import static wisp.log.Notes.NOW;
import static wisp.log.Notes.note;
import static wisp.log.Notes.noteOf;
import static wisp.log.Notes.notes;
import static wisp.log.Notes.recorded;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wisp.event.CanonicalJson;
import wisp.event.Event;

/** What every store of the log must do; each store's own test runs all of it. */
abstract class EventLogConformance implements StreamConformance, ConcurrencyConformance {
    private EventLog log;

    /** A new, empty log. */
    abstract EventLog open(Clock clock);

    @BeforeEach
    void openTheLog() {
        log = open(CLOCK);
    }

    @Override
    public EventLog log() {
        return log;
    }

    @AfterEach
    void closeTheLog() {
        log.close();
    }

    @Test
    void anEmptyLogHoldsNothingAndIsWhole() {
        assertEquals(0, log.last());
        assertEquals(List.of(), log.read(0, 10));
        assertEquals(new Verification(0, "0".repeat(64), 0, ""), log.verify());
    }

    @Test
    void eventsAreReadBackInTheOrderOfTheirArrival() {
        Appended first = log.append(List.of(note("b", "one"), note("a", "two")), true);
        Appended second = log.append(List.of(noteOf("tablet", "a", "three")), true);
        assertEquals(List.of(ACCEPTED, ACCEPTED), first.outcomes());
        assertEquals(2, first.last());
        assertEquals(3, second.last());
        List<StoredEvent> read = log.read(0, 10);
        assertEquals(
                List.of(1L, 2L, 3L), read.stream().map(StoredEvent::sequence).toList());
        assertEquals(
                List.of("b", "a", "a"), read.stream().map(e -> e.event().id()).toList());
        assertEquals(first.stored(), read.subList(0, 2));
        assertEquals(second.stored(), read.subList(2, 3));
        assertEquals(3, log.last());
    }

    @Test
    void anEmptyBatchChangesNothing() {
        assertEquals(new Appended(List.of(), List.of(), 0), log.append(List.of(), true));
        assertEquals(0, log.last());
    }

    @Test
    void theLogSetsTheRecordedTimeInUtcWithMillisecondsWhereThereIsNone() {
        StoredEvent stored = log.append(List.of(note("a", "x")), true).stored().get(0);
        assertEquals(
                CanonicalJson.of(
                        Notes.json("phone", "a", "x").put("recordedtime", NOW).toString()),
                stored.event().json());
        assertEquals(NOW, stored.event().recordedTime().toString());
    }

    @Test
    void theSendersOwnRecordedTimeIsKept() {
        String own = "2026-02-28T23:00:00.5+01:00";
        StoredEvent stored =
                log.append(List.of(recorded("a", "x", own)), true).stored().get(0);
        assertTrue(
                stored.event().json().contains("\"recordedtime\":\"" + own + "\""),
                stored.event().json());
    }

    @Test
    void theHashChainCanBeWorkedOutByHand() throws Exception {
        log.append(List.of(note("a", "x"), note("b", "y")), true);
        String first = "{\"data\":{\"text\":\"x\"},\"id\":\"a\",\"recordedtime\":\"2026-03-01T08:00:00.123Z\","
                + "\"source\":\"phone\",\"specversion\":\"1.0\",\"subject\":\"calf-1\","
                + "\"time\":\"2026-03-01T07:30:00+00:00\",\"type\":\"noted\"}";
        String second = first.replace("\"x\"", "\"y\"").replace("\"a\"", "\"b\"");
        String hash1 = sha256("0000000000000000000000000000000000000000000000000000000000000000" + first);
        String hash2 = sha256(hash1 + second);
        assertEquals(
                List.of(hash1, hash2),
                log.read(0, 2).stream().map(StoredEvent::hash).toList());
        assertEquals(new Verification(2, hash2, 0, ""), log.verify());
    }

    private static String sha256(String text) throws Exception {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(digest);
    }

    @Test
    void theSameEventAgainIsADuplicateAndChangesNothing() {
        log.append(List.of(note("a", "x")), true);
        List<StoredEvent> before = log.read(0, 10);
        assertEquals(new Appended(List.of(DUPLICATE), List.of(), 1), log.append(List.of(note("a", "x")), true));
        assertEquals(before, log.read(0, 10));
    }

    @Test
    void theOrderOfFieldsAndTheSpellingOfNumbersDoNotMakeAnotherEvent() {
        String birth = "{\"specversion\":\"1.0\",\"id\":\"1\",\"source\":\"s\",\"subject\":\"c\",\"type\":\"birth\","
                + "\"time\":\"2026-03-01T07:30:00Z\",\"data\":{\"alive\":true,\"weight_kg\":40}}";
        String again = "{\"data\":{\"weight_kg\":40.0,\"alive\":true},\"time\":\"2026-03-01T07:30:00Z\","
                + "\"type\":\"birth\",\"subject\":\"c\",\"source\":\"s\",\"id\":\"1\",\"specversion\":\"1.0\"}";
        log.append(List.of(Notes.event(birth)), true);
        assertEquals(
                List.of(DUPLICATE),
                log.append(List.of(Notes.event(again)), true).outcomes());
    }

    @Test
    void otherContentUnderTheSameNameIsAConflict() {
        log.append(List.of(note("a", "x")), true);
        assertEquals(
                List.of(CONFLICT),
                log.append(List.of(note("a", "other")), false).outcomes());
        assertEquals(
                List.of(ACCEPTED),
                log.append(List.of(noteOf("tablet", "a", "other")), false).outcomes());
        assertEquals(2, log.last());
    }

    @Test
    void aRecordedTimeThatIsOfferedIsPartOfTheContent() {
        log.append(List.of(note("a", "x")), true);
        assertEquals(List.of(DUPLICATE), outcomes(recorded("a", "x", NOW)));
        assertEquals(List.of(CONFLICT), outcomes(recorded("a", "x", "2026-03-01T07:59:00Z")));
        log.append(List.of(recorded("b", "y", "2026-03-01T07:59:00Z")), true);
        assertEquals(List.of(DUPLICATE), outcomes(note("b", "y")));
        assertEquals(List.of(DUPLICATE), outcomes(recorded("b", "y", "2026-03-01T07:59:00Z")));
        assertEquals(List.of(CONFLICT), outcomes(recorded("b", "y", NOW)));
    }

    private List<Appended.Outcome> outcomes(Event event) {
        return log.append(List.of(event), false).outcomes();
    }

    @Test
    void anEventTwiceInOneBatchIsAcceptedOnce() {
        Appended appended = log.append(List.of(note("a", "x"), note("b", "y"), note("a", "x")), true);
        assertEquals(List.of(ACCEPTED, ACCEPTED, DUPLICATE), appended.outcomes());
        assertEquals(2, log.last());
    }

    @Test
    void aConflictInsideOneBatchIsAConflict() {
        Appended appended = log.append(List.of(note("a", "x"), note("a", "other")), false);
        assertEquals(List.of(ACCEPTED, CONFLICT), appended.outcomes());
        assertEquals(1, log.last());
    }

    @Test
    void aConflictKeepsTheWholeBatchOutWhereWholeIsAsked() {
        log.append(List.of(note("a", "x")), true);
        Appended appended =
                log.append(List.of(note("b", "y"), note("a", "x"), note("a", "other"), note("b", "y")), true);
        assertEquals(List.of(HELD_BACK, DUPLICATE, CONFLICT, HELD_BACK), appended.outcomes());
        assertEquals(List.of(), appended.stored());
        assertEquals(1, appended.last());
        assertEquals(1, log.last());
        assertEquals(List.of(ACCEPTED), outcomes(note("b", "y")));
    }

    @Test
    void onlyTheConflictStaysOutWherePartIsAsked() {
        log.append(List.of(note("a", "x")), true);
        Appended appended = log.append(List.of(note("b", "y"), note("a", "other"), note("c", "z")), false);
        assertEquals(List.of(ACCEPTED, CONFLICT, ACCEPTED), appended.outcomes());
        assertEquals(3, log.last());
        assertTrue(log.verify().whole());
    }

    @Test
    void readingStartsAfterASequenceAndStopsAtTheLimit() {
        log.append(notes("n", 7), true);
        assertEquals(List.of(3L, 4L), sequences(log.read(2, 2)));
        assertEquals(List.of(6L, 7L), sequences(log.read(5, 100)));
        assertEquals(List.of(6L, 7L), sequences(log.read(5, Integer.MAX_VALUE)));
        assertEquals(List.of(1L), sequences(log.read(0, 1)));
        assertEquals(List.of(), log.read(7, 5));
        assertEquals(List.of(), log.read(99, 5));
        assertEquals(List.of(), log.read(0, 0));
        assertThrows(IllegalArgumentException.class, () -> log.read(-1, 5));
        assertThrows(IllegalArgumentException.class, () -> log.read(0, -5));
    }

    private static List<Long> sequences(List<StoredEvent> events) {
        return events.stream().map(StoredEvent::sequence).toList();
    }

    @Test
    void replayGivesEveryEventOverMoreThanOnePage() {
        log.append(notes("n", 2_345), true);
        List<StoredEvent> all = new ArrayList<>();
        log.replay(0, all::add);
        assertEquals(log.read(0, 10_000), all);
        List<StoredEvent> tail = new ArrayList<>();
        log.replay(2_300, tail::add);
        assertEquals(all.subList(2_300, 2_345), tail);
    }

    @Test
    void aReplayEndsWithTheEventsThatWereThereWhenItBegan() {
        log.append(notes("n", 3), true);
        List<Long> seen = new ArrayList<>();
        log.replay(0, stored -> {
            seen.add(stored.sequence());
            log.append(List.of(note("during" + stored.sequence(), "x")), true);
        });
        assertEquals(List.of(1L, 2L, 3L), seen);
        assertEquals(6, log.last());
    }

    @Test
    void anyTextComesBackAsItWas() {
        String text = "Kälbchen № 7 – “naß”, 牛, 🐄, \u0000\u001f\u007f\u2028\ufeff \\ \" / </script> e\u0301";
        StoredEvent stored = log.append(List.of(noteOf("telefon-ü", "🐄", text)), true)
                .stored()
                .get(0);
        assertEquals(List.of(stored), log.read(0, 1));
        assertEquals(text.strip(), ((wisp.event.Noted) stored.event().data()).text());
        assertEquals("🐄", stored.event().id());
        assertEquals(List.of(DUPLICATE), outcomes(noteOf("telefon-ü", "🐄", text)));
        assertTrue(log.verify().whole());
    }

    @Test
    void composedAndDecomposedLettersAreDifferentNames() {
        log.append(List.of(note("\u00e9", "x"), note("e\u0301", "x")), true);
        assertEquals(2, log.last());
    }

    @Test
    void attributesThatWispDoesNotKnowAreKept() {
        Event event = Notes.event(Notes.json("phone", "a", "x").put("traceparent", "00-1-2-03"));
        log.append(List.of(event), true);
        assertTrue(log.read(0, 1).get(0).event().json().contains("\"traceparent\":\"00-1-2-03\""));
    }

    @Test
    void aSenderCannotSetSequenceOrHash() {
        Event event =
                Notes.event(Notes.json("phone", "a", "x").put("sequence", 99).put("hash", "mine"));
        StoredEvent stored = log.append(List.of(event), true).stored().get(0);
        assertEquals(1, stored.sequence());
        assertEquals(List.of(DUPLICATE), outcomes(Notes.event(stored.event().json())));
    }
}
