package wisp.question.navels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.cohort.Cohort;
import wisp.cohort.NavelDelay;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.Selection;
import wisp.indicator.Stratum;
import wisp.statistics.Interval;
import wisp.testing.Calf;

class NavelsQuestionTest {
    private static final Duration EARLY = Duration.ofMinutes(20);
    private static final Duration LATE = Duration.ofHours(3);

    @Test
    void aPublishedTableBuiltOfCalvesGivesItsPublishedRatios() throws IOException {
        NavelsAnswer answer = birthWeights().answer();
        // R 4.2.2, epiR 2.0.57: epi.2by2 of MASS::birthwt, low birth weight by smoking
        JsonNode published = reference("two-by-two-birthwt").get("expected");
        TwoGroups late = answer.late().against();
        assertInterval(published.get("RR.strata.wald"), late.riskRatio());
        assertInterval(published.get("OR.strata.wald"), late.oddsRatio());
        assertEquals(
                published.get("chi2.strata.fisher").get("p.value.2s").asDouble(),
                late.fisher().p(),
                1e-9);
        assertEquals(30.0 / 74 - 29.0 / 115, late.riskDifference().interval().value(), 1e-12);
    }

    @Test
    void withinPensItGivesThePublishedMantelHaenszelEstimates() throws IOException {
        OverPens pens = birthWeights().answer().late().against().mantelHaenszel();
        // R 4.2.2: mantelhaen.test and epi.2by2 of MASS::birthwt, smoking and low birth weight by race
        JsonNode published = reference("mantel-haenszel-birthwt-race").get("expected");
        assertEquals(
                published.get("mantelhaen").get("or_mh").asDouble(),
                pens.oddsRatio().interval().value(),
                1e-9);
        assertEquals(
                published.get("mantelhaen").get("x2").asDouble(), pens.test().statistic(), 1e-9);
        assertEquals(
                published.get("mantelhaen").get("p").asDouble(), pens.test().p(), 1e-9);
        assertInterval(published.get("epi2by2").get("RR.mh.wald"), pens.riskRatio());
        assertEquals(3, pens.pens());
        assertEquals(0, pens.withoutPen());
    }

    @Test
    void aClassAgainstTheReferenceGivesFishersPublishedP() throws IOException {
        // R 4.2.2: fisher.test and epitools::ormidp.test of the twins' convictions, 2 of 12 against 15 of 18
        JsonNode published = reference("fisher-exact-twins").get("expected");
        NavelsAnswer answer = new NavelHerd()
                .add("a", Duration.ofMinutes(15), 18, 15)
                .add("a", Duration.ofMinutes(90), 12, 2)
                .answer();
        assertEquals(NavelDelay.TO_15_MIN, answer.reference().delay());
        DelayClass hours = answer.classes().get(2);
        assertEquals(published.get("p_two").asDouble(), hours.against().fisher().p(), 1e-9);
        double midP = published.get("midp").get("two.sided").get(0).asDouble();
        assertEquals(midP, hours.against().midP().p(), 1e-9);
        assertEquals(hours.against().fisher().p(), hours.adjustedP(), 1e-12, "one comparison needs no adjustment");
    }

    @Test
    void theTrendOverTheClassesIsThatOfThePublishedTable() {
        NavelsAnswer answer = new NavelHerd()
                .add("a", Duration.ofMinutes(10), 86, 83)
                .add("a", Duration.ofMinutes(30), 93, 90)
                .add("a", Duration.ofMinutes(100), 136, 129)
                .add("a", Duration.ofMinutes(200), 82, 70)
                .answer();
        // R 4.2.2: prop.trend.test(c(83, 90, 129, 70), c(86, 93, 136, 82)), Fleiss 1981 p. 139: X-squared 8.2249
        assertEquals(8.2249, answer.trend().statistic() * answer.trend().statistic(), 5e-5);
        assertEquals(0.004132, answer.trend().p(), 5e-7);
        assertTrue(answer.trend().statistic() < 0, "the share falls with delay");
    }

    @Test
    void aClassOfFewerThanTenCalvesIsNotComparedWith() {
        NavelsAnswer answer = new NavelHerd()
                .add("a", Duration.ofMinutes(5), 9, 1)
                .add("a", Duration.ofMinutes(30), 10, 1)
                .answer();
        assertEquals(NavelDelay.TO_60_MIN, answer.reference().delay());
        assertEquals(
                (1.0 / 9) / (1.0 / 10),
                answer.classes().get(0).against().riskRatio().interval().value(),
                1e-12);
        assertEquals(
                "This is the class that the others are compared with.",
                answer.classes().get(1).against().why());
    }

    @Test
    void withoutATenthCalfInAnyClassNothingIsComparedAndTheReasonIsGiven() {
        NavelsAnswer answer = new NavelHerd().add("a", EARLY, 9, 1).answer();
        assertNull(answer.reference());
        assertEquals(
                "No class holds 10 calves, so that there is none to compare with.",
                answer.classes().get(1).against().riskRatio().why());
    }

    @Test
    void aTreatmentAtSixtyMinutesIsEarlyAndASecondLaterIsLate() {
        NavelsAnswer answer = new NavelHerd()
                .add("a", Duration.ofMinutes(60), 1, 0)
                .add("a", Duration.ofMinutes(60).plusSeconds(1), 2, 0)
                .add("a", null, 3, 0)
                .answer();
        assertEquals(1, answer.late().early().n());
        assertEquals(5, answer.late().late().n());
        assertEquals(3, answer.classes().get(5).risk().n());
    }

    @Test
    void aCaseBefore24HoursIsNotAtRiskAndNeverAClassMember() {
        NavelHerd herd = new NavelHerd();
        herd.add("a", EARLY, 10, 0);
        Calf calf = herd.calf("a");
        calf.aged(Duration.ofHours(24), "illness-found", "condition: navel-infection");
        Calf dead = herd.calf("a");
        dead.aged(Duration.ofHours(20), "died", "");
        NavelsAnswer answer = herd.answer();
        assertEquals(10, answer.late().known().n());
        assertEquals(0, answer.classes().get(5).risk().n());
    }

    @Test
    void aTreatmentKnownOnlyByDateLeavesTheDelayUnknown() {
        NavelHerd herd = new NavelHerd().add("a", EARLY, 10, 2).add("a", LATE, 10, 4);
        Calf sick = herd.calf("a");
        sick.at("2026-03-01", "navel-treated", "");
        sick.aged(Duration.ofDays(4), "navel-checked", "finding: painful");
        herd.calf("a").at("2026-03-01", "navel-treated", "");
        NavelsAnswer answer = herd.answer();
        assertEquals(2, answer.delayUnknown());
        assertEquals(20, answer.late().known().n());
        MissingDelay missing = answer.missing();
        assertEquals(1, missing.cases());
        assertEquals((4.0 / 11) / (3.0 / 11), missing.least().interval().value(), 1e-12);
        assertEquals((5.0 / 11) / (2.0 / 11), missing.most().interval().value(), 1e-12);
    }

    @Test
    void aCalfThatLeftCountsForAsLongAsItWasSeenAndTheFigureSaysTheSame() {
        NavelHerd herd = new NavelHerd().add("a", EARLY, 20, 3);
        herd.calf("a").aged(Duration.ofDays(2), "left", "reason: sold");
        Calf treated = herd.calf("a");
        treated.aged(EARLY, "navel-treated", "");
        treated.aged(Duration.ofDays(2), "left", "reason: sold");
        Cohort cohort = herd.cohort();
        GroupRisk risk = NavelHerd.answer(cohort).classes().get(1).risk();
        assertEquals(21, risk.n());
        assertEquals(1, risk.censored());
        assertEquals(3.0 / 21, risk.share().interval().value(), 1e-12);
        // the calf sold on day 2 left before any case on day 3: of 20 still followed 3 fell ill
        assertEquals(3.0 / 20, risk.at21Days().interval().value(), 1e-12);
        Estimate figure = new Figures(NavelHerd.DEFINITIONS)
                .of(
                        NavelHerd.DEFINITIONS.indicator(NavelsQuestion.FIGURE).orElseThrow(),
                        cohort,
                        Selection.NEWEST.ofSeason(Selection.ALL).by(Stratum.NAVEL_DELAY))
                .strata()
                .get(0);
        assertEquals("15-60 min", figure.name());
        assertEquals(figure.interval(), risk.at21Days().interval());
    }

    @Test
    void withoutAnyCensoredTheRiskIsCasesOverCalvesWithWilson() {
        GroupRisk risk = new NavelHerd().add("a", EARLY, 10, 1).answer().late().early();
        // Wilson 1/10: 0.0179 to 0.4042
        assertEquals(0.1, risk.at21Days().interval().value(), 1e-12);
        assertEquals(0.0179, risk.at21Days().interval().low(), 5e-5);
        assertEquals(0.4042, risk.at21Days().interval().high(), 5e-5);
        assertEquals(risk.share(), risk.at21Days());
    }

    @Test
    void calvesEnoughAreFewerTheLargerTheDifference() {
        CalvesNeeded small = new NavelHerd()
                .add("a", EARLY, 100, 10)
                .add("a", LATE, 100, 15)
                .answer()
                .needed();
        CalvesNeeded large = new NavelHerd()
                .add("a", EARLY, 100, 10)
                .add("a", LATE, 100, 30)
                .answer()
                .needed();
        // By hand: (1.960 √(2·0.125·0.875) + 0.842 √(0.1·0.9 + 0.15·0.85))² / 0.05² = 685.6 in each group
        assertEquals(1372, small.inAll());
        assertEquals(1172, small.more());
        assertTrue(large.inAll() < small.inAll());
        assertEquals(0, large.more());
    }

    @Test
    void aPenThatIsNotWrittenIsLeftOutOfThePensAndSaidSo() {
        OverPens pens = new NavelHerd()
                .add("a", EARLY, 10, 1)
                .add("a", LATE, 10, 3)
                .add(null, LATE, 5, 5)
                .answer()
                .late()
                .against()
                .mantelHaenszel();
        assertEquals(5, pens.withoutPen());
        assertEquals(3.0, pens.riskRatio().interval().value(), 1e-12);
    }

    @Test
    void nothingAtAllGivesReasonsInPlaceOfNumbers() {
        NavelsAnswer answer = new NavelHerd().answer();
        assertFalse(answer.late().against().riskRatio().known());
        assertNotNull(answer.late().against().riskRatio().why());
        assertNotNull(answer.dose().why());
        assertNotNull(answer.avoidable().avoided().why());
        assertNotNull(answer.needed().why());
        assertFalse(answer.trend().known());
        assertEquals(List.of(), answer.products());
    }

    private static NavelHerd birthWeights() {
        return new NavelHerd()
                .add("white", LATE, 52, 19)
                .add("white", EARLY, 44, 4)
                .add("black", LATE, 10, 6)
                .add("black", EARLY, 16, 5)
                .add("other", LATE, 12, 5)
                .add("other", EARLY, 55, 20);
    }

    private static void assertInterval(JsonNode published, Measured measured) {
        Interval interval = measured.interval();
        assertEquals(published.get("est").asDouble(), interval.value(), 1e-9);
        assertEquals(published.get("lower").asDouble(), interval.low(), 1e-9);
        assertEquals(published.get("upper").asDouble(), interval.high(), 1e-9);
    }

    private static JsonNode reference(String name) throws IOException {
        try (InputStream file = NavelsQuestionTest.class.getResourceAsStream("/reference/" + name + ".json")) {
            return new ObjectMapper().readTree(file);
        }
    }
}
