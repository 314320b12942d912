package wisp.question.navels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wisp.simulation.StandardModel;
import wisp.testing.Calf;

class WithstandingTest {
    private static final Duration EARLY = Duration.ofMinutes(20);
    private static final Duration LATE = Duration.ofHours(3);

    @Test
    void unwrittenDelaysPlacedWorstTakeTheClaimBack() {
        NavelHerd herd = new NavelHerd().add("a", EARLY, 100, 10).add("a", LATE, 100, 24);
        assertEquals("", Withstanding.of(herd.answer()));
        // Katz by hand: 24 of 101 against 11 of 101 is 2.18, log error sqrt(1/24 + 1/11 - 2/101) = 0.336: 1.13 to 4.2
        unwritten(herd, 2, 1);
        assertEquals(
                " It stays so with the delays that nobody wrote down placed worst.", Withstanding.of(herd.answer()));
        assertTrue(NavelsWords.needed(herd.answer())
                .plain()
                .startsWith("As far as chance goes, it is settled that calves treated late fared worse than those"
                        + " treated early."));
        unwritten(herd, 8, 6);
        assertEquals(
                "Whether calves treated late fare otherwise than those treated early is not settled: the bare difference"
                        + " between late and early is more than chance alone makes likely, but with the delays that"
                        + " nobody wrote down placed worst it could be chance.",
                NavelsWords.needed(herd.answer()).plain());
        assertEquals(
                " It would not hold if the delays that nobody wrote down were placed worst: then it could be chance.",
                Withstanding.of(herd.answer()));
    }

    @Test
    void aDifferenceThatIsOnlyTheSeasonsDoesNotStay() {
        NavelHerd herd = new NavelHerd();
        add(herd, "2025-03-01 08:00", EARLY, 100, 5);
        add(herd, "2025-03-01 08:00", LATE, 20, 1);
        add(herd, "2026-03-01 08:00", EARLY, 20, 6);
        add(herd, "2026-03-01 08:00", LATE, 100, 30);
        NavelsAnswer answer = herd.answer();
        assertEquals(2, answer.late().against().mantelHaenszel().seasons());
        assertTrue(answer.late().against().moreThanChance());
        assertEquals(1, answer.late().withinSeasons().interval().value(), 1e-12);
        assertEquals(
                1,
                answer.late().against().mantelHaenszel().riskRatio().interval().value(),
                1e-12);
        assertEquals(1, answer.late().adjustedRatio().riskRatio().interval().value(), 1e-6);
        assertEquals(" With season allowed for it could be chance.", Withstanding.of(answer));
    }

    @Test
    void seasonsThatTheModelCannotBearAreComparedOneByOne() {
        NavelHerd herd = new NavelHerd();
        add(herd, "2025-03-01 08:00", EARLY, 80, 0);
        add(herd, "2025-03-01 08:00", LATE, 10, 0);
        add(herd, "2026-03-01 08:00", EARLY, 8, 3);
        add(herd, "2026-03-01 08:00", LATE, 40, 15);
        NavelsAnswer answer = herd.answer();
        assertTrue(answer.late().adjustedRatio().dropped().containsKey(Covariates.SEASON));
        assertEquals(" Within seasons it could be chance.", Withstanding.of(answer));
    }

    @Test
    void itNeverClaimsMoreThanWhatWasWithstood() {
        long seed = 20261125;
        System.out.println("navels headlines with delays unwritten, seed " + seed);
        SplittableRandom random = new SplittableRandom(seed);
        int stays = 0;
        int takenBack = 0;
        for (int round = 0; round < 60; round++) {
            NavelHerd herd = new NavelHerd();
            int late = random.nextInt(4) == 0 ? 0 : 12 + random.nextInt(20);
            herd.add("a", EARLY, 60, 2 + random.nextInt(8)).add("a", LATE, 60, late);
            int unknown = random.nextInt(14);
            unwritten(herd, unknown, unknown == 0 ? 0 : random.nextInt(unknown));
            NavelsAnswer answer = herd.answer();
            String said = NavelsWords.answer(answer).plain();
            check(answer, "seed " + seed + ", round " + round + ": " + said);
            stays += said.contains("It stays so") ? 1 : 0;
            takenBack += said.contains("It would not hold") ? 1 : 0;
        }
        assertTrue(stays > 0 && takenBack > 0, stays + " stayed, " + takenBack + " were taken back");
    }

    @Test
    void onLargeSimulatedSeasonsNeither() {
        int claimed = 0;
        for (long seed = 31; seed <= 38; seed++) {
            NavelsAnswer answer = NavelHerd.answer(NavelHerd.simulated(StandardModel.model(), 500, seed));
            check(
                    answer,
                    "simulated season of seed " + seed + ": "
                            + NavelsWords.answer(answer).plain());
            claimed += answer.late().against().moreThanChance() ? 1 : 0;
        }
        assertTrue(claimed > 0, "of eight large seasons some must show the stated effect");
    }

    /** That the headline claims no more than covariates, seasons and the worst placing allow. */
    static void check(NavelsAnswer answer, String text) {
        LateTreatment late = answer.late();
        String said = NavelsWords.answer(answer).plain();
        boolean claims = late.against().moreThanChance();
        boolean stays = said.contains("It stays so") || said.contains("this holds");
        assertFalse(stays && !claims, text);
        if (!claims) {
            assertFalse(said.contains("placed worst"), text);
            return;
        }
        double ratio = late.against().riskRatio().interval().value();
        boolean unwritten =
                answer.missing().calves() == 0 || sameSide(answer.missing().worst(ratio), ratio);
        boolean modelled = !late.adjustedRatio().riskRatio().known()
                || late.adjustedRatio().covariates().isEmpty()
                || sameSide(late.adjustedRatio().riskRatio(), ratio);
        boolean seasons = late.against().mantelHaenszel().seasons() < 2
                || late.adjustedRatio().covariates().contains(Covariates.SEASON)
                || sameSide(late.withinSeasons(), ratio);
        assertFalse(said.contains("It stays so") && !(unwritten && modelled && seasons), text);
        assertFalse(stays && !(modelled && seasons), text);
        assertEquals(!unwritten, said.contains(" worst: then ") || said.contains("placed worst, "), text);
    }

    private static boolean sameSide(Measured one, double ratio) {
        return one.excludes(1) && one.interval().value() > 1 == ratio > 1;
    }

    private static void unwritten(NavelHerd herd, int all, int sick) {
        for (int i = 0; i < all; i++) {
            Calf calf = herd.calf("a");
            calf.at("2026-03-01", "navel-treated", "");
            if (i < sick) {
                calf.aged(Duration.ofDays(3), "illness-found", "condition: navel-infection");
            }
        }
    }

    static void add(NavelHerd herd, String born, Duration delay, int all, int sick) {
        for (int i = 0; i < all; i++) {
            Calf calf = herd.calf("a", born);
            calf.aged(delay, "navel-treated", "product: iodine, method: dip");
            if (i < sick) {
                calf.aged(Duration.ofDays(3), "illness-found", "condition: navel-infection");
            }
        }
    }
}
