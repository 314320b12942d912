package wisp.question.navels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import wisp.indicator.Selection;
import wisp.question.Question;
import wisp.question.Questions;

class NavelsJsonTest {
    private static final Selection ALL = Selection.NEWEST.ofSeason(Selection.ALL);

    private static JsonNode json(NavelHerd herd) {
        Question question = new Questions(NavelHerd.DEFINITIONS).named("navels").orElseThrow();
        return question.answer(herd.cohort(), ALL);
    }

    private final JsonNode full = json(new NavelHerd()
            .add("a", Duration.ofMinutes(10), 30, 3)
            .add("b", Duration.ofMinutes(30), 30, 4)
            .add("a", Duration.ofMinutes(90), 30, 6)
            .add("b", Duration.ofHours(8), 30, 9)
            .add("a", null, 10, 4));

    @Test
    void theSixClassesStandInOrderWithEveryMeasure() {
        List<String> delays = StreamSupport.stream(full.get("classes").spliterator(), false)
                .map(one -> one.get("delay").asText())
                .toList();
        assertEquals(List.of("0-15 min", "15-60 min", "1-2 h", "2-6 h", "6-24 h", "none by 24 h"), delays);
        JsonNode hours = full.get("classes").get(2);
        assertEquals(30, hours.get("n").asInt());
        assertEquals(6, hours.get("cases").asInt());
        assertEquals(0.2, hours.get("risk").asDouble(), 1e-12);
        assertEquals(0.2, hours.get("risk_at_21d").asDouble(), 1e-12);
        assertTrue(hours.get("low").asDouble() < 0.2 && hours.get("high").asDouble() > 0.2);
        for (String measure : List.of("risk_ratio", "risk_difference", "odds_ratio")) {
            assertTrue(hours.get(measure).get("value").isNumber(), measure);
            assertTrue(hours.get(measure).get("low").isNumber(), measure);
            assertTrue(hours.get(measure).get("high").isNumber(), measure);
        }
        assertEquals(2.0, hours.get("risk_ratio").get("value").asDouble(), 1e-12);
        assertTrue(hours.get("fisher_p").isNumber());
        assertTrue(hours.get("mid_p").isNumber());
        assertTrue(hours.get("mantel_haenszel").get("risk_ratio").get("value").isNumber());
    }

    @Test
    void lateHasTheSameMeasuresThePensAndTheModel() {
        JsonNode late = full.get("late");
        assertEquals(70, late.get("n").asInt());
        assertEquals(19, late.get("cases").asInt());
        assertEquals(60, late.get("early").get("n").asInt());
        JsonNode pens = late.get("mantel_haenszel");
        for (String name : List.of("chi_square", "p", "homogeneity_p")) {
            assertTrue(pens.get(name).isNumber(), name);
        }
        JsonNode terms = late.get("adjusted").get("terms");
        assertEquals("log2_minutes", terms.get(1).get("name").asText());
        for (String name : List.of("estimate", "standard_error", "low", "high", "clustered_standard_error")) {
            assertTrue(terms.get(1).get(name).isNumber(), name);
        }
        assertEquals(
                "It is recorded for fewer than half of the calves.",
                late.get("adjusted").get("dropped").get("cleanliness").asText());
    }

    @Test
    void theRestOfThePageIsThere() {
        assertEquals(0, full.get("delay_unknown").asInt());
        assertTrue(full.get("trend").get("z").asDouble() > 0);
        assertTrue(full.get("trend").get("p").isNumber());
        assertFalse(full.get("dose_response").get("points").isEmpty());
        assertFalse(full.get("dose_response").get("knots_minutes").isEmpty());
        assertTrue(full.get("avoidable").get("value").isNumber());
        assertTrue(full.get("calves_needed").get("in_all").isNumber());
        assertTrue(full.get("missing_delay").get("least_harmful").get("value").isNumber());
        assertTrue(full.get("late").get("e_value").get("estimate").asDouble() > 1);
        assertEquals("navel-infection-landmark", full.get("figure").get("id").asText());
        assertTrue(full.get("sentence").asText().startsWith("Of the 60 calves"));
        assertTrue(full.get("sentences").get("observational").asText().contains("not an experiment"));
        assertFalse(full.get("figure").get("definition").asText().isEmpty());
    }

    @Test
    void aClassNamesTheAddressOfItsCalves() {
        assertEquals(
                "/api/v1/calves?figure=navel-infection-landmark&season=all&by=navel-delay&stratum=0-15+min",
                full.get("classes").get(0).get("calves").asText());
    }

    @Test
    void whatCannotBeEstimatedIsNullWithAReason() {
        JsonNode empty = json(new NavelHerd());
        JsonNode first = empty.get("classes").get(0);
        assertEquals(0, first.get("n").asInt());
        assertTrue(first.get("risk").isNull());
        assertEquals("No calf is in this group.", first.get("risk_why").asText());
        assertTrue(first.get("risk_ratio").get("value").isNull());
        assertFalse(first.get("risk_ratio").get("why").asText().isEmpty());
        assertTrue(first.get("fisher_p").isNull());
        assertFalse(first.get("p_why").asText().isEmpty());
        assertTrue(empty.get("trend").get("z").isNull());
        assertFalse(empty.get("trend").get("why").asText().isEmpty());
        assertTrue(empty.get("late").get("adjusted").get("terms").isEmpty());
        assertFalse(empty.get("late").get("adjusted").get("why").asText().isEmpty());
    }

    @Test
    void belowTheFloorTheModelIsNullWithAReason() {
        JsonNode late = json(new NavelHerd()
                        .add("a", Duration.ofMinutes(10), 20, 1)
                        .add("a", Duration.ofHours(3), 20, 3))
                .get("late");
        assertTrue(late.get("adjusted").get("terms").isEmpty());
        assertTrue(late.get("adjusted").get("why").asText().startsWith("Fewer than 5 cases: not adjusted."));
        assertTrue(late.get("adjusted_risk_ratio").get("value").isNull());
        assertTrue(late.get("adjusted_risk_ratio").get("why").asText().startsWith("Fewer than 5 cases"));
    }

    @Test
    void anEndlessRatioIsNullAndSaysWhy() {
        JsonNode json =
                json(new NavelHerd().add("a", Duration.ofMinutes(10), 20, 0).add("a", Duration.ofHours(3), 20, 5));
        JsonNode ratio = json.get("late").get("risk_ratio");
        assertTrue(ratio.get("value").isNull());
        assertTrue(ratio.get("low").asDouble() > 1);
        assertEquals(
                "A group has no case, so that the ratio has no upper limit.",
                ratio.get("why").asText());
    }
}
