package wisp.question.navels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class CovariatesTest {
    private static final Duration EARLY = Duration.ofMinutes(20);
    private static final Duration LATE = Duration.ofHours(3);
    private static final String DAY = "2026-03-01 08:00";
    private static final String NIGHT = "2026-03-01 23:00";

    @Test
    void theNightIsFrom22To6HByTheFarmsClock() {
        NavelHerd herd = new NavelHerd();
        for (String born : List.of("21:59", "22:00", "05:59", "06:00")) {
            herd.calf("a", "2026-03-01 " + born);
        }
        // summer time: 21:30 in Greenwich
        herd.calf("a", "2026-04-01 22:30");
        assertEquals(
                List.of(false, true, true, false, true),
                herd.answer().calves().stream().map(NavelCalf::night).toList());
    }

    @Test
    void aDifferenceThatIsOnlyTheNightsIsAllowedFor() {
        NavelsAnswer answer = nightOnly(10).answer();
        assertEquals(
                (42.0 / 100) / (18.0 / 100),
                answer.late().against().riskRatio().interval().value(),
                1e-12);
        assertEquals(1, answer.late().withinNight().interval().value(), 1e-12);
        assertEquals(List.of(Covariates.NIGHT), answer.late().adjustedRatio().covariates());
        assertEquals(1, answer.late().adjustedRatio().riskRatio().interval().value(), 1e-6);
        assertEquals(200, answer.late().adjustedRatio().calves());
        assertTrue(NavelsWords.answer(answer).plain().endsWith(" With birth at night allowed for it could be chance."));
        assertEquals(
                List.of("intercept", AdjustedDose.DOSE, Covariates.NIGHT),
                answer.late().adjusted().terms().stream()
                        .map(AdjustedDose.Term::name)
                        .toList());
    }

    @Test
    void whereTheCasesDoNotBearItTheNightIsLeftOutAndThatIsSaid() {
        NavelsAnswer answer = nightOnly(2).answer();
        assertEquals(10, answer.late().known().cases());
        assertEquals(
                "With it the model needs 20 cases and as many calves without, ten a term; 10 is the smaller number.",
                answer.late().adjustedRatio().dropped().get(Covariates.NIGHT));
        assertTrue(
                RatioWords.of(answer).plain().contains(" Not allowed for: birth at night. With it the model needs 20"));
        assertTrue(NavelsWords.modelled(answer.late().adjusted())
                .plain()
                .endsWith("Not allowed for: cleanliness, calving ease, colostrum by 6 hours and birth at night."));
    }

    @Test
    void belowFiveCasesNothingIsAdjusted() {
        NavelsAnswer few =
                new NavelHerd().add("a", EARLY, 30, 1).add("a", LATE, 30, 3).answer();
        String why = "Fewer than 5 cases: not adjusted. So few cannot tell one reason from another.";
        assertEquals(why, few.late().adjustedRatio().riskRatio().why());
        assertEquals(why, few.late().adjusted().why());
        assertTrue(few.late().adjusted().terms().isEmpty());
        assertTrue(NavelsWords.modelled(few.late().adjusted()).plain().isEmpty());
        assertEquals(
                "Fewer than 5 calves that were no case: not adjusted. So few cannot tell one reason from another.",
                new NavelHerd()
                        .add("a", EARLY, 30, 27)
                        .add("a", LATE, 30, 29)
                        .answer()
                        .late()
                        .adjusted()
                        .why());
        NavelsAnswer soon = new NavelHerd()
                .add("a", Duration.ofMinutes(5), 30, 1)
                .add("a", LATE, 30, 3)
                .answer();
        assertEquals(
                "What would be avoided if every calf were treated within 15 minutes cannot be said. " + why,
                NavelsWords.avoidable(soon).plain());
        NavelsAnswer five =
                new NavelHerd().add("a", EARLY, 30, 1).add("a", LATE, 30, 4).answer();
        assertTrue(five.late().adjustedRatio().riskRatio().known());
        assertEquals(
                " Read it with care: its one term is kept against the rule of ten a term, which asks for 10 cases;"
                        + " there are 5.",
                five.late().adjustedRatio().withCare());
        assertEquals("", nightOnly(10).answer().late().adjusted().withCare());
    }

    @Test
    void ofNoCalfNothingIsSaidToBeTheSame() {
        assertEquals(
                "No calf has it all on record.",
                Covariates.of(List.of()).dropped().get("cleanliness"));
    }

    @Test
    void whereAModelShowsLessThanTheClassesItSaysWhy() {
        NavelHerd herd =
                new NavelHerd().add("a", EARLY, 100, 10).add("a", LATE, 60, 8).add(null, null, 40, 30);
        String said = NavelsWords.doubling(herd.answer()).plain();
        assertTrue(
                said.contains("it could be chance. 160 treated calves, 18 cases, one pen. It leaves out calves not"),
                said);
        assertTrue(said.contains("so that it holds 160 of 200 and can show less than is said above."), said);
    }

    @Test
    void aSeasonMoreIsATermMoreAndOnlyOneSeasonIsNone() {
        NavelHerd herd = nightOnly(10);
        assertFalse(herd.answer().late().adjustedRatio().dropped().containsKey(Covariates.SEASON));
        WithstandingTest.add(herd, "2025-03-01 08:00", EARLY, 20, 2);
        WithstandingTest.add(herd, "2024-03-01 08:00", LATE, 20, 8);
        Covariates covariates = Covariates.of(herd.answer().calves());
        assertEquals(List.of(Covariates.NIGHT, Covariates.SEASON), covariates.names());
        assertEquals(List.of("night", "season 2025", "season 2026"), covariates.terms());
        assertEquals(5, covariates.design(new double[240])[0].length);
    }

    @Test
    void theCrudeRatioBesideTheAdjustedIsThatOfTheSameCalves() {
        NavelHerd herd = new NavelHerd();
        for (int i = 0; i < 60; i++) {
            var calf = herd.calf("a");
            calf.aged(i % 2 == 0 ? EARLY : LATE, "navel-treated", "");
            if (i < 40) {
                calf.aged(Duration.ofHours(1), "cleanliness-scored", "score: " + i % 3);
            }
            if (i % 5 == 0 || i < 12 && i % 2 == 1) {
                calf.aged(Duration.ofDays(3), "illness-found", "condition: navel-infection");
            }
        }
        LateTreatment late = herd.answer().late();
        assertEquals(40, late.adjustedRatio().calves());
        // of the 40: late 20 with 6 below 12 and 15, 25, 35; early 20 with 0, 10, 20, 30
        assertEquals(
                (9.0 / 20) / (4.0 / 20), late.adjustedRatio().crude().interval().value(), 1e-12);
        assertTrue(RatioWords.of(herd.answer())
                .plain()
                .contains("on the 40 calves with all of that on record (20 have not)"));
    }

    @Test
    void aSeparatedModelSaysThatItIsPenalised() {
        String said = RatioWords.fitted(new NavelHerd()
                .add("a", EARLY, 20, 0)
                .add("a", LATE, 20, 20)
                .answer()
                .late()
                .adjusted());
        assertTrue(
                said.startsWith("Fitted by Firth's penalised likelihood, because the columns separate the outcome."),
                said);
        assertEquals(
                "Fitted by maximum likelihood.",
                RatioWords.fitted(nightOnly(10).answer().late().adjusted()));
    }

    @Test
    void whatCannotBeToldFromTheRecordsIsSaidOfTheUntreated() {
        NavelHerd herd =
                new NavelHerd().add("a", EARLY, 50, 5).add("a", LATE, 40, 12).add("a", null, 10, 6);
        // Katz by hand: 12/40 against 5/50 is 3.0, log error sqrt(1/12 - 1/40 + 1/5 - 1/50) = 0.488: 1.15 to 7.8
        assertEquals(
                "The delay is known for every calf at risk. Late holds 10 calves with no treatment written by 24 hours;"
                        + " some of these may have been treated and nobody wrote it. With all of them left out, the"
                        + " risk ratio of late to early treatment is 3.0 (1.2 to 7.8).",
                MissingDelayWords.of(herd.answer().missing()).plain());
        assertTrue(NavelsWords.needed(herd.answer()).plain().startsWith("As far as chance goes, it is settled"));
        String open = NavelsWords.needed(new NavelHerd()
                        .add("a", EARLY, 100, 10)
                        .add("a", LATE, 100, 15)
                        .answer())
                .plain();
        assertTrue(open.contains("about 1,400 calves") && open.contains("leans on the size seen being the true"), open);
    }

    /** Late births are mostly of the night, when one in two falls ill; by day it is one in ten. All by a factor of ten. */
    private static NavelHerd nightOnly(int factor) {
        NavelHerd herd = new NavelHerd();
        WithstandingTest.add(herd, NIGHT, LATE, 80, 4 * factor);
        WithstandingTest.add(herd, NIGHT, EARLY, 20, factor);
        WithstandingTest.add(herd, DAY, LATE, 20, factor / 5);
        WithstandingTest.add(herd, DAY, EARLY, 80, 4 * (factor / 5));
        return herd;
    }
}
