package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.site.Wire.birth;
import static wisp.site.Wire.event;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnTargetTest {
    @TempDir
    private Path folder;

    @Test
    void aFigureShowsTheFarmsOwnTargetOnItsPageAndAsJson() throws IOException {
        Path analytics = Files.createDirectories(folder.resolve("analytics"));
        Files.writeString(
                analytics.resolve("targets.yaml"), "stillbirth: {below: 0.9}\npreweaning-mortality: {below: 0.04}\n");
        try (RunningSite site = RunningSite.over(folder)) {
            for (int i = 0; i < 8; i++) {
                assertEquals(
                        201,
                        site.post("/api/v1/events", "application/json", birth("b" + i, "calf-" + i))
                                .statusCode());
            }
            String later = event("w", "weighed", "calf-0", "2026-08-01T08:00:00Z", "{\"weight_kg\":90}");
            assertEquals(
                    201, site.post("/api/v1/events", "application/json", later).statusCode());
            JsonNode figure = Json.read(site.get("/api/v1/figures/stillbirth").body());
            assertEquals(0.9, figure.at("/own_target/below").asDouble());
            assertEquals("met", figure.at("/own_target/standing").asText());
            JsonNode none = Json.read(site.get("/api/v1/figures/dirty-calves").body());
            assertTrue(none.get("own_target").isNull());
            JsonNode all = Json.read(site.get("/api/v1/figures").body());
            all.get("figures")
                    .forEach(one ->
                            assertTrue(one.has("own_target"), one.get("id").asText()));
            String page = Wire.spaced(site.get("/figures/stillbirth").body());
            assertTrue(page.contains("Own target below 90 %: <span class=\"standing met\">met</span>"), page);
            String unsure =
                    Wire.spaced(site.get("/figures/preweaning-mortality").body());
            assertTrue(unsure.contains("<dt>Own target</dt><dd>below 4 %"), unsure);
        }
    }
}
