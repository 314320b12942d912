package wisp.site;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class JustPostedTest {
    private static final long SECOND = 1_000_000_000L;

    private final JustPosted posted = new JustPosted();

    @Test
    void whoeverPostedAnEventMayNotLackIt() {
        posted.note("shed", 10, 12, 0);
        assertFalse(posted.mayLack("shed", 10, 12, 1));
        assertFalse(posted.mayLack("shed", 11, 12, 1));
    }

    @Test
    void othersMayLackItForASecondAndNoLonger() {
        posted.note("shed", 10, 12, 0);
        assertTrue(posted.mayLack("office", 10, 12, SECOND));
        assertFalse(posted.mayLack("office", 10, 12, SECOND + 1));
    }

    @Test
    void theOldestLackingEventDecides() {
        posted.note("shed", 10, 11, 0);
        posted.note("yard", 11, 12, SECOND);
        assertFalse(posted.mayLack("office", 10, 12, SECOND + 1));
        assertTrue(posted.mayLack("office", 11, 12, SECOND + 1));
    }

    @Test
    void anEventThatCameInAnyOtherWayMayNotBeLacked() {
        assertFalse(posted.mayLack("office", 10, 11, 0));
        posted.note("shed", 11, 12, 0);
        assertFalse(posted.mayLack("office", 10, 12, 1));
        assertFalse(posted.mayLack("office", 11, 13, 1));
    }

    @Test
    void oneOwnEventAmongOthersIsNotLackedEither() {
        posted.note("shed", 10, 11, 0);
        posted.note("office", 11, 12, 0);
        posted.note("shed", 12, 13, 0);
        assertFalse(posted.mayLack("office", 10, 13, 1));
        assertTrue(posted.mayLack("office", 12, 13, 1));
    }
}
