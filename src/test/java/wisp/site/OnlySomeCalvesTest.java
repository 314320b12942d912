package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where filters leave calves out, each page says so under its heading, and each answer in its first words. */
class OnlySomeCalvesTest {
    private static final List<String> PAGES = List.of(
            "/",
            "/season",
            "/season/weeks",
            "/season/calves?list=deaths.any.",
            "/navels",
            "/navels/calves?group=early",
            "/records/calves?thing=weight&recorded=no",
            "/pens",
            "/pens/calves?list=all.scored",
            "/figures/preweaning-mortality",
            "/proof",
            "/proof/tagged-inside-limit",
            "/calves",
            "/records",
            "/samples");
    private static final String FILTERS = "pen=north+boxes&sex=female&from=2026-03-01&to=2026-04-01";
    private static final String ONLY = "female calves born in north boxes, from 1 Mar to 31 Mar 2026";

    @TempDir
    private static Path folder;

    private static RunningSite demo;

    @BeforeAll
    static void serve() {
        demo = RunningSite.demo(folder.resolve("demo"));
    }

    @AfterAll
    static void stop() {
        demo.close();
    }

    private static String page(String address) {
        String body = demo.get(address).body();
        assertTrue(body.contains("<h1"), () -> address + " is no page: " + body);
        return Wire.spaced(body);
    }

    private static String filtered(String address) {
        return address + (address.contains("?") ? "&" : "?") + FILTERS;
    }

    @Test
    void everyPageOfManyCalvesSaysItUnderItsHeading() {
        for (String address : PAGES) {
            String page = page(filtered(address));
            String below =
                    page.substring(page.indexOf("</h1>") + "</h1>".length()).strip();
            assertTrue(
                    below.startsWith("<p class=\"only\"><strong>Only " + ONLY + ".</strong>"),
                    () -> address + ": " + below);
            assertFalse(page(address).contains("class=\"only\""), address);
        }
    }

    @Test
    void theWayBackToAllCalvesKeepsTheSeasonAndTheList() {
        String page = page("/figures/preweaning-mortality?season=2024-25&part=numerator&sex=male");
        assertTrue(
                page.contains("<a href=\"/figures/preweaning-mortality?season=2024-25&amp;part=numerator\">"
                        + "All calves of 2024-25</a>"),
                page);
    }

    @Test
    void noTemplateWithFiltersForgetsTheLine() throws IOException {
        List<String> alone = List.of("calf", "due", "medicines", "mend", "mended", "error");
        try (Stream<Path> templates = Files.list(Path.of("web", "templates"))) {
            for (Path template : templates.filter(Files::isRegularFile).toList()) {
                String name = template.getFileName().toString().replace(".jte", "");
                boolean said = Files.readString(template).contains("@template.part.only(frame = page.frame())");
                assertEquals(!alone.contains(name), said, name);
            }
        }
    }

    @Test
    void eachAnswerBeginsWithTheCalvesThatItIsAbout() {
        JsonNode season = Json.read(
                demo.get("/api/v1/questions/season?sex=female&pen=north+boxes").body());
        String first = season.at("/sentences/0").asText();
        String begun = season.get("calves").asInt() + " female calves were born in north boxes in ";
        assertTrue(first.startsWith(begun), first);
        String navels = Json.read(
                        demo.get("/api/v1/questions/navels?sex=female").body())
                .get("sentence")
                .asText();
        assertTrue(navels.startsWith("Among female calves, of the "), navels);
        String pens = Json.read(demo.get("/api/v1/questions/pens?sex=female").body())
                .at("/sentences/0")
                .asText();
        assertTrue(pens.startsWith("Among female calves: "), pens);
    }

    @Test
    void eachAnswerEchoesItsFilters() {
        for (String question : List.of("season", "navels", "pens")) {
            String address = "/api/v1/questions/" + question + "?season=2025-26&as-of=2026-06-01&";
            assertEquals(
                    Json.read("{\"from\":\"2026-03-01\",\"to\":\"2026-04-01\",\"pen\":\"north boxes\","
                            + "\"sex\":\"female\"}"),
                    Json.read(demo.get(address + FILTERS).body()).get("filters"));
            assertEquals(
                    Json.read("{}"),
                    Json.read(demo.get("/api/v1/questions/" + question).body()).get("filters"));
        }
    }
}
