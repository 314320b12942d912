package wisp.promise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A phone that sends one batch after another and, where it got no answer, sends the same batch again to the next server
 * before anything else.
 */
final class Sender {
    private static final JsonMapper JSON = new JsonMapper();

    private final String name;
    private final Random random;
    private final List<Batch> acknowledged = new ArrayList<>();
    private Batch waiting;
    private int made;

    Sender(String name, long seed) {
        this.name = name;
        this.random = new Random(seed);
    }

    /** A batch by its name, and how many events it has. */
    record Batch(String name, int size) {}

    /** What the server has acknowledged, in the order of sending. */
    List<Batch> acknowledged() {
        return acknowledged;
    }

    /** Sends until the server is gone. */
    void sendTo(ServerProcess server, AtomicInteger answers) {
        while (true) {
            if (waiting == null) {
                waiting = new Batch(name + "-" + made++, 1 + random.nextInt(5));
            }
            try {
                HttpResponse<String> answer = server.post(Births.batch(waiting.name(), waiting.size()));
                if (answer.statusCode() == 503) {
                    return;
                }
                acknowledge(answer);
                answers.incrementAndGet();
            } catch (IOException gone) {
                return;
            } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    private void acknowledge(HttpResponse<String> answer) throws IOException {
        assertEquals(201, answer.statusCode(), answer.body());
        JsonNode said = JSON.readTree(answer.body());
        int accepted = said.get("accepted").asInt();
        int duplicate = said.get("duplicate").asInt();
        assertEquals(waiting.size(), accepted + duplicate, answer.body());
        assertTrue(accepted == 0 || duplicate == 0, "half a batch outlived a kill: " + answer.body());
        acknowledged.add(waiting);
        waiting = null;
    }
}
