package wisp.promise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wisp.event.CanonicalJson;
import wisp.event.Event;
import wisp.event.EventReader;
import wisp.indicator.Definitions;
import wisp.log.HashChain;
import wisp.log.MemoryLog;
import wisp.records.Records;
import wisp.site.Site;

/**
 * Everything that a server gives out, walked along its chain and recorded anew into an empty herd beside it, whose
 * figures the server's must be.
 */
final class Replay implements AutoCloseable {
    private static final String FIGURES = "/api/v1/figures?season=all";
    private static final JsonMapper JSON = new JsonMapper();

    private final MemoryLog log = new MemoryLog(Clock.systemUTC());
    private final Records records = new Records(log, Definitions.load(null), Clock.systemUTC());
    private final Site site = Site.start(records, "127.0.0.1", 0);
    private final List<String> lines = new ArrayList<>();
    private final Map<String, Long> sequences = new HashMap<>();
    private String head = HashChain.BEGINNING;

    /** Reads all the server has; what was there before must still be there, word for word. */
    void follow(ServerProcess server) throws IOException, InterruptedException {
        List<String> all = everything(server);
        assertTrue(all.size() >= lines.size(), "events were lost: " + lines.size() + " became " + all.size());
        assertEquals(lines, all.subList(0, lines.size()), "what was read before has changed");
        List<Event> fresh = new ArrayList<>();
        for (String line : all.subList(lines.size(), all.size())) {
            fresh.add(next(line));
        }
        log.append(fresh, true);
        assertEquals(head, log.verify().head());
        assertEquals(lines.size(), log.last());
        assertEquals(figures(), server.get(FIGURES).body());
    }

    /** The place in the log of each event, by its id. */
    Map<String, Long> sequences() {
        return sequences;
    }

    private static List<String> everything(ServerProcess server) throws IOException, InterruptedException {
        List<String> all = new ArrayList<>();
        while (true) {
            List<String> page = server.get("/api/v1/events?limit=10000&after=" + all.size())
                    .body()
                    .lines()
                    .toList();
            all.addAll(page);
            if (page.isEmpty()) {
                return all;
            }
        }
    }

    private Event next(String line) throws IOException {
        ObjectNode object = (ObjectNode) JSON.readTree(line);
        long sequence = object.remove("sequence").asLong();
        String hash = object.remove("hash").asText();
        String canonical = CanonicalJson.of(object.toString());
        lines.add(line);
        assertEquals(lines.size(), sequence, line);
        head = HashChain.next(head, canonical);
        assertEquals(head, hash, line);
        assertNull(sequences.put(object.get("id").asText(), sequence), "twice: " + line);
        return EventReader.recorded().read(canonical).event();
    }

    private String figures() throws IOException, InterruptedException {
        URI address = URI.create("http://127.0.0.1:" + site.port() + FIGURES);
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofString())
                .body();
    }

    @Override
    public void close() {
        site.close();
        records.close();
    }
}
