package wisp.question.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import wisp.indicator.Comparison;
import wisp.indicator.Estimate;
import wisp.indicator.Target;

/** Drawn seasons: no sentence claims more than its interval allows, and every total is the length of its list. */
class SeasonChanceTest {
    private static final long SEED = 20260301;
    private static final int SEASONS = 120;

    /** Two seasons of calves that die with these probabilities, in pens that make no difference. */
    private static SeasonAnswer drawn(Random random, int calves, double before, double now) {
        SeasonBook book = new SeasonBook();
        String[] pens = {"a", "b", "c"};
        String[] causes = {"", "cause: diarrhoea", "cause: pneumonia"};
        for (int i = 0; i < 2 * calves; i++) {
            boolean last = i < calves;
            String day = (last ? "2025" : "2026") + "-0" + (1 + random.nextInt(3)) + "-1" + random.nextInt(9);
            String fields = "sex: " + (random.nextBoolean() ? "male" : "female") + ", dam_parity: "
                    + (1 + random.nextInt(4)) + ", pen: " + pens[random.nextInt(3)];
            if (random.nextDouble() < (last ? before : now)) {
                book.dead(1, day, 2 + random.nextInt(50), "alive: true, " + fields, causes[random.nextInt(3)]);
            } else {
                String key = book.born(day, "alive: " + (random.nextInt(20) > 0) + ", " + fields);
                if (random.nextInt(3) == 0) {
                    book.at(key, day + " 18:00", "illness-found", "condition: diarrhoea");
                }
            }
        }
        return book.followedTo("2026-09-01 12:00").answer();
    }

    @Test
    void whatIsSaidIsWhatTheIntervalsSay() {
        System.out.println("seed " + SEED);
        Random random = new Random(SEED);
        for (int i = 0; i < SEASONS / 2; i++) {
            SeasonAnswer answer = drawn(random, 5 + random.nextInt(60), 0.1, random.nextDouble() * 0.5);
            Estimate deaths = SeasonBook.figure(answer, "preweaning-mortality").estimate();
            Comparison comparison = deaths.comparison();
            String said = String.join(" ", answer.sentences());
            boolean apart =
                    comparison.difference().low() > 0 || comparison.difference().high() < 0;
            assertEquals(apart && comparison.p() < 0.05, said.contains("more than chance"), said);
            assertEquals(!(apart && comparison.p() < 0.05), said.contains("could be chance"), said);
            if (said.contains("points higher than in S1")) {
                assertTrue(comparison.difference().value() > 0, said);
            } else if (said.contains("points lower than in S1")) {
                assertTrue(comparison.difference().value() < 0, said);
            }
            assertEquals(apart && !(comparison.p() < 0.05), said.contains("but the exact test gives p = "), said);
            words(answer, deaths, said);
            assertEquals(deaths.interval().high() < 0.05, said.contains("It meets"), said);
            assertEquals(deaths.interval().low() >= 0.05, said.contains("It misses"), said);
            findings(answer);
            totals(answer);
        }
    }

    /** What is pending, without a cause, few or alike is said so, in words that the counts bear out. */
    private static void words(SeasonAnswer answer, Estimate deaths, String said) {
        assertFalse(
                said.contains("Of these")
                        || said.contains("so many calves")
                        || said.matches(".*[^\\d]0\\.0 percentage.*"),
                said);
        assertEquals(deaths.denominator() < 100, !said.contains("the interval spans"), said);
        Comparison comparison = deaths.comparison();
        boolean alike = Math.abs(comparison.difference().value()) < 0.005;
        assertEquals(alike, said.contains("about the same as in S1"), said);
        int none = answer.deaths().causes().stream()
                .filter(cause -> cause.cause().equals(Deaths.NOT_RECORDED))
                .mapToInt(Deaths.Cause::beforeWeaning)
                .sum();
        if (said.contains(" deaths from 24 h to 60 d, ") && none > 1 && !said.contains("for any of them")) {
            assertTrue(said.contains("for " + none + " no cause is recorded"), said);
        }
        answer.deaths()
                .causes()
                .forEach(cause -> assertEquals(
                        DeathAge.values().length, cause.lastSeason().size()));
    }

    private static void findings(SeasonAnswer answer) {
        for (Finding finding : answer.findings()) {
            if (finding.by() == null) {
                SeasonFigure figure = SeasonBook.figure(answer, finding.figure());
                boolean missed = figure.estimate().standing() == Target.Standing.MISSED;
                assertTrue(missed || figure.adjustedP() < 0.05, finding::text);
            } else {
                assertTrue(
                        answer.strata().lines(finding.by()).stream()
                                .anyMatch(
                                        line -> line.group().name().equals(finding.group()) && line.adjustedP() < 0.05),
                        finding::text);
            }
        }
    }

    private static void totals(SeasonAnswer answer) {
        assertEquals(
                answer.calves(),
                answer.births().stream().mapToInt(week -> week.born().count()).sum());
        assertEquals(
                answer.deaths().all().total().count(),
                answer.deaths().causes().stream()
                        .mapToInt(cause -> cause.byAge().values().stream()
                                .mapToInt(CalfList::count)
                                .sum())
                        .sum());
        assertEquals(
                SeasonBook.figure(answer, "preweaning-mortality").estimate().numerator(),
                answer.deaths().all().beforeWeaning());
        for (AgeHazard hazard : answer.hazards()) {
            Estimate rate =
                    SeasonBook.figure(answer, hazard.condition() + "-rate").estimate();
            assertEquals(rate.numerator(), hazard.episodes());
            assertEquals(
                    rate.denominator(),
                    hazard.weeks().stream()
                            .mapToDouble(AgeHazard.Week::calfDays)
                            .sum(),
                    1e-6);
        }
        for (IllnessCalendar calendar : answer.calendars()) {
            Estimate rate =
                    SeasonBook.figure(answer, calendar.condition() + "-rate").estimate();
            assertEquals(rate.numerator(), calendar.episodes());
        }
    }

    @Test
    void twoSeasonsAlikeAreSeldomSaidToDiffer() {
        System.out.println("seed " + (SEED + 1));
        Random random = new Random(SEED + 1);
        int alarms = 0;
        int groups = 0;
        for (int i = 0; i < SEASONS; i++) {
            SeasonAnswer answer = drawn(random, 60, 0.15, 0.15);
            alarms += String.join(" ", answer.sentences()).contains("more than chance") ? 1 : 0;
            groups += answer.strata().standingOut().isEmpty() ? 0 : 1;
        }
        // of 120 seasons 6 are expected; more than 13 has a probability of 0.002 (binomial, 0.05)
        assertTrue(alarms <= 13, alarms + " of " + SEASONS);
        assertTrue(groups <= 13, groups + " of " + SEASONS);
    }

    @Test
    void aRealDoublingIsFoundInALargeHerd() {
        SeasonAnswer answer = drawn(new Random(SEED + 2), 600, 0.05, 0.12);
        assertTrue(String.join(" ", answer.sentences()).contains("more than chance"));
    }
}
