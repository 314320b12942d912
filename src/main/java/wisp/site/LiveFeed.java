package wisp.site;

import io.javalin.http.sse.SseClient;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wisp.log.LogFailure;
import wisp.log.StoredEvent;
import wisp.records.Records;

/**
 * Server-sent events: each client gets every event after the one that it names, in order, each once. The event's number
 * is its sequence, so that a client that reconnects with Last-Event-ID misses nothing.
 */
final class LiveFeed {
    private static final long LOOK_EVERY_MS = 500;
    private static final int PAGE = 500;
    private static final Logger LOGGER = LoggerFactory.getLogger(LiveFeed.class);

    private final Records records;
    private final Map<SseClient, Long> sentUpTo = new ConcurrentHashMap<>();
    private final Object bell = new Object();
    private volatile boolean stopped;

    LiveFeed(Records records) {
        this.records = records;
    }

    /** Begins to look for new events, also those that another process records. */
    void start() {
        Thread thread = new Thread(this::run, "live-events");
        thread.setDaemon(true);
        thread.start();
    }

    void stop() {
        stopped = true;
        wake();
        sentUpTo.keySet().forEach(SseClient::close);
    }

    /** Looks at once. */
    void wake() {
        synchronized (bell) {
            bell.notifyAll();
        }
    }

    /** {@code GET /api/v1/events/live}. */
    void join(SseClient client) {
        client.keepAlive();
        client.onClose(() -> sentUpTo.remove(client));
        String last = client.ctx().header("Last-Event-ID");
        String after = last == null ? client.ctx().queryParam("after") : last;
        boolean named = after != null && after.matches("\\d{1,18}");
        client.sendComment("joined");
        sentUpTo.put(client, named ? Long.parseLong(after) : records.log().last());
        wake();
    }

    private void run() {
        while (!stopped) {
            try {
                sentUpTo.forEach(this::send);
            } catch (LogFailure unreadable) {
                LOGGER.warn("Live events wait: {}", unreadable.getMessage());
            }
            synchronized (bell) {
                try {
                    bell.wait(LOOK_EVERY_MS);
                } catch (InterruptedException ended) {
                    return;
                }
            }
        }
    }

    private void send(SseClient client, long after) {
        long last = after;
        List<StoredEvent> page;
        do {
            page = records.log().read(last, PAGE);
            for (StoredEvent stored : page) {
                if (client.terminated()) {
                    sentUpTo.remove(client);
                    return;
                }
                client.sendEvent(
                        stored.event().type().wireName(), EventsApi.line(stored), Long.toString(stored.sequence()));
                last = stored.sequence();
            }
        } while (page.size() == PAGE);
        if (last != after) {
            sentUpTo.replace(client, after, last);
        }
    }
}
