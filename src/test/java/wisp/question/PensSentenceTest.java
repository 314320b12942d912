package wisp.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class PensSentenceTest {
    private static String first(PenBook book) {
        return book.answer().sentences().get(0);
    }

    @Test
    void anEmptyLogHasNothingToSay() {
        assertEquals("No calf of all seasons is on record, so there is nothing to say of pens.", first(new PenBook()));
    }

    @Test
    void calvesWithoutAScoreCannotBeCompared() {
        PenBook book = new PenBook();
        book.born("A");
        assertEquals("No calf of 2026 was scored for cleanliness in time, so pens cannot be compared.", first(book));
    }

    @Test
    void calvesWithoutAPenCannotBeCompared() {
        PenBook book = new PenBook();
        book.scored(null, 2);
        assertEquals(
                "One calf was scored of 2026, but nobody wrote down where, so pens cannot be compared.", first(book));
    }

    @Test
    void oneCalfSaysNothingOfItsPen() {
        assertEquals(
                List.of(
                        "Only A has calves scored: 1 of 1 dirty (100 %; allowing for chance 21 to 100 %).",
                        "With one pen there is nothing to compare it with."),
                new PenBook().pen("A", 1, 1).answer().sentences());
    }

    @Test
    void fiveCalvesInTwoPensAreTooFew() {
        assertEquals(
                "No pen can be called dirtier than the others: 2 of 5 (40 %) calves of 2026 were dirty, and what"
                        + " separates the pens could be chance. So few calves could only show very large differences.",
                first(new PenBook().pen("A", 0, 3).pen("B", 2, 2)));
    }

    @Test
    void nobodyDirtyIsGoodNews() {
        assertEquals(
                "None of the 11 calves scored of 2026 was dirty, in any pen.",
                first(new PenBook().pen("A", 0, 6).pen("B", 0, 5)));
    }

    @Test
    void everybodyDirtyPointsAtNoPen() {
        assertEquals(
                "All 11 calves scored of 2026 were dirty, in every pen, so no pen stands out.",
                first(new PenBook().pen("A", 6, 6).pen("B", 5, 5)));
    }

    @Test
    void onePenIsNamedWithItsCounts() {
        assertEquals(
                "North gave more dirty calves than the other pens, by more than chance: 20 of 40 (50 %) against 12 of 120"
                        + " (10 %).",
                first(new PenBook().pen("north", 20, 40).pen("east", 6, 60).pen("west", 6, 60)));
    }

    @Test
    void severalPensAreNamedTheLargestFirst() {
        assertEquals(
                "More dirty calves than elsewhere, by more than chance, came from far (30 of 50, 60 %) and near (24 of 40,"
                        + " 60 %); over all pens it was 60 of 390 (15 %); rest gave fewer (6 of 300).",
                first(new PenBook().pen("near", 24, 40).pen("far", 30, 50).pen("rest", 6, 300)));
    }

    @Test
    void aCleanerPenIsNamedWhereNoneIsDirtier() {
        String sentence = first(new PenBook()
                .pen("A", 30, 60)
                .pen("B", 31, 60)
                .pen("C", 29, 60)
                .pen("D", 30, 60)
                .pen("E", 2, 40));
        assertEquals(
                "No pen can be called the dirtiest, but fewer dirty calves than elsewhere, by more than chance, came from"
                        + " E (2 of 40, 5 %); over all pens 122 of 280 (44 %) calves of 2026 were dirty.",
                sentence);
    }

    @Test
    void aCleanerPenIsSaidBesideTheDirtierOnes() {
        PenBook book = new PenBook()
                .pen("north", 45, 60)
                .pen("A", 30, 100)
                .pen("B", 30, 100)
                .pen("C", 30, 100)
                .pen("east", 2, 60);
        assertEquals(
                "North gave more dirty calves than the other pens, by more than chance: 45 of 60 (75 %) against 92 of 360"
                        + " (26 %); east gave fewer (2 of 60).",
                first(book));
    }

    @Test
    void severalCleanerPensAreNamedWithTheirCounts() {
        String sentence = first(new PenBook()
                .pen("north", 90, 100)
                .pen("A", 40, 100)
                .pen("B", 40, 100)
                .pen("C", 40, 100)
                .pen("east", 2, 60)
                .pen("west", 3, 60));
        assertTrue(
                sentence.endsWith("; fewer than elsewhere came from east (2 of 60, 3 %) and west (3 of 60, 5 %)."),
                sentence);
    }

    @Test
    void inAHugeHerdASmallDifferenceIsSeenAndSaid() {
        assertEquals(
                "B gave more dirty calves than the other pens, by more than chance: 2,700 of 10,000 (27 %) against 2,500"
                        + " of 10,000 (25 %).",
                first(new PenBook().pen("A", 2_500, 10_000).pen("B", 2_700, 10_000)));
    }

    @Test
    void sharesThatAreSaidToDifferReadAsDifferent() {
        List<DirtyShare> shares = List.of(DirtyShare.of("A", 24_500, 99_000), DirtyShare.of("B", 25_100, 99_500));
        assertTrue(PenContrast.all(shares, List.of(shares.get(1), shares.get(0)))
                .get(1)
                .moreThanChance());
        int places = Percent.apart(shares.get(0).share(), shares.get(1).share());
        assertEquals(
                "24.7 % 25.2 %",
                Percent.of(shares.get(0).share(), places) + " "
                        + Percent.of(shares.get(1).share(), places));
    }

    @Test
    void twoPensAreToldApartTogetherOnlyWhereOneIsTheDirtier() {
        PensAnswer answer = new PenBook().pen("A", 8, 25).pen("B", 15, 25).answer();
        // Pearson without correction: 50 (8 * 10 - 17 * 15)^2 / (25 * 25 * 23 * 27) = 3.945, p 0.047; Fisher's 0.087
        assertTrue(answer.homogeneity().moreThanChance());
        assertFalse(answer.differTogether());
        assertFalse(answer.sentences().get(0).contains("more than chance"), answer.sentences()::toString);
    }

    /** A dirty pen whose bedding lies so many days, beside three whose bedding lies one day. */
    private static PenBook bedded(int days, int dirtyWhereNew) {
        PenBook book = new PenBook();
        String bedded = LocalDate.of(2026, 1, 2).minusDays(days - 1).toString();
        book.events().add("pen-bedded", "north", bedded + " 06:00", "");
        for (String pen : List.of("east", "south", "west")) {
            book.events().add("pen-bedded", pen, "2026-01-01 06:00", "");
        }
        return book.pen("north", 14, 20)
                .pen("east", dirtyWhereNew, 20)
                .pen("south", 3, 20)
                .pen("west", 2, 20);
    }

    @Test
    void beddingIsSetBesideTheOtherPensAndItsPartStaysOpen() {
        List<String> sentences = bedded(5, 3).answer().sentences();
        String bedding = sentences.stream()
                .filter(line -> line.startsWith("Bedding in north had lain 4."))
                .findFirst()
                .orElseThrow(() -> new AssertionError(sentences));
        assertTrue(bedding.contains(" in the other bedded pens (medians)."), bedding);
        assertTrue(bedding.contains("Whether that is the reason stays open"), bedding);
    }

    @Test
    void thePensOwnCalvesAreNotAmongTheOthers() {
        PenShare north = bedded(5, 3).answer().pens().stream()
                .filter(pen -> pen.pen().equals("north"))
                .findFirst()
                .orElseThrow();
        assertTrue(north.daysSinceBedding() > 4, north::toString);
        assertTrue(north.daysElsewhere() < 2, north::toString);
    }

    @Test
    void beddingThatLayNoLongerIsNotBroughtUp() {
        List<String> sentences = bedded(1, 3).answer().sentences();
        assertTrue(sentences.get(0).startsWith("North gave more dirty calves"), sentences::toString);
        assertFalse(String.join(" ", sentences).contains("Bedding in"), sentences::toString);
    }

    @Test
    void inAHugeHerdWithoutADifferenceNothingIsClaimed() {
        String sentence = first(new PenBook().pen("A", 2_500, 10_000).pen("B", 2_510, 10_000));
        assertFalse(sentence.contains("more than chance"), sentence);
    }
}
