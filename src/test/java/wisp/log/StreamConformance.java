package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.log.Appended.Outcome.ACCEPTED;
import static wisp.log.Appended.Outcome.CONFLICT;
import static wisp.log.Appended.Outcome.DUPLICATE;
import static wisp.log.Notes.note;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wisp.event.Event;

/** What every store does with a stream of events: all of it is kept, or all of it is taken back. */
interface StreamConformance {
    /** The log of the running test, empty at its beginning. */
    EventLog log();

    @Test
    default void aStreamThatIsKeptStandsLikeABatch() {
        log().append(List.of(note("a", "x")), true);
        List<Appended.Outcome> outcomes = new ArrayList<>();
        long last = log().appendAll(
                        List.of(note("a", "x"), note("b", "y"), note("b", "y"), note("a", "z"))
                                .iterator(),
                        outcomes::add,
                        () -> outcomes.size() == 4);
        assertEquals(List.of(DUPLICATE, ACCEPTED, DUPLICATE, CONFLICT), outcomes);
        assertEquals(2, last);
        assertEquals(
                List.of("a", "b"),
                log().read(0, 10).stream().map(e -> e.event().id()).toList());
        assertTrue(log().verify().whole());
    }

    @Test
    default void aStreamThatIsTakenBackLeavesTheLogAsItWas() {
        log().append(List.of(note("a", "x")), true);
        List<StoredEvent> before = log().read(0, 10);
        List<Event> many = new ArrayList<>();
        for (int i = 0; i < 2500; i++) {
            many.add(note("b" + i, "y"));
        }
        List<Appended.Outcome> outcomes = new ArrayList<>();
        assertEquals(1, log().appendAll(many.iterator(), outcomes::add, () -> false));
        assertEquals(2500, outcomes.stream().filter(ACCEPTED::equals).count());
        assertEquals(before, log().read(0, 10));
        log().append(List.of(note("b0", "other")), true);
        assertEquals(2, log().last());
    }

    @Test
    default void aStreamThatBreaksOffLeavesTheLogAsItWas() {
        Stream<Event> breaking = IntStream.range(0, 3000).mapToObj(i -> {
            if (i == 2999) {
                throw new IllegalStateException("the file was pulled out");
            }
            return note("b" + i, "y");
        });
        assertThrows(
                IllegalStateException.class, () -> log().appendAll(breaking.iterator(), outcome -> {}, () -> true));
        assertEquals(0, log().last());
        assertEquals(
                ACCEPTED,
                log().append(List.of(note("b0", "y")), true).outcomes().get(0));
    }
}
