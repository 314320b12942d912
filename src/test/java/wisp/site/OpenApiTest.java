package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real answers of the demo and of an empty log hold to the schemas that the interface gives out. */
class OpenApiTest {
    @TempDir
    private static Path folder;

    private static RunningSite demo;
    private static RunningSite empty;

    @BeforeAll
    static void serve() {
        demo = RunningSite.demo(folder.resolve("demo"));
        empty = RunningSite.over(folder.resolve("empty"));
    }

    @AfterAll
    static void stop() {
        demo.close();
        empty.close();
    }

    @Test
    void theNavelsAnswerIsAsDescribedHoweverItIsAsked() {
        for (String filters : List.of(
                "",
                "?by=pen",
                "?by=week&sex=male",
                "?season=all&by=season",
                "?by=navel-delay",
                "?pen=nowhere",
                "?season=2023-24",
                "?as-of=2025-09-20",
                "?by=parity",
                "?by=cleanliness")) {
            holds("NavelsAnswer", demo, "/api/v1/questions/navels" + filters);
        }
        holds("NavelsAnswer", empty, "/api/v1/questions/navels");
    }

    @Test
    void theOtherAnswersAreAsDescribedHoweverTheyAreAsked() {
        for (String filters : List.of(
                "",
                "?season=all",
                "?season=2023-24",
                "?pen=nowhere",
                "?pen=field",
                "?sex=male&by=pen",
                "?as-of=2025-09-20",
                "?from=2026-05-01")) {
            holds("SeasonAnswer", demo, "/api/v1/questions/season" + filters);
            holds("PensAnswer", demo, "/api/v1/questions/pens" + filters);
        }
        holds("SeasonAnswer", empty, "/api/v1/questions/season");
        holds("PensAnswer", empty, "/api/v1/questions/pens");
    }

    @Test
    void everyCalfOfTheDemoIsAsDescribed() {
        Schema schema = schema("CalfLife");
        int calves = 0;
        for (JsonNode calf :
                Json.read(demo.get("/api/v1/calves?season=all").body()).get("calves")) {
            String path = "/api/v1/calves/" + calf.get("calf").asText();
            List<Error> errors = schema.validate(Json.read(demo.get(path).body()));
            assertTrue(errors.isEmpty(), () -> path + ": " + errors);
            calves++;
        }
        assertTrue(calves > 700, calves + " calves");
    }

    @Test
    void nothingMayStandInAnAnswerThatIsNotDescribed() {
        JsonNode schemas = description().at("/components/schemas");
        List<String> open = new ArrayList<>();
        for (String name : List.of(
                "SeasonAnswer",
                "NavelsAnswer",
                "PensAnswer",
                "Figures",
                "Figure",
                "SeasonFigure",
                "SameMix",
                "Interval",
                "Calves",
                "CalfLife",
                "LifeEvent",
                "PenList")) {
            open(schemas.get(name), name, open);
        }
        assertEquals(List.of(), open);
    }

    private static void open(JsonNode node, String path, List<String> open) {
        if (node.has("properties") && node.get("properties").isObject() && node.has("type")) {
            if (!node.path("additionalProperties").isBoolean()
                    || node.get("additionalProperties").asBoolean()) {
                open.add(path + " takes unknown fields");
            }
            node.get("properties").properties().forEach(field -> {
                if (!path.startsWith("NavelsAnswer")
                        && !field.getValue().has("description")
                        && !field.getValue().has("$ref")) {
                    open.add(path + "." + field.getKey() + " is not described");
                }
            });
        }
        node.properties().forEach(field -> open(field.getValue(), path + "/" + field.getKey(), open));
    }

    @Test
    void figuresCalvesAndPensAreAsDescribed() {
        for (RunningSite site : List.of(demo, empty)) {
            holds("Figures", site, "/api/v1/figures?by=pen");
            holds("Figures", site, "/api/v1/figures?season=all&by=season");
            holds("Figure", site, "/api/v1/figures/stillbirth");
            holds("Calves", site, "/api/v1/calves");
            holds("Calves", site, "/api/v1/calves?season=all");
            holds("Calves", site, "/api/v1/calves?figure=diarrhoea-rate&part=numerator");
            holds("Calves", site, "/api/v1/calves?figure=tagged-inside-limit&part=pending");
            holds("Calves", site, "/api/v1/calves?figure=navel-infection-landmark&part=excluded");
            holds("PenList", site, "/api/v1/pens");
        }
        holds("CalfLife", demo, "/api/v1/calves/2025-26-0178");
    }

    @Test
    void whatIsDueAndItsProofAreAsDescribed() {
        for (RunningSite site : List.of(demo, empty)) {
            holds("DueList", site, "/api/v1/due");
            holds("DueList", site, "/api/v1/due?on=2026-02-20&as-of=2026-02-20");
            holds("Proof", site, "/api/v1/proof/tagged-inside-limit");
            holds("Proof", site, "/api/v1/proof/castrated-inside-limit?season=all");
        }
        holds("Proof", demo, "/api/v1/proof/first-tag");
    }

    @Test
    void everyLineOfTheEventsIsAsDescribed() {
        Schema schema = schema("StoredEvent");
        List<String> lines =
                demo.get("/api/v1/events?limit=10000").body().lines().toList();
        assertEquals(10_000, lines.size());
        for (String line : lines) {
            List<Error> errors = schema.validate(Json.read(line));
            assertTrue(errors.isEmpty(), () -> errors + " in " + line);
        }
    }

    @Test
    void aFieldThatIsNotDescribedIsSeen() {
        ObjectNode answer =
                (ObjectNode) Json.read(empty.get("/api/v1/questions/navels").body());
        answer.put("new_field", 1);
        assertFalse(schema("NavelsAnswer").validate(answer).isEmpty());
        answer.remove("new_field");
        ((ObjectNode) answer.at("/classes/0")).put("n", "many");
        assertFalse(schema("NavelsAnswer").validate(answer).isEmpty());
    }

    @Test
    void everyReferenceOfTheDescriptionLeadsSomewhere() {
        JsonNode whole = description();
        List<String> lost = new ArrayList<>();
        whole.findValuesAsText("$ref").stream()
                .filter(ref -> whole.at(ref.substring(1)).isMissingNode())
                .forEach(lost::add);
        assertEquals(List.of(), lost);
    }

    private static void holds(String schema, RunningSite site, String path) {
        var answer = site.get(path);
        assertEquals(200, answer.statusCode(), path);
        List<Error> errors = schema(schema).validate(Json.read(answer.body()));
        assertTrue(errors.isEmpty(), () -> path + ": " + errors.subList(0, Math.min(5, errors.size())));
    }

    private static Schema schema(String name) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("$ref", "#/components/schemas/" + name);
        root.set("components", description().get("components"));
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(root);
    }

    private static JsonNode description() {
        return Json.read(demo.get("/api/v1/openapi.json").body());
    }
}
