package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the chain by itself cannot tell shows against a head that was noted outside. */
class ChainHeadTest {
    private final MemoryLog log = new MemoryLog(Notes.CLOCK);
    private ChainHead noted;

    @BeforeEach
    void noteTheHeadOfFive() {
        log.append(Notes.notes("n", 5), true);
        noted = ChainHead.of(log.verify());
    }

    @Test
    void aLogThatWentOnPassesThroughEveryHeadNoted() {
        log.append(Notes.notes("m", 3), true);
        assertEquals(Optional.empty(), noted.missedBy(log));
        assertEquals(Optional.empty(), ChainHead.OF_NOTHING.missedBy(log));
        assertEquals(Optional.empty(), ChainHead.of(log.verify()).missedBy(log));
    }

    @Test
    void aTailThatWasCutOffIsNamed() {
        MemoryLog cut = new MemoryLog(Notes.CLOCK);
        cut.append(Notes.notes("n", 4), true);
        assertEquals(
                Optional.of("The log ends at event 4, and event 5 was noted: what followed was cut off, or this is"
                        + " another log."),
                noted.missedBy(cut));
    }

    @Test
    void aChainThatWasWrittenAnewIsNamedThoughItIsWholeInItself() {
        MemoryLog rewritten = new MemoryLog(Notes.CLOCK);
        rewritten.append(List.of(Notes.note("n1", "forged")), true);
        rewritten.append(Notes.notes("x", 6), true);
        assertEquals("", rewritten.verify().problem());
        String there = rewritten.read(4, 1).get(0).hash();
        assertEquals(
                Optional.of("Event 5 has the hash " + there + ", and " + noted.hash()
                        + " was noted: everything up to it was written anew, or this is another log."),
                noted.missedBy(rewritten));
    }

    @Test
    void aHeadIsReadAsItIsWritten() {
        assertEquals(Optional.of(noted), ChainHead.read(" " + noted + "\n"));
        for (String wrong : List.of("", "5", "5:", noted.hash(), "-1:" + noted.hash(), "5:" + "G".repeat(64))) {
            assertEquals(Optional.empty(), ChainHead.read(wrong), wrong);
        }
    }
}
