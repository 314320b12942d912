package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.site.Wire.birth;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.log.Verification;

/** The heads of the days are the same in JSON, in CSV and on the Records page. */
class HeadsTest {
    @TempDir
    private Path folder;

    @Test
    void theHeadsOfTheDaysStandInJsonInCsvAndOnThePage() {
        try (RunningSite site = RunningSite.over(folder)) {
            assertEquals(
                    "[]",
                    Json.read(site.get("/api/v1/log/heads").body()).get("days").toString());
            record(site, "1", "2026-03-02T09:00:00Z");
            record(site, "2", "2026-03-02T23:59:59Z");
            record(site, "3", "2026-03-03T00:00:00Z");
            Verification found = site.records().log().verify();
            String second = site.records().log().read(1, 1).get(0).hash();
            JsonNode heads = Json.read(site.get("/api/v1/log/heads").body());
            assertEquals("Europe/London", heads.get("zone").asText());
            assertEquals(3, heads.get("sequence").asLong());
            assertEquals(found.head(), heads.get("hash").asText());
            assertEquals(
                    Wire.json("[{'day':'2026-03-02','sequence':2,'hash':'" + second
                            + "'},{'day':'2026-03-03','sequence':3,'hash':'" + found.head() + "'}]"),
                    heads.get("days").toString());
            assertEquals(
                    "day,sequence,hash\n2026-03-02,2," + second + "\n2026-03-03,3," + found.head() + "\n",
                    site.get("/records/heads.csv").body());
            String page = site.get("/records").body();
            assertTrue(page.indexOf(found.head()) > 0, "the newest head is on the page");
            assertTrue(page.indexOf(found.head()) < page.indexOf(second), "the newest day comes first");
        }
    }

    private static void record(RunningSite site, String id, String recorded) {
        String event = birth(id, "calf-" + id)
                .replace("\"specversion\"", "\"recordedtime\":\"" + recorded + "\",\"specversion\"");
        assertEquals(
                201,
                site.post("/api/v1/events", "application/cloudevents+json", event)
                        .statusCode());
    }
}
