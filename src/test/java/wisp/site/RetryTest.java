package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.site.Wire.birth;
import static wisp.site.Wire.event;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hundred phones send at once over HTTP: the same events, their own, and different ones under one name. */
class RetryTest {
    private static final int PHONES = 100;
    private static final int ROUNDS = 3;

    @TempDir
    private Path folder;

    /** What one phone was told: of the event that all send, of its own, of the name that all fight for. */
    private record Told(JsonNode shared, JsonNode own, HttpResponse<String> fought) {}

    @Test
    void aHundredPhonesAtOnceRecordEachEventOnceAndEachConflictIsRefused() throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(PHONES);
        try (RunningSite site = RunningSite.over(folder)) {
            CyclicBarrier together = new CyclicBarrier(PHONES);
            List<Callable<List<Told>>> phones = IntStream.range(0, PHONES)
                    .<Callable<List<Told>>>mapToObj(phone -> () -> {
                        List<Told> told = new ArrayList<>();
                        for (int round = 0; round < ROUNDS; round++) {
                            together.await();
                            told.add(send(site, phone, round));
                        }
                        return told;
                    })
                    .toList();
            List<Told> all = new ArrayList<>();
            for (Future<List<Told>> phone : pool.invokeAll(phones)) {
                all.addAll(phone.get());
            }
            check(all);
            assertEquals(ROUNDS * (PHONES + 2L), site.records().log().last());
            assertTrue(site.records().log().verify().whole());
            assertEquals(
                    ROUNDS * (PHONES + 2L),
                    site.records().log().read(0, 10_000).stream()
                            .map(stored -> stored.event().id())
                            .distinct()
                            .count());
        } finally {
            pool.shutdown();
        }
    }

    private static Told send(RunningSite site, int phone, int round) {
        JsonNode shared = recorded(site, birth("shared" + round, "S" + round));
        JsonNode own = recorded(site, birth("own" + phone + "-" + round, "C" + phone + "-" + round));
        String mine = event("fought" + round, "noted", "S0", "2026-03-01T09:00:00Z", "{\"text\":\"by " + phone + "\"}");
        return new Told(shared, own, site.post("/api/v1/events", "application/cloudevents+json", mine));
    }

    private static JsonNode recorded(RunningSite site, String event) {
        HttpResponse<String> answer = site.post("/api/v1/events", "application/cloudevents+json", event);
        assertEquals(201, answer.statusCode(), answer.body());
        return Json.read(answer.body());
    }

    private static void check(List<Told> all) {
        assertEquals(ROUNDS, sum(all.stream().map(Told::shared).toList(), "accepted"));
        assertEquals(ROUNDS * (PHONES - 1), sum(all.stream().map(Told::shared).toList(), "duplicate"));
        assertEquals(ROUNDS * PHONES, sum(all.stream().map(Told::own).toList(), "accepted"));
        List<HttpResponse<String>> fought = all.stream().map(Told::fought).toList();
        assertEquals(
                ROUNDS,
                fought.stream().filter(answer -> answer.statusCode() == 201).count());
        List<HttpResponse<String>> refused =
                fought.stream().filter(answer -> answer.statusCode() != 201).toList();
        assertEquals(ROUNDS * (PHONES - 1), refused.size());
        for (HttpResponse<String> answer : refused) {
            assertEquals(422, answer.statusCode(), answer.body());
            JsonNode faults = Json.read(answer.body()).get("refused");
            assertEquals(1, faults.size(), "each conflict is refused once");
            assertTrue(
                    faults.get(0).get("problem").asText().startsWith("The log has another event of source shed and id"),
                    answer.body());
        }
    }

    private static int sum(List<JsonNode> answers, String field) {
        return answers.stream().mapToInt(answer -> answer.get(field).asInt()).sum();
    }
}
