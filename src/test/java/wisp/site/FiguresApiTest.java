package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.indicator.Stratum;

class FiguresApiTest {
    @TempDir
    private static Path folder;

    private static RunningSite demo;

    @BeforeAll
    static void start() {
        demo = RunningSite.demo(folder);
    }

    @AfterAll
    static void stop() {
        demo.close();
    }

    @Test
    void everyCountOfEveryFigureOpensAListOfThatManyRows() {
        List<String> wrong = new ArrayList<>();
        for (String filters : List.of("", "?by=pen", "?season=all")) {
            for (JsonNode figure :
                    Json.read(demo.get("/api/v1/figures" + filters).body()).get("figures")) {
                counts(figure, wrong);
                figure.get("strata").forEach(stratum -> counts(stratum, wrong));
            }
        }
        assertEquals(List.of(), wrong);
    }

    private static void counts(JsonNode figure, List<String> wrong) {
        String address = figure.get("calves").asText();
        boolean rate = figure.get("measure").asText().equals("rate");
        JsonNode cases = list(address + "&part=numerator");
        same(sum(cases, rate ? "count" : null), figure.get("numerator").asDouble(), address + " numerator", wrong);
        JsonNode denominator = list(address + "&part=denominator");
        same(
                sum(denominator, rate ? "days" : null),
                figure.get("denominator").asDouble(),
                address + " denominator",
                wrong);
        same(list(address + "&part=pending").size(), figure.get("pending").asInt(), address + " pending", wrong);
        int left = 0;
        for (var reason : figure.get("excluded").properties()) {
            String named = URLEncoder.encode(reason.getKey(), StandardCharsets.UTF_8);
            same(
                    list(address + "&part=excluded&reason=" + named).size(),
                    reason.getValue().asInt(),
                    address + " " + reason.getKey(),
                    wrong);
            left += reason.getValue().asInt();
        }
        same(list(address + "&part=excluded").size(), left, address + " excluded", wrong);
    }

    private static double sum(JsonNode rows, String field) {
        double sum = 0;
        for (JsonNode row : rows) {
            sum += field == null ? 1 : row.get(field).asDouble();
        }
        return sum;
    }

    private static void same(double found, double expected, String what, List<String> wrong) {
        if (Math.abs(found - expected) > 1e-6) {
            wrong.add(what + ": " + found + " rows for a count of " + expected);
        }
    }

    private static JsonNode list(String address) {
        HttpResponse<String> answer = demo.get(address);
        assertEquals(200, answer.statusCode(), address + " " + answer.body());
        JsonNode json = Json.read(answer.body());
        assertEquals(json.get("count").asInt(), json.get("calves").size());
        return json.get("calves");
    }

    @Test
    void oneFigureIsTheSameAsAmongAll() {
        JsonNode all = Json.read(demo.get("/api/v1/figures?by=sex").body());
        assertEquals("2025-26", all.get("season").asText());
        assertTrue(
                all.get("figures").size() >= 40,
                "there are " + all.get("figures").size());
        for (JsonNode figure : all.get("figures")) {
            String id = figure.get("id").asText();
            assertEquals(
                    figure,
                    Json.read(demo.get("/api/v1/figures/" + id + "?by=sex").body()));
        }
    }

    @Test
    void everyFilterNarrowsAndItsPartsAddUp() {
        int all = born("&season=2025-26");
        assertEquals(246, all);
        assertEquals(all, born("&sex=female") + born("&sex=male") + born("&sex=unknown"));
        assertEquals(all, born("&to=2026-01-01") + born("&from=2026-01-01"));
        assertTrue(born("&pen=old%20dairy") > 0 && born("&pen=old%20dairy") < all);
        assertTrue(born("&parity=1") > 0 && born("&parity=1") < all);
        assertEquals(0, born("&breed=none"));
        assertTrue(born("&season=all") > 2 * all);
        assertEquals(born("&season=all"), born("&season=2023-24") + born("&season=2024-25") + all);
        assertEquals(
                born("&season=all"),
                born("&season=2023") + born("&season=2024") + born("&season=2025") + born("&season=2026"));
    }

    private static int born(String filters) {
        String season = filters.contains("season=") ? "" : "&season=2025-26";
        return list("/api/v1/calves?" + (season + filters).substring(1)).size();
    }

    @Test
    void figuresAreDividedByEveryStratumAndThePartsAddUp() {
        for (Stratum stratum : Stratum.values()) {
            JsonNode figure = Json.read(demo.get("/api/v1/figures/dirty-calves?by=" + stratum.word())
                    .body());
            int sum = 0;
            for (JsonNode part : figure.get("strata")) {
                sum += part.get("denominator").asInt();
            }
            assertEquals(figure.get("denominator").asInt(), sum, stratum.word());
        }
    }

    @Test
    void aDateMeansItsEndOnTheFarmAndAMomentItself() {
        // 31 March 2026 ends at 23:00 UTC by the farm's clock, which is on summer time from 29 March 2026 on
        String byDate = demo.get("/api/v1/figures?as-of=2026-03-31").body();
        String byMoment = demo.get("/api/v1/figures?as-of=2026-03-31T23:00:00Z").body();
        assertEquals("2026-03-31T23:00:00Z", Json.read(byDate).get("as_of").asText());
        assertEquals(withoutAsOf(byDate), withoutAsOf(byMoment));
        assertNotEquals(
                withoutAsOf(byDate),
                withoutAsOf(demo.get("/api/v1/figures?as-of=2026-02-28").body()));
    }

    private static String withoutAsOf(String body) {
        return body.replaceAll("as-of=[^&\"]*", "as-of");
    }

    @Test
    void allWrongFiltersAreSaidAtOnce() {
        HttpResponse<String> answer = demo.get(
                "/api/v1/figures?season=1066-67&from=2026-02-30&to=soon&as-of=noon&by=moon&sex=both&colour=red&pen=a&pen=b");
        assertEquals(400, answer.statusCode());
        assertEquals(
                "application/problem+json",
                answer.headers().firstValue("Content-Type").orElse(""));
        List<String> faults = Json.faults(answer.body());
        assertEquals(
                List.of("colour", "pen", "season", "from", "to", "as-of", "by", "sex"),
                faults.stream().map(fault -> fault.split(":")[0]).toList());
        assertEquals(
                "colour: There is no such parameter. Those that there are: as-of, breed, by, from, parity, pen, season,"
                        + " sex, to.",
                faults.get(0));
        assertEquals("pen: It is given more than once. Give it once.", faults.get(1));
        assertEquals("from: \"2026-02-30\" is not a date. Write it as 2026-03-31.", faults.get(3));
    }

    @Test
    void anUnknownFigureIsNotThere() {
        HttpResponse<String> answer = demo.get("/api/v1/figures/luck");
        assertEquals(404, answer.statusCode());
        assertEquals(
                Wire.json(
                        "{'type':'about:blank','title':'There is no such thing','status':404,'detail':'There is no figure"
                                + " luck; /api/v1/figures lists them.'}"),
                answer.body());
    }
}
