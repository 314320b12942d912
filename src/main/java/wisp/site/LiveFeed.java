package wisp.site;

import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wisp.log.EventLog;
import wisp.log.LogFailure;
import wisp.log.StoredEvent;
import wisp.records.Records;

/**
 * Server-sent events: each client gets every event after the one that it names, in order, each once. The event's number
 * is its sequence, so that a client that reconnects with Last-Event-ID misses nothing. Each client has a thread of its
 * own, so that a slow one holds up nobody else.
 */
final class LiveFeed {
    private static final int CLIENTS_MOST = 64;
    private static final long LOOK_EVERY_MS = 500;
    private static final int QUIET_LOOKS_MOST = 30;
    private static final int PAGE = 500;
    private static final Logger LOGGER = LoggerFactory.getLogger(LiveFeed.class);

    private final Records records;
    private final Set<SseClient> clients = ConcurrentHashMap.newKeySet();
    private final Object bell = new Object();
    private final EventLog.Listening listening;
    private volatile boolean stopped;

    LiveFeed(Records records) {
        this.records = records;
        this.listening = records.log().listen(this::wake);
    }

    /** How many clients follow. */
    int clients() {
        return clients.size();
    }

    /** Lets every client's own thread close it: a stream that another closes while it is written to stays open. */
    void stop() {
        stopped = true;
        listening.close();
        wake();
    }

    /** Looks for new events at once; otherwise they are looked for twice a second, whoever recorded them. */
    void wake() {
        synchronized (bell) {
            bell.notifyAll();
        }
    }

    /** Refuses whoever does not ask for a stream, who would get an empty answer. */
    static void ask(Context ctx) {
        String accept = ctx.header("Accept");
        if (accept == null || !accept.contains("text/event-stream")) {
            throw new Problem(406, "Live events are a stream", "Send the header Accept: text/event-stream.", List.of());
        }
    }

    /** {@code GET /api/v1/events/live}. */
    void join(SseClient client) {
        if (clients.size() >= CLIENTS_MOST) {
            client.sendComment("full: " + CLIENTS_MOST + " clients follow already");
            return;
        }
        client.keepAlive();
        clients.add(client);
        client.onClose(() -> clients.remove(client));
        String last = client.ctx().header("Last-Event-ID");
        String after = last == null ? client.ctx().queryParam("after") : last;
        boolean named = after != null && after.matches("\\d{1,18}");
        long from = named ? Long.parseLong(after) : records.log().last();
        client.sendComment("joined");
        Thread thread = new Thread(() -> serve(client, from), "live-events");
        thread.setDaemon(true);
        thread.start();
    }

    private void serve(SseClient client, long from) {
        try {
            follow(client, from);
        } finally {
            clients.remove(client);
            client.close();
        }
    }

    private void follow(SseClient client, long from) {
        long last = from;
        int quiet = 0;
        while (!stopped && !client.terminated()) {
            long before = last;
            long sent = last;
            try {
                sent = send(client, last);
            } catch (LogFailure unreadable) {
                LOGGER.warn("Live events wait: {}", unreadable.getMessage());
            }
            quiet = sent == last ? quiet + 1 : 0;
            last = sent;
            if (quiet == QUIET_LOOKS_MOST) {
                client.sendComment("still here");
                quiet = 0;
            }
            boolean more = last - before == PAGE;
            if (!more && !pause()) {
                return;
            }
        }
    }

    private boolean pause() {
        synchronized (bell) {
            try {
                bell.wait(LOOK_EVERY_MS);
                return true;
            } catch (InterruptedException ended) {
                return false;
            }
        }
    }

    /** Sends a page of events at most and says up to which. */
    private long send(SseClient client, long after) {
        long last = after;
        for (StoredEvent stored : records.log().read(after, PAGE)) {
            if (client.terminated()) {
                return last;
            }
            client.sendEvent(
                    stored.event().type().wireName(), EventsApi.line(stored), Long.toString(stored.sequence()));
            last = stored.sequence();
        }
        return last;
    }
}
