package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import org.junit.jupiter.api.Test;
import wisp.records.Intake;

class JustPostedTest {
    private static final long LONGEST = 2_000_000_000L;

    private final JustPosted posted = new JustPosted();

    @Test
    void whoeverPostedAnEventMayNotLackIt() {
        posted.note("shed", 10, 12, 0);
        assertFalse(posted.mayLack("shed", 10, 12, 1));
        assertFalse(posted.mayLack("shed", 11, 12, 1));
    }

    @Test
    void othersMayLackItForTwoSecondsAndNoLonger() {
        posted.note("shed", 10, 12, 0);
        assertTrue(posted.mayLack("office", 10, 12, LONGEST));
        assertFalse(posted.mayLack("office", 10, 12, LONGEST + 1));
    }

    @Test
    void theOldestLackingEventDecides() {
        posted.note("shed", 10, 11, 0);
        posted.note("yard", 11, 12, LONGEST);
        assertFalse(posted.mayLack("office", 10, 12, LONGEST + 1));
        assertTrue(posted.mayLack("office", 11, 12, LONGEST + 1));
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

    @Test
    void anEventThatIsInTheLogAndNotNotedYetIsWaitedFor() throws InterruptedException, ExecutionException {
        CountDownLatch inTheLog = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        CompletableFuture<Intake> post = CompletableFuture.supplyAsync(() -> posted.through("shed", () -> {
            inTheLog.countDown();
            await(go);
            return new Intake(1, 0, List.of(), List.of(), 11);
        }));
        inTheLog.await();
        CompletableFuture<Boolean> asked = CompletableFuture.supplyAsync(() -> posted.mayLack("office", 10, 11));
        assertFalse(asked.isDone());
        go.countDown();
        assertTrue(asked.get(), "it was posted here, by another");
        assertFalse(posted.mayLack("shed", 10, 11));
        assertEquals(11, post.get().sequence());
    }

    @Test
    void aPostThatNeverEndsIsNotWaitedForForEver() {
        CountDownLatch go = new CountDownLatch(1);
        CountDownLatch begun = new CountDownLatch(1);
        CompletableFuture<Intake> post = CompletableFuture.supplyAsync(() -> posted.through("shed", () -> {
            begun.countDown();
            await(go);
            return new Intake(0, 0, List.of(), List.of(), 10);
        }));
        await(begun);
        assertFalse(posted.mayLack("office", 10, 11), "nobody knows where the event came from");
        go.countDown();
        assertEquals(0, post.join().accepted());
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException ended) {
            throw new IllegalStateException(ended);
        }
    }
}
