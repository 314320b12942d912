package wisp.question.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wisp.cohort.Cohort;
import wisp.indicator.Stratum;

/** Each piece of the answer on calves that can be counted on one's fingers. */
class WhereTheDeathsAreTest {
    private static final String ALIVE = "alive: true";

    @Test
    void deathsStandByCauseAndAgeAndWhatIsNotRecordedIsARowOfItsOwn() {
        SeasonBook book = new SeasonBook()
                .dead(1, "2025-03-01", 10, ALIVE, "cause: pneumonia")
                .born(1, "2026-03-01", "alive: false")
                .dead(2, "2026-03-01", 3, ALIVE, "cause: diarrhoea")
                .dead(1, "2026-03-01", 40, ALIVE, "cause: Diarrhoea")
                .dead(1, "2026-03-01", 0, ALIVE, "")
                .dead(1, "2026-03-01", 90, ALIVE, "cause: fell into the slurry")
                .born(3, "2026-03-01", ALIVE)
                .followedTo("2026-09-01 12:00");
        Deaths deaths = book.answer().deaths();
        List<String> rows = deaths.causes().stream()
                .map(cause -> cause.cause() + " "
                        + cause.byAge().values().stream()
                                .map(list -> Integer.toString(list.count()))
                                .collect(Collectors.joining(" "))
                        + ", last season "
                        + cause.lastSeason().values().stream()
                                .map(String::valueOf)
                                .collect(Collectors.joining(" ")))
                .toList();
        assertEquals(
                List.of(
                        "diarrhoea 0 0 2 0 1 0, last season 0 0 0 0 0 0",
                        "fell into the slurry 0 0 0 0 0 1, last season 0 0 0 0 0 0",
                        "pneumonia 0 0 0 0 0 0, last season 0 0 0 1 0 0",
                        "not recorded 0 1 0 0 0 0, last season 0 0 0 0 0 0",
                        "born dead 1 0 0 0 0 0, last season 0 0 0 0 0 0"),
                rows);
        assertEquals(6, deaths.all().total().count());
        assertEquals(3, deaths.all().beforeWeaning());
        assertEquals(1, deaths.all().allLastSeason());
    }

    @Test
    void everyListIsFoundByItsIdAndHoldsItsCalves() {
        SeasonBook book = new SeasonBook()
                .dead(1, "2026-03-01", 3, ALIVE, "cause: diarrhoea")
                .followedTo("2026-09-01 12:00");
        Cohort cohort = book.cohort();
        CalfList list = book.answer().list("deaths.first_week.diarrhoea").orElseThrow();
        assertEquals("Died, 24 h to 7 d, cause: diarrhoea", list.title());
        assertEquals(List.of("C1"), SeasonBook.keys(list, cohort));
        assertTrue(book.answer().list("deaths.first_week.measles").isEmpty());
    }

    @Test
    void birthsStandByWeekFromMondayAndAnEmptyWeekIsAmongThem() {
        SeasonBook book = new SeasonBook()
                .born(2, "2026-03-01", ALIVE) // a Sunday
                .born(1, "2026-03-02", "alive: false") // a Monday
                .born(1, "2026-03-20", ALIVE);
        List<String> weeks = book.answer().births().stream()
                .map(week -> week.monday() + " " + week.born().count() + " " + week.bornDead())
                .toList();
        assertEquals(List.of("2026-02-23 2 0", "2026-03-02 1 1", "2026-03-09 0 0", "2026-03-16 1 0"), weeks);
    }

    @Test
    void theHazardOfAWeekOfLifeIsItsEpisodesOverItsDaysAtRisk() {
        SeasonBook book = new SeasonBook();
        String ill = book.born("2026-03-01", ALIVE);
        book.at(ill, "2026-03-04 06:00", "illness-found", "condition: diarrhoea")
                .at(ill, "2026-03-06 06:00", "recovered", "condition: diarrhoea")
                .at(ill, "2026-03-11 06:00", "illness-found", "condition: diarrhoea")
                .at(ill, "2026-03-12 06:00", "died", "");
        book.born(1, "2026-03-01", ALIVE).followedTo("2026-09-01 12:00");
        AgeHazard diarrhoea = book.answer().hazards().stream()
                .filter(hazard -> hazard.condition().equals("diarrhoea"))
                .findFirst()
                .orElseThrow();
        AgeHazard.Week first = diarrhoea.weeks().get(0);
        AgeHazard.Week second = diarrhoea.weeks().get(1);
        // two calves for 7 days, less an episode of 2; then one to its next illness on day 10, the other for 7
        assertEquals(12, first.calfDays(), 1e-9);
        assertEquals(1000 / 12.0, first.hazard().value(), 1e-9);
        assertEquals(3 + 7, second.calfDays(), 1e-9);
        assertEquals(1, second.episodes().count());
        assertEquals(9, diarrhoea.weeks().size());
        assertEquals(
                4, diarrhoea.weeks().get(8).toDays() - diarrhoea.weeks().get(8).fromDays(), 1e-9);
    }

    @Test
    void illnessStandsByCalendarWeekBesideTheDaysOfCalvesPresent() {
        SeasonBook book = new SeasonBook();
        String ill = book.born("2026-03-02", ALIVE); // a Monday, 06:00
        book.at(ill, "2026-03-08 23:00", "illness-found", "condition: pneumonia")
                .at(ill, "2026-03-10 06:00", "died", "");
        IllnessCalendar pneumonia = book.followedTo("2026-09-01 12:00").answer().calendars().stream()
                .filter(calendar -> calendar.condition().equals("pneumonia"))
                .findFirst()
                .orElseThrow();
        assertEquals(2, pneumonia.weeks().size());
        assertEquals(1, pneumonia.weeks().get(0).episodes().count());
        assertEquals(6.75, pneumonia.weeks().get(0).calfDays(), 1e-9);
        assertEquals(1.25, pneumonia.weeks().get(1).calfDays(), 1e-9);
    }

    @Test
    void survivalEndsAtOneMinusTheMortalityFigure() {
        SeasonAnswer answer = new SeasonBook()
                .dead(1, "2026-03-01", 10, ALIVE, "")
                .born(3, "2026-03-01", ALIVE)
                .followedTo("2026-09-01 12:00")
                .answer();
        SurvivalByAge curve = answer.survival().get(0);
        SurvivalByAge.Step last = curve.steps().get(curve.steps().size() - 1);
        assertEquals(0.75, last.survival(), 1e-12);
        assertEquals(60, last.ageDays(), 1e-9);
        assertEquals(10.25, curve.steps().get(1).ageDays(), 1e-9);
        assertEquals(
                1
                        - SeasonBook.figure(answer, "preweaning-mortality")
                                .estimate()
                                .interval()
                                .value(),
                last.survival(),
                1e-12);
        assertEquals(
                List.of(4, 4, 3, 3, 3, 3, 3),
                curve.atRisk().stream().map(SurvivalByAge.AtRisk::calves).toList());
    }

    @Test
    void aPlaceThatWasEverBeddedIsACalvingPenAndAnyOtherIsElsewhere() {
        SeasonBook book = new SeasonBook()
                .at("boxes", "2026-02-01 09:00", "pen-bedded", "")
                .born(2, "2026-03-01", ALIVE + ", pen: boxes")
                .dead(1, "2026-03-01", 10, ALIVE + ", pen: field", "")
                .born(1, "2026-03-01", ALIVE)
                .followedTo("2026-09-01 12:00");
        List<String> places = book.answer().strata().lines(Stratum.PLACE).stream()
                .map(line -> line.group().name() + " " + line.group().numerator() + " of "
                        + (int) line.group().denominator())
                .toList();
        assertEquals(List.of("calving pen 0 of 2", "elsewhere 1 of 1", "not recorded 0 of 1"), places);
    }

    @Test
    void whereNobodyBedsOrCleansItIsNotKnownWhatACalvingPenIs() {
        SeasonBook book =
                new SeasonBook().born(2, "2026-03-01", ALIVE + ", pen: field").followedTo("2026-09-01 12:00");
        List<StrataTable.Line> places = book.answer().strata().lines(Stratum.PLACE);
        assertEquals(
                List.of(Stratum.NOT_RECORDED),
                places.stream().map(line -> line.group().name()).toList());
    }

    @Test
    void ofTwoGroupsOneComparisonIsCountedAndBothCarryIt() {
        SeasonBook book = new SeasonBook()
                .dead(10, "2026-03-01", 10, ALIVE + ", sex: male", "")
                .born(2, "2026-03-01", ALIVE + ", sex: male")
                .born(12, "2026-03-01", ALIVE + ", sex: female")
                .followedTo("2026-09-01 12:00");
        StrataTable strata = book.answer().strata();
        List<StrataTable.Line> sexes = strata.lines(Stratum.SEX);
        assertEquals(1, strata.comparisons());
        assertEquals(sexes.get(0).adjustedP(), sexes.get(1).adjustedP());
        assertTrue(sexes.stream().allMatch(line -> line.chance() == Chance.MORE_THAN_CHANCE));
    }

    @Test
    void theClassesOfPassiveTransferBeginAtTheirEdges() {
        SeasonBook book = new SeasonBook();
        for (String test : List.of(
                "igg_g_l: 25.0",
                "igg_g_l: 24.99",
                "serum_protein_g_dl: 5.1",
                "serum_brix_percent: 8.0",
                "igg_g_l: 9.9, serum_protein_g_dl: 7.0")) {
            book.at(book.born("2026-03-01", ALIVE), "2026-03-04 12:00", "blood-tested", test);
        }
        List<String> classes = book.followedTo("2026-09-01 12:00").answer().transfer().stream()
                .map(share -> share.of().words() + " " + share.calves().count() + " of " + share.tested())
                .toList();
        assertEquals(List.of("excellent 1 of 5", "good 1 of 5", "fair 1 of 5", "poor 2 of 5"), classes);
    }
}
