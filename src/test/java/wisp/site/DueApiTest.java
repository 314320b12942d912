package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class DueApiTest {
    private static SmallSite site;

    @BeforeAll
    static void start() {
        site = new SmallSite();
        site.event("birth", "A 1", "2026-11-17T08:00:00Z", "{\"alive\":true,\"sex\":\"male\",\"pen\":\"box\"}");
        site.event("moved", "A 1", "2026-11-18T08:00:00Z", "{\"pen\":\"yard\"}");
        site.event("tag-fitted", "A 1", "2026-11-17T09:00:00Z", "{\"number\":\"UK1\",\"role\":\"primary\"}");
        site.event("navel-treated", "A 1", "2026-11-17T08:10:00Z", "{}");
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @Test
    void withoutADayTheListIsOfThisMoment() {
        JsonNode list = Json.read(site.get("/api/v1/due").body());
        assertEquals("2026-11-25T10:00:00Z", list.get("at").textValue());
        JsonNode ring = item(list, "castrate");
        assertEquals("impossible now", ring.get("state").textValue());
        assertEquals("A 1", ring.get("calf").textValue());
        assertEquals("UK1", ring.get("tag").textValue());
        assertEquals("yard", ring.get("pen").textValue());
        assertEquals("castrated", ring.get("event").textValue());
        assertEquals("2026-11-25T00:00:00Z", ring.get("closes").textValue());
        assertEquals("/calves/A%201", ring.get("url").textValue());
        assertTrue(ring.get("ways_left").get(0).textValue().startsWith("Clamp: "), ring.toString());
        assertEquals(
                "{\"kind\":\"law\",\"place\":\"England\",\"limit\":\"by the end of day 7 of life\",\"source\":"
                        + "\"Mutilations (Permitted Procedures) (England) Regulations 2007, SI 2007/1100, as the Welsh SI"
                        + " 2007/1029 Schedule 2 paragraph 1.\",\"status\":\"from memory\",\"read_on\":\"2026-11\"}",
                ring.get("rule").toString());
    }

    @Test
    void aDayIsJudgedAtItsBeginning() {
        JsonNode list = Json.read(site.get("/api/v1/due?on=2026-11-24&pen=yard").body());
        assertEquals("2026-11-24T00:00:00Z", list.get("at").textValue());
        assertEquals("due now", item(list, "castrate").get("state").textValue());
        assertEquals(
                0,
                Json.read(site.get("/api/v1/due?on=2026-11-24&pen=box").body())
                        .get("count")
                        .intValue());
    }

    @Test
    void everythingWrongIsSaid() {
        HttpResponse<String> answer = site.get("/api/v1/due?on=soon");
        assertEquals(400, answer.statusCode());
        assertEquals(List.of("on: \"soon\" is not a date. Write it as 2026-03-31."), Json.faults(answer.body()));
        assertEquals(400, site.get("/api/v1/due?when=now").statusCode());
    }

    @Test
    void aProofNamesItsLimitAndItsBreaches() {
        JsonNode proof = Json.read(site.get("/api/v1/proof/first-tag").body());
        assertEquals(1, proof.get("inside").intValue());
        assertEquals("hours", proof.get("unit").textValue());
        assertEquals(36.0, proof.get("limits").get(0).get("at").doubleValue());
        assertEquals(1.0, proof.get("curve").get(0).get("done").doubleValue());
        JsonNode tags = Json.read(site.get("/api/v1/proof/tagged-inside-limit").body());
        assertEquals(1, tags.get("pending").intValue());
        assertTrue(tags.get("share").isNull());
    }

    @Test
    void aProofOfNothingNamesThoseThatThereAre() {
        HttpResponse<String> answer = site.get("/api/v1/proof/luck");
        assertEquals(404, answer.statusCode());
        assertTrue(answer.body().contains("tagged-inside-limit"), answer.body());
        assertTrue(answer.body().contains("navel-treated"), answer.body());
    }

    private static JsonNode item(JsonNode list, String step) {
        for (JsonNode item : list.get("items")) {
            if (item.get("step").textValue().equals(step)) {
                return item;
            }
        }
        throw new AssertionError("no " + step + " in " + list);
    }
}
