package wisp.question.navels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wisp.simulation.StandardModel;

class NavelsSentenceTest {
    private static final Duration EARLY = Duration.ofMinutes(20);
    private static final Duration LATE = Duration.ofHours(3);
    private static final String MORE = "more than chance alone makes likely";

    @Test
    void withNothingRecordedItSaysSo() {
        assertEquals("No calf born over all seasons is recorded.", said(new NavelHerd()));
    }

    @Test
    void beforeAnybodyIs24HoursOldItSaysSo() {
        assertEquals(
                "Nothing can be said over all seasons yet: no calf of known hour of birth has passed 24 hours of age"
                        + " alive, present and free of navel infection.",
                said(new NavelHerd().followedTo("2026-03-01 20:00").add("a", EARLY, 3, 0)));
    }

    @Test
    void oneCalfIsOneCalf() {
        assertEquals(
                "The one calf treated within 60 minutes of birth had a navel infection between 24 hours and 21 days of age (risk 100 %;"
                        + " allowing for chance, 21 to 100 %). No calf was treated later or not at all, so that there is"
                        + " nothing to compare over all seasons.",
                said(new NavelHerd().add("a", EARLY, 1, 1)));
        assertEquals(
                "The one calf with a known delay to navel treatment had no navel infection between 24 hours and 21 days of age, so that"
                        + " early and late treatment cannot be told apart over all seasons. Allowing for chance, the risk"
                        + " may still be as high as 79 %.",
                said(new NavelHerd().add("a", LATE, 1, 0)));
    }

    @Test
    void fiveCalvesCanShowLittle() {
        // Newcombe by hand: 0.5 - sqrt((0.5 - 0.0945)^2 + 0.5615^2) = -0.193
        assertEquals(
                "Of the 3 calves treated within 60 minutes of birth, none had a navel infection between 24 hours and 21 days of age (risk"
                        + " 0 %; allowing for chance, 0 to 56 %); of the 2 treated later or not by 24 hours, 1 did (risk"
                        + " 50 %; allowing for chance, 9 to 91 %). That is 50 percentage points more, but it could be"
                        + " chance: the records fit anything from 19 fewer to 91 more. With so few calves in one"
                        + " group only a very large difference could show.",
                said(new NavelHerd().add("a", EARLY, 3, 0).add("a", LATE, 2, 1)));
    }

    @Test
    void unknownDelaysAloneSayNothing() {
        NavelHerd herd = new NavelHerd();
        herd.calf("a").at("2026-03-01", "navel-treated", "");
        assertEquals(
                "Nothing can be said over all seasons: how soon the navel was treated is not known for the one calf at"
                        + " risk.",
                said(herd));
    }

    @Test
    void aLargeDifferenceAmongManyIsSaidToBeMoreThanChance() {
        String said = said(new NavelHerd().add("a", EARLY, 1200, 120).add("a", LATE, 1100, 220));
        assertEquals(
                "Of the 1,200 calves treated within 60 minutes of birth, 120 had a navel infection between 24 hours and 21 days of age"
                        + " (risk 10.0 %; allowing for chance, 8.4 to 11.8 %); of the 1,100 treated later or not by 24"
                        + " hours, 220 did (risk 20.0 %; allowing for chance, 17.7 to 22.5 %). That is 2.0 times the"
                        + " risk, more than chance alone makes likely: the records fit 1.6 to 2.5 times.",
                said);
    }

    @Test
    void noDifferenceIsNoDifference() {
        assertTrue(said(new NavelHerd().add("a", EARLY, 40, 4).add("a", LATE, 40, 4))
                .contains("The two risks are about the same, but the records fit anything from "));
    }

    @Test
    void aRatioJustAboveOneIsNotRoundedToOne() {
        assertEquals("1.04", Plain.ratio(1.04));
        assertEquals("1.00", Plain.ratio(1.004), "a third place would be false precision");
        assertEquals("1.00", Plain.ratio(0.997));
        assertEquals("0.96", Plain.ratio(0.96));
        assertEquals("2.1", Plain.ratio(2.1));
        assertEquals("12", Plain.ratio(12.4));
    }

    @Test
    void itNeverClaimsMoreThanTheIntervalsAllow() {
        long seed = 20260301;
        System.out.println("navels sentences, seed " + seed);
        SplittableRandom random = new SplittableRandom(seed);
        int claimed = 0;
        for (int round = 0; round < 150; round++) {
            double risk = random.nextDouble() * 0.5;
            NavelHerd herd = new NavelHerd();
            for (Duration delay : new Duration[] {EARLY, LATE, null}) {
                int all = random.nextInt(random.nextBoolean() ? 4 : 60);
                int sick = 0;
                for (int i = 0; i < all; i++) {
                    sick += random.nextDouble() < risk * (delay == EARLY ? 0.5 : 1) ? 1 : 0;
                }
                herd.add("a", delay, all, sick);
            }
            claimed += check(herd.answer(), "seed " + seed + ", round " + round);
        }
        assertTrue(claimed > 0, "with half the risk among the early some herds must show it");
    }

    @Test
    void onSimulatedSeasonsTooItNeverClaimsMore() {
        for (long seed = 1; seed <= 12; seed++) {
            NavelsAnswer answer = NavelHerd.answer(NavelHerd.simulated(StandardModel.model(), 150, seed));
            check(answer, "simulated season of seed " + seed);
        }
    }

    /** 1 where more than chance is claimed. */
    private static int check(NavelsAnswer answer, String which) {
        String said = NavelsWords.answer(answer).plain();
        TwoGroups against = answer.late().against();
        String text = which + ": " + said;
        assertFalse(said.contains("NaN") || said.contains("Infinity") || said.contains("null"), text);
        assertTrue(said.endsWith("."), text);
        boolean claims = said.contains(MORE);
        if (claims) {
            assertTrue(against.riskRatio().excludes(1), text);
            assertTrue(against.ratioAt21Days().excludes(1), text);
            assertTrue(against.fisher().p() < 0.05, text);
            assertFalse(said.contains("but it could be chance"), text);
        } else if (against.riskRatio().known()
                && answer.late().early().n() > 0
                && answer.late().late().n() > 0
                && answer.late().known().cases() > 0) {
            assertTrue(
                    said.contains("could be chance")
                            || said.contains("about the same")
                            || said.contains("cannot be compared"),
                    text);
        }
        WithstandingTest.check(answer, text);
        boolean settled = NavelsWords.needed(answer).plain().startsWith("As far as chance goes, it is settled");
        assertEquals(claims && Withstanding.whole(answer), settled, text);
        assertEquals(
                claims && !settled,
                NavelsWords.needed(answer)
                        .plain()
                        .contains("bare difference between late and early is more than chance"),
                text);
        assertFalse(claims && NavelsWords.needed(answer).plain().contains("takes about"), text);
        Measured avoided = answer.avoidable().avoided();
        boolean sure = avoided.known()
                && (avoided.interval().low() > 0 || avoided.interval().high() < 0);
        assertEquals(
                avoided.known() && !sure,
                NavelsWords.avoidable(answer).plain().contains("could be nothing at all"),
                text);
        assertFalse(NavelsWords.trend(answer).contains(MORE) && answer.trend().p() >= 0.05, text);
        return claims ? 1 : 0;
    }

    private static String said(NavelHerd herd) {
        return NavelsWords.answer(herd.answer()).plain();
    }
}
