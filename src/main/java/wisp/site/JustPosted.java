package wisp.site;

import io.javalin.http.Context;
import java.util.ArrayDeque;
import java.util.Deque;
import wisp.records.Intake;

/**
 * Which events were posted through this server in the last second, and by whom. A page may lack such an event for that
 * second, but never in the eyes of whoever posted it; an event that came in any other way no page may lack.
 */
final class JustPosted {
    private static final long SECOND = 1_000_000_000L;

    /** Events after one sequence, up to another and that included, and the moment of their being recorded. */
    private record Post(long after, long upTo, String who, long at) {}

    private final Deque<Post> posts = new ArrayDeque<>();

    /** Who asks: the machine, as the proxy in between names it where there is one. */
    static String who(Context ctx) {
        String before = ctx.header("X-Forwarded-For");
        return before == null ? ctx.ip() : ctx.ip() + " for " + before;
    }

    void note(String who, Intake intake) {
        if (intake.accepted() > 0) {
            note(who, intake.sequence() - intake.accepted(), intake.sequence(), System.nanoTime());
        }
    }

    synchronized void note(String who, long after, long upTo, long at) {
        forget(at);
        posts.addLast(new Post(after, upTo, who, at));
    }

    /** Whether somebody may still be shown what ends at one event while the log goes up to another. */
    boolean mayLack(String who, long after, long upTo) {
        return mayLack(who, after, upTo, System.nanoTime());
    }

    synchronized boolean mayLack(String who, long after, long upTo, long at) {
        forget(at);
        long known = 0;
        for (Post post : posts) {
            long from = Math.max(after, post.after);
            long to = Math.min(upTo, post.upTo);
            if (from < to) {
                if (post.who.equals(who)) {
                    return false;
                }
                known += to - from;
            }
        }
        // what is known covers all that is lacking: batches never overlap
        return known == upTo - after;
    }

    private void forget(long at) {
        while (!posts.isEmpty() && at - posts.peekFirst().at > SECOND) {
            posts.removeFirst();
        }
    }
}
