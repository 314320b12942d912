package wisp.site;

import io.javalin.http.Context;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Supplier;
import wisp.records.Intake;

/**
 * Which events were posted through this server in the last two seconds, and by whom. A page may lack such an event so
 * long, but never in the eyes of whoever posted it; an event that came in any other way no page may lack.
 */
final class JustPosted {
    private static final long LACKING_NS_MOST = 2_000_000_000L;
    private static final long NOTED_MS_MOST = 100;

    /** Events after one sequence, up to another and that included, and the moment of their being recorded. */
    private record Post(long after, long upTo, String who, long at) {
        private long shared(long otherAfter, long otherUpTo) {
            return Math.max(0, Math.min(upTo, otherUpTo) - Math.max(after, otherAfter));
        }
    }

    private final Deque<Post> posts = new ArrayDeque<>();
    private int underWay;

    /** Who asks: the machine, as the proxy in between names it where there is one. */
    static String who(Context ctx) {
        String before = ctx.header("X-Forwarded-For");
        return before == null ? ctx.ip() : ctx.ip() + " for " + before;
    }

    /** Has something recorded for somebody; until that is done, new events may be those. */
    Intake through(String who, Supplier<Intake> taking) {
        begin();
        try {
            Intake intake = taking.get();
            if (intake.accepted() > 0) {
                note(who, intake.sequence() - intake.accepted(), intake.sequence(), System.nanoTime());
            }
            return intake;
        } finally {
            end();
        }
    }

    private synchronized void begin() {
        underWay++;
    }

    private synchronized void end() {
        underWay--;
        notifyAll();
    }

    synchronized void note(String who, long after, long upTo, long at) {
        forget(at);
        posts.addLast(new Post(after, upTo, who, at));
        notifyAll();
    }

    /**
     * Whether somebody may still be shown what ends at one event while the log goes up to another. An event stands in
     * the log a moment before it is noted here; that moment is waited for.
     */
    synchronized boolean mayLack(String who, long after, long upTo) {
        long giveUp = System.nanoTime() + NOTED_MS_MOST * 1_000_000;
        while (true) {
            long now = System.nanoTime();
            long left = (giveUp - now) / 1_000_000;
            if (underWay == 0 || left <= 0 || own(who, after, upTo) || known(after, upTo) == upTo - after) {
                return mayLack(who, after, upTo, now);
            }
            try {
                wait(left);
            } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
                return false;
            }
        }
    }

    synchronized boolean mayLack(String who, long after, long upTo, long at) {
        forget(at);
        return !own(who, after, upTo) && known(after, upTo) == upTo - after;
    }

    private boolean own(String who, long after, long upTo) {
        return posts.stream().anyMatch(post -> post.who.equals(who) && post.shared(after, upTo) > 0);
    }

    /** How many of the events between two were posted here; batches never overlap. */
    private long known(long after, long upTo) {
        return posts.stream().mapToLong(post -> post.shared(after, upTo)).sum();
    }

    private void forget(long at) {
        while (!posts.isEmpty() && at - posts.peekFirst().at > LACKING_NS_MOST) {
            posts.removeFirst();
        }
    }
}
