package wisp.question.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.indicator.Selection;

class SeasonSentencesTest {
    private static final String ALIVE = "alive: true";

    @Test
    void nothingRecordedIsSaidSo() {
        assertEquals(
                List.of("No calf is recorded."), new SeasonBook().answer("all").sentences());
        assertEquals(
                List.of("No calf born in S2 is recorded."),
                new SeasonBook().answer().sentences());
    }

    @Test
    void oneCalfBornJustNowHasNoFigureYet() {
        SeasonBook book = new SeasonBook().born(1, "2026-03-01", ALIVE);
        assertEquals(
                List.of("In S2 one calf was born; no figure of deaths can be given yet."),
                book.answer().sentences());
    }

    @Test
    void oneCalfSaysLittle() {
        SeasonBook book = new SeasonBook().born(1, "2026-03-01", ALIVE).followedTo("2026-09-01 12:00");
        assertEquals(
                "In S2 one calf was born: none of 1 was born dead or died within 24 h (so few that anything from 0 to"
                        + " 79 % fits), and none of 1 died between 24 h and 60 d (so few that anything from 0 to 79 %"
                        + " fits).",
                book.answer().sentences().get(0));
    }

    @Test
    void fiveCalvesAreCountedAndNotPutInPercent() {
        SeasonBook book = new SeasonBook()
                .born(2, "2026-03-01", "alive: false")
                .born(2, "2026-03-01", ALIVE)
                .dead(1, "2026-03-01", 10, ALIVE, "cause: bloat")
                .followedTo("2026-09-01 12:00");
        assertEquals(
                List.of(
                        "In S2 5 calves were born: 2 of 5 were born dead or died within 24 h (so few that anything from"
                                + " 12 to 77 % fits), and 1 of 3 died between 24 h and 60 d (so few that anything from 6"
                                + " to 79 % fits).",
                        "It misses the published target of below 5 %, chance allowed for."),
                book.answer().sentences());
    }

    @Test
    void aChangeBeyondChanceIsSaidWithItsSizeAndWhereTheDeathsAre() {
        SeasonBook book = new SeasonBook()
                .born(196, "2025-03-01", ALIVE)
                .dead(4, "2025-03-01", 10, ALIVE, "")
                .born(170, "2026-03-01", ALIVE)
                .dead(18, "2026-03-01", 10, ALIVE, "cause: diarrhoea")
                .dead(12, "2026-03-01", 40, ALIVE, "")
                .followedTo("2026-09-01 12:00");
        assertEquals(
                List.of(
                        "In S2 200 calves were born: 0.0 % were born dead or died within 24 h (0 of 200; allowing for"
                                + " chance 0.0 to 1.9 %), and 15.0 % died between 24 h and 60 d (30 of 200; allowing for"
                                + " chance 10.7 to 20.6 %).",
                        "Pre-weaning mortality, 24 h to 60 days was 13.0 percentage points higher than in S1 (2.0 %),"
                                + " more than chance (allowing for it, 7.8 to 18.7 percentage points).",
                        "It misses the published target of below 5 %, chance allowed for.",
                        "Of the 30 deaths from 24 h to 60 d, the cause recorded most often is diarrhoea (18); for 12 no"
                                + " cause is recorded; 18 fell at the age of 7 to 28 d."),
                book.answer().sentences());
        assertTrue(book.answer().findings().stream()
                .anyMatch(finding -> finding.text()
                        .startsWith("Pre-weaning mortality, 24 h to 60 days was 15.0 %, 13.0 percentage points higher"
                                + " than in S1 (7.8 to 18.7 percentage points): more than chance.")));
    }

    @Test
    void aSmallChangeCouldBeChanceAndYoungCalvesAreNamed() {
        SeasonBook book = new SeasonBook()
                .born(98, "2025-03-01", ALIVE)
                .dead(2, "2025-03-01", 10, ALIVE, "")
                .born(66, "2026-03-01", ALIVE)
                .dead(4, "2026-03-01", 10, ALIVE, "")
                .born(30, "2026-08-01", ALIVE)
                .followedTo("2026-08-20 06:00");
        List<String> sentences = book.answer().sentences();
        assertTrue(sentences.get(0).endsWith(" 30 calves are not 60 d old yet."), sentences::toString);
        assertTrue(
                sentences.get(1).startsWith("Pre-weaning mortality, 24 h to 60 days was ")
                        && sentences.get(1).contains("; the difference could be chance (anything from "),
                sentences::toString);
        assertEquals(
                "Whether it meets the published target of below 5 % cannot be told: the interval spans the target.",
                sentences.get(2));
    }

    @Test
    void whereTheIntervalLeavesOutNoDifferenceAndTheTestDoesNotTheDirectionIsSaid() {
        SeasonBook book = new SeasonBook()
                .born(40, "2025-03-01", ALIVE)
                .born(35, "2026-03-01", ALIVE)
                .dead(5, "2026-03-01", 10, ALIVE, "")
                .followedTo("2026-09-01 12:00");
        // Fisher's exact test of 5 of 40 against 0 of 40: C(40,5) / C(80,5) × 2 = 0.0547; Wilson's limits 5.5 and 26.1
        // %, 0 and 8.8 %, by
        // MOVER 12.5 − √(7.04² + 8.76²) = 1.3 and 12.5 + 13.6 = 26.1
        assertEquals(
                "Pre-weaning mortality, 24 h to 60 days was 12.5 percentage points higher than in S1 (0 %), and allowing"
                        + " for chance 1.3 to 26.1 percentage points higher, but the exact test gives p = 0.055, so it"
                        + " could be chance.",
                book.answer().sentences().get(1));
    }

    @Test
    void aDifferenceBelowTheDigitsOfBothFiguresIsNone() {
        SeasonBook book = new SeasonBook()
                .born(38, "2025-03-01", ALIVE)
                .dead(1, "2025-03-01", 10, ALIVE, "")
                .born(39, "2026-03-01", ALIVE)
                .dead(1, "2026-03-01", 10, ALIVE, "")
                .followedTo("2026-09-01 12:00");
        String said = book.answer().sentences().get(1);
        assertTrue(
                said.startsWith("Pre-weaning mortality, 24 h to 60 days was about the same as in S1 (3 %); the"
                        + " difference could be chance (anything from "),
                said);
        assertEquals(
                "Whether it meets the published target of below 5 % cannot be told from so few calves.",
                book.answer().sentences().get(2));
    }

    @Test
    void deathsWithoutACauseAreCountedBesideThoseWithOne() {
        SeasonBook book = new SeasonBook()
                .dead(1, "2026-03-01", 10, ALIVE, "cause: diarrhoea")
                .dead(1, "2026-03-01", 10, ALIVE, "cause: pneumonia")
                .dead(3, "2026-03-01", 10, ALIVE, "")
                .followedTo("2026-09-01 12:00");
        List<String> sentences = book.answer().sentences();
        assertEquals(
                "Of the 5 deaths from 24 h to 60 d, 5 fell at the age of 7 to 28 d; no single cause is recorded for more"
                        + " than one of them; for 3 no cause is recorded.",
                sentences.get(sentences.size() - 1));
    }

    @Test
    void theCalvesThatAFilterKeepsAreNamedFirst() {
        SeasonBook book = new SeasonBook()
                .born(3, "2026-03-01", ALIVE + ", sex: female")
                .born(1, "2026-03-01", ALIVE + ", sex: male")
                .followedTo("2026-09-01 12:00");
        Selection female = new Selection("S2", null, null, null, null, null, "female", null, null);
        assertTrue(said(book, female).startsWith("3 female calves were born in S2: none of 3 was "));
        Selection male = new Selection("all", null, null, null, null, null, "male", null, null);
        assertTrue(said(book, male).startsWith("One male calf was born over all seasons: none of 1 was "));
        Selection nowhere = new Selection("S2", null, null, null, null, "loft", null, null, null);
        assertEquals("Among calves born in loft: no calf born in S2 is recorded.", said(book, nowhere));
    }

    @Test
    void filtersStandWithTheCalvesAndBeforeTheSeason() {
        SeasonBook book = new SeasonBook()
                .born(2, "2026-03-01", ALIVE + ", sex: female, pen: loft")
                .followedTo("2026-09-01 12:00");
        LocalDate march = LocalDate.of(2026, 3, 1);
        Selection some = new Selection("S2", march, march.plusMonths(1), null, null, "loft", "female", null, null);
        assertTrue(
                said(book, some)
                        .startsWith("2 female calves were born in loft, from 1 Mar to 31 Mar 2026, in S2: none of 2 "),
                said(book, some));
    }

    @Test
    void whomTheFirstDayLeavesOutIsSaidWithTheReason() {
        SeasonBook book = new SeasonBook()
                .born(3, "2026-03-01", ALIVE)
                .bornAtNoHour(2, "2026-03-01", ALIVE)
                .bornAtNoHour(1, "2026-03-01", "alive: false")
                .followedTo("2026-09-01 12:00");
        assertEquals(
                "The share dead within 24 h leaves out 3 whose hour of birth nobody wrote down, one of them born dead.",
                book.answer().sentences().get(1));
        assertEquals(1, book.answer().bornDeadWithoutHour());
    }

    @Test
    void calvesNotADayOldAreLeftOutToo() {
        SeasonBook book = new SeasonBook()
                .born(3, "2026-03-01", ALIVE)
                .born(1, "2026-08-01", ALIVE)
                .followedTo("2026-08-01 18:00");
        assertEquals(
                "The share dead within 24 h leaves out one not 24 h old yet.",
                book.answer().sentences().get(1));
    }

    private static String said(SeasonBook book, Selection selection) {
        return new SeasonQuestion(SeasonBook.SHIPPED)
                .of(book.cohort(), selection)
                .sentences()
                .get(0);
    }
}
