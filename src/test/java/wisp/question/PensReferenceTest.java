package wisp.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;
import wisp.indicator.Selection;

/**
 * Published herds as pens, calf by calf through events and the definition: lme4::cbpp, contagious bovine
 * pleuropneumonia (Lesnoff et al. 2004), one herd a pen, an animal with the disease as a dirty calf.
 */
class PensReferenceTest {

    private static JsonNode reference(String name) throws IOException {
        try (InputStream file = PensReferenceTest.class.getResourceAsStream("/reference/" + name + ".json")) {
            return new JsonMapper().readTree(file);
        }
    }

    private static JsonNode answer(JsonNode dirty, JsonNode sizes) {
        PenBook book = new PenBook();
        for (int i = 0; i < sizes.size(); i++) {
            book.pen(
                    String.format("herd %02d", i + 1),
                    dirty.get(i).intValue(),
                    sizes.get(i).intValue());
        }
        return PensJson.of(book.answer(), Selection.NEWEST);
    }

    @Test
    void funnelLimitsAreThoseOfSpiegelhalter() throws IOException {
        // R 4.2.2: Spiegelhalter 2005 appendix A.1.1 written out over qbinom, pbinom and dbinom
        JsonNode reference = reference("funnel-limits-binomial");
        JsonNode data = reference.at("/input/data");
        JsonNode json = answer(data.get("incidence"), data.get("size"));
        assertEquals(
                reference.at("/expected/p0").doubleValue(),
                json.at("/overall/share").doubleValue(),
                1e-14);
        for (int i = 0; i < 15; i++) {
            JsonNode pen = json.get("pens").get(i);
            JsonNode limits = reference.at("/expected/interpolated").get(i);
            double z = reference.at("/expected/z").get(i).doubleValue();
            assertEquals(z, pen.get("z").doubleValue(), 1e-10);
            assertEquals(cut(limits.get(0)), pen.get("limits_998").get(0).doubleValue(), 1e-10);
            assertEquals(cut(limits.get(1)), pen.get("limits_95").get(0).doubleValue(), 1e-10);
            assertEquals(
                    limits.get(2).doubleValue(), pen.get("limits_95").get(1).doubleValue(), 1e-10);
            assertEquals(
                    limits.get(3).doubleValue(), pen.get("limits_998").get(1).doubleValue(), 1e-10);
        }
    }

    /** A lower limit below nothing is drawn at nothing. */
    private static double cut(JsonNode limit) {
        return Math.max(0, limit.doubleValue());
    }

    @Test
    void shrunkenSharesAndRanksAreThoseOfMaximumLikelihood() throws IOException {
        // R 4.2.2: beta-binomial likelihood by optim, posteriors by qbeta, ranks by integrate
        JsonNode reference = reference("beta-binomial-eb-cbpp");
        JsonNode data = reference.at("/input/data");
        JsonNode json = answer(data.get("incidence"), data.get("size"));
        JsonNode expected = reference.get("expected");
        assertEquals(expected.get("alpha").doubleValue(), json.at("/spread/a").doubleValue(), 1e-4);
        assertEquals(expected.get("beta").doubleValue(), json.at("/spread/b").doubleValue(), 1e-3);
        assertFalse(json.at("/spread/boundary").booleanValue());
        for (int i = 0; i < 15; i++) {
            JsonNode pen = json.get("pens").get(i);
            assertEquals(
                    expected.get("shrunken").get(i).doubleValue(),
                    pen.get("shrunken").doubleValue(),
                    1e-6);
            assertEquals(
                    expected.get("lower").get(i).doubleValue(),
                    pen.get("shrunken_low").doubleValue(),
                    1e-6);
            assertEquals(
                    expected.get("upper").get(i).doubleValue(),
                    pen.get("shrunken_high").doubleValue(),
                    1e-6);
            assertEquals(
                    expected.at("/rank/prob_largest").get(i).doubleValue(),
                    pen.get("probability_dirtiest").doubleValue(),
                    1e-6);
        }
    }

    @Test
    void atTheBoundaryEveryShrunkenShareIsTheHerdsAndItSaysSo() throws IOException {
        // invented: 5 of 50 in each of four pens, less spread than binomial
        JsonNode input = reference("beta-binomial-eb-boundary").get("input");
        JsonNode json = answer(input.get("x"), input.get("n"));
        assertTrue(json.at("/spread/boundary").booleanValue());
        assertTrue(json.at("/spread/a").isNull());
        assertTrue(json.at("/spread/why").textValue().startsWith("No spread beyond chance was found"));
        json.get("pens").forEach(pen -> {
            assertEquals(0.1, pen.get("shrunken").doubleValue(), 1e-12);
            assertEquals(0.25, pen.get("probability_dirtiest").doubleValue(), 1e-12);
            assertEquals(0.5, pen.get("probability_above_median").doubleValue(), 1e-12);
        });
        assertEquals(
                "No pen can be called dirtier than the others: 20 of 200 (10 %) calves of 2026 were dirty, and what"
                        + " separates the pens could be chance.",
                json.get("sentences").get(0).textValue());
        assertEquals(
                "The pens lie no further apart than chance alone would put them, so the best guess for each of them is"
                        + " the herd's 10 %.",
                json.get("sentences").get(1).textValue());
    }
}
