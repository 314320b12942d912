package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AwkwardKeysTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UK 123 456",
                "12/345",
                "100%",
                "a+b",
                "a;b",
                "a?b#c",
                "Kälbchen",
                "<b>bold</b>",
                "a&b=c",
                "..",
                "a/../b",
                "a//b"
            })
    void aCalfOfAnyKeyHasItsPageAndTheListLeadsThere(String key) {
        try (RunningSite site = RunningSite.over(folder)) {
            String birth = Wire.birth("1", key);
            assertEquals(
                    201, site.post("/api/v1/events", "application/json", birth).statusCode());
            String list = site.get("/calves").body();
            Matcher link = Pattern.compile("<th[^>]*><a href=\"([^\"]*)\">").matcher(list);
            assertTrue(link.find(), list);
            String address = link.group(1).replace("&amp;", "&");
            HttpResponse<String> page = site.get(address);
            assertEquals(200, page.statusCode(), address + " " + page.body());
            assertTrue(page.body().contains("<h1>Calf "), page.body());
            HttpResponse<String> api = site.get("/api/v1" + address);
            assertEquals(200, api.statusCode(), address + " " + api.body());
            assertEquals(key, Json.read(api.body()).get("calf").asText());
        }
    }

    @Test
    void anAnimalWithoutABirthHasAPageThatSaysSo() {
        try (RunningSite site = RunningSite.over(folder)) {
            String tag = Wire.event("1", "tag-fitted", "A", "2026-03-01T08:00:00Z", "{\"number\":\"7\"}");
            site.post("/api/v1/events", "application/json", tag);
            HttpResponse<String> page = site.get("/calves/A");
            assertEquals(200, page.statusCode(), page.body());
            assertTrue(page.body().contains("No birth is recorded for this animal"), page.body());
            assertEquals(200, site.get("/api/v1/calves/A").statusCode());
            assertEquals(200, site.get("/records").statusCode());
            assertEquals(200, site.get("/calves").statusCode());
            assertEquals(
                    200,
                    site.get("/figures/stillbirth?season=all&part=excluded").statusCode());
        }
    }
}
