package wisp.question.navels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wisp.indicator.Selection;
import wisp.indicator.Stratum;
import wisp.simulation.StandardModel;

class NavelStrataTest {
    private static final Duration EARLY = Duration.ofMinutes(20);
    private static final Duration LATE = Duration.ofHours(3);
    private static final Selection ALL = Selection.NEWEST.ofSeason(Selection.ALL);

    private static NavelHerd birthWeights() {
        return new NavelHerd()
                .add("white", LATE, 52, 19)
                .add("white", EARLY, 44, 4)
                .add("black", LATE, 10, 6)
                .add("black", EARLY, 16, 5)
                .add("other", LATE, 12, 5)
                .add("other", EARLY, 55, 20);
    }

    @Test
    void eachPartHasItsCountsAndItsRatio() {
        NavelStrata strata = birthWeights().answer(Stratum.PEN).strata();
        assertEquals(
                List.of("black", "other", "white"),
                strata.strata().stream().map(NavelStratum::name).toList());
        NavelStratum white = strata.strata().get(2);
        assertEquals(19, white.late().cases());
        assertEquals(52, white.late().n());
        assertEquals(4, white.early().cases());
        assertEquals(44, white.early().n());
        assertEquals(
                (19.0 / 52) / (4.0 / 44), white.against().riskRatio().interval().value(), 1e-12);
        assertEquals(44, white.classes().get(1).risk().n());
        assertEquals(52, white.classes().get(3).risk().n());
        assertEquals(3, strata.comparisons());
        assertEquals(3 * white.against().fisher().p(), white.adjustedP(), 1e-12, "Holm: the smallest of three");
    }

    @Test
    void homogeneityIsThatOfThePublishedTables() throws IOException {
        NavelStrata strata = birthWeights().answer(Stratum.PEN).strata();
        // R 4.2.2: epi.2by2 of MASS::birthwt, smoking and low birth weight by race; DescTools::BreslowDayTest
        OverPens pens = birthWeights().answer().late().against().mantelHaenszel();
        assertEquals(pens.homogeneity().p(), strata.homogeneity().p(), 1e-12);
        assertEquals(
                pens.riskRatio().interval().value(), strata.pooled().interval().value(), 1e-12);
        try (InputStream file = getClass().getResourceAsStream("/reference/mantel-haenszel-birthwt-race.json")) {
            double published = new ObjectMapper()
                    .readTree(file)
                    .at("/expected/epi2by2/RR.mh.wald/est")
                    .asDouble();
            assertEquals(published, strata.pooled().interval().value(), 1e-9);
        }
    }

    @Test
    void theSentenceNamesWhatStandsOutAndWhetherPartsDiffer() {
        String said = NavelStrataSentence.of(birthWeights().answer(Stratum.PEN).strata());
        assertTrue(
                said.startsWith("Divided by calving pen, more than chance alone makes likely is found in white, where"
                        + " late treatment went with more infection (3 groups looked at, and allowed for). In each of"
                        + " the others it could be chance. That they differ from each other could be chance ("),
                said);
        assertTrue(said.contains("in groups of this size only gross differences would show."), said);
    }

    @Test
    void dividingByTheDelayItselfIsExplained() {
        NavelsAnswer answer = birthWeights().answer(Stratum.NAVEL_DELAY);
        assertEquals(List.of(), answer.strata().strata());
        assertEquals(
                "The delay to navel treatment is what is compared here; calves divided by it are in the table of classes"
                        + " already. Divide by something else, such as pen.",
                NavelStrataSentence.of(answer.strata()));
        ObjectNode json = NavelsJson.of(answer, ALL.by(Stratum.NAVEL_DELAY));
        assertEquals("navel-delay", json.at("/over_strata/by").asText());
        assertFalse(json.at("/over_strata/why").asText().isEmpty());
        assertTrue(json.at("/strata").isEmpty());
    }

    @Test
    void everyOtherDivisionGivesPartsThatAddUpAndLeavesTheRestAsItWas() {
        var cohort = NavelHerd.simulated(StandardModel.model(), 150, 5);
        NavelsQuestion question = new NavelsQuestion(NavelHerd.DEFINITIONS);
        ObjectNode whole = NavelsJson.of(question.of(cohort, ALL), ALL);
        assertTrue(whole.get("strata").isEmpty());
        assertTrue(whole.get("over_strata").isNull());
        for (Stratum by : Stratum.values()) {
            if (by != Stratum.NAVEL_DELAY) {
                NavelsAnswer answer = question.of(cohort, ALL.by(by));
                int calves = answer.strata().strata().stream()
                        .mapToInt(part -> part.early().n() + part.late().n())
                        .sum();
                assertEquals(answer.late().known().n(), calves, by.word());
                ObjectNode json = NavelsJson.of(answer, ALL.by(by));
                assertEquals(by.word(), json.at("/over_strata/by").asText());
                assertTrue(json.at("/strata/0/calves").asText().contains("by=" + by.word() + "&stratum="));
                json.remove(List.of("strata", "over_strata"));
                ObjectNode same = whole.deepCopy();
                same.remove(List.of("strata", "over_strata"));
                assertEquals(same, json, by.word());
            }
        }
    }

    @Test
    void oneGroupOrNoneIsSaidPlainly() {
        String one = NavelStrataSentence.of(new NavelHerd()
                .add("a", EARLY, 10, 1)
                .add("a", LATE, 10, 2)
                .answer(Stratum.PEN)
                .strata());
        assertTrue(
                one.startsWith("Divided by calving pen, one group alone can be compared; in it the difference of late"
                        + " from early treatment could be chance. Whether the groups differ from each other in this"
                        + " cannot be tested. It takes two of them"),
                one);
        assertEquals(
                "Divided by calving pen, no group has both calves treated within 60 minutes and calves treated later, so"
                        + " that there is nothing to compare.",
                NavelStrataSentence.of(new NavelHerd().answer(Stratum.PEN).strata()));
        assertEquals("", NavelStrataSentence.of(new NavelHerd().answer().strata()));
    }

    @Test
    void itNeverClaimsMoreThanIntervalsAndTestsAllow() {
        long seed = 20260317;
        System.out.println("navels strata sentences, seed " + seed);
        SplittableRandom random = new SplittableRandom(seed);
        int claimed = 0;
        int differ = 0;
        for (int round = 0; round < 60; round++) {
            NavelHerd herd = new NavelHerd();
            int pens = 1 + random.nextInt(5);
            for (int pen = 0; pen < pens; pen++) {
                double early = random.nextDouble() * 0.4;
                double late = random.nextInt(3) == 0 ? random.nextDouble() : early;
                add(herd, "pen " + pen, EARLY, early, random);
                add(herd, "pen " + pen, LATE, late, random);
            }
            NavelStrata strata = herd.answer(Stratum.PEN).strata();
            String said = NavelStrataSentence.of(strata);
            String text = "seed " + seed + ", round " + round + ": " + said;
            assertFalse(said.contains("NaN") || said.contains("Infinity") || said.contains("null"), text);
            for (NavelStratum part : strata.strata()) {
                if (said.contains(part.name() + ", where")) {
                    claimed++;
                    assertTrue(part.against().riskRatio().excludes(1), text);
                    assertTrue(part.against().fisher().p() < 0.05 && part.adjustedP() < 0.05, text);
                }
            }
            boolean differing = said.contains("differ from each other in this by more than chance");
            differ += differing ? 1 : 0;
            boolean rejected =
                    strata.homogeneity().known() && strata.homogeneity().p() < 0.05 && !strata.sparse();
            assertEquals(rejected, differing, text);
            boolean pooled = said.contains("Within groups, pooled");
            assertFalse(pooled && !strata.pooled().excludes(1) && !said.endsWith("it could be chance."), text);
        }
        assertTrue(claimed > 0 && differ > 0, "with unlike risks some herds must show it");
    }

    private static void add(NavelHerd herd, String pen, Duration delay, double risk, SplittableRandom random) {
        int all = random.nextInt(random.nextBoolean() ? 40 : 120);
        int sick = 0;
        for (int i = 0; i < all; i++) {
            sick += random.nextDouble() < risk ? 1 : 0;
        }
        herd.add(pen, delay, all, sick);
    }
}
