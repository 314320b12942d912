package wisp.site;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wisp.log.LogFailure;
import wisp.records.Records;

/**
 * Makes pages before they are asked for, on a thread of its own: the front pages after the start, then after every new
 * event those asked for a short while ago at once, and all others that were asked for today once no event has come for
 * a second. Events that come while pages are being made are taken together.
 */
final class Beforehand {
    private static final int LATELY_S = 30;
    private static final int TODAY_S = 24 * 60 * 60;
    private static final int LOOK_MS = 250;
    private static final int QUIET_LOOKS = 4;
    private static final int BREATH_MS_LEAST = 20;
    private static final int BREATH_MS_MOST = 250;
    private static final int END_MS_MOST = 10_000;
    private static final Logger LOGGER = LoggerFactory.getLogger(Beforehand.class);

    private final Records records;
    private final Shelf shelf;
    private final Object bell = new Object();
    private final CountDownLatch frontMade = new CountDownLatch(1);
    private boolean rung;
    private volatile boolean stopped;
    private Thread thread;

    Beforehand(Records records, Shelf shelf) {
        this.records = records;
        this.shelf = shelf;
    }

    /**
     * Starts the thread.
     *
     * @param front the front pages, each made by what stands here
     */
    void start(List<Runnable> front) {
        thread = new Thread(() -> follow(front), "pages-beforehand");
        thread.setDaemon(true);
        thread.start();
    }

    /** Waits until the front pages were made once. */
    void awaitFront() throws InterruptedException {
        frontMade.await();
    }

    /** Ends the thread; afterwards it reads the log no more. */
    void stop() {
        stopped = true;
        wake();
        try {
            thread.join(END_MS_MOST);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** Looks for new events at once; else they are looked for four times a second, also those of other processes. */
    void wake() {
        synchronized (bell) {
            rung = true;
            bell.notifyAll();
        }
    }

    private void follow(List<Runnable> front) {
        long seen = -1;
        int quiet = 0;
        while (!stopped) {
            long begun = System.nanoTime();
            try {
                long last = records.log().last();
                boolean first = seen < 0;
                quiet = last == seen ? quiet + 1 : 0;
                seen = last;
                if (quiet == 0 && !first) {
                    each(shelf.askedFor(LATELY_S));
                }
                if (first || quiet == QUIET_LOOKS) {
                    each(front);
                    each(shelf.askedFor(TODAY_S));
                    frontMade.countDown();
                }
            } catch (LogFailure unreadable) {
                LOGGER.warn("No page is made beforehand: {}", unreadable.getMessage());
            }
            rest((System.nanoTime() - begun) / 1_000_000);
        }
    }

    private void each(List<Runnable> pages) {
        for (Runnable page : pages) {
            if (stopped) {
                return;
            }
            try {
                page.run();
            } catch (Problem gone) {
                LOGGER.debug("A page is no more: {}", gone.getMessage());
            }
        }
    }

    /** As long as the work took, so that half of one core is left to whoever writes and asks. */
    private void rest(long worked) {
        try {
            Thread.sleep(Math.max(BREATH_MS_LEAST, Math.min(worked, BREATH_MS_MOST)));
            synchronized (bell) {
                if (!rung && !stopped) {
                    bell.wait(LOOK_MS);
                }
                rung = false;
            }
        } catch (InterruptedException ended) {
            stopped = true;
        }
    }
}
