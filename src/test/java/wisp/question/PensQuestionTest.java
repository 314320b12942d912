package wisp.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.statistics.TwoByTwoTable;
import wisp.testing.Calf;

class PensQuestionTest {
    private static PenShare pen(PensAnswer answer, String name) {
        return answer.pens().stream()
                .filter(pen -> pen.pen().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Four pens' calves that anybody can count. */
    private static PenBook small() {
        PenBook book = new PenBook().pen("A", 1, 4).pen("B", 3, 4);
        book.born("A").aged(Duration.ofHours(13), "cleanliness-scored", "score: 3");
        book.born("A").aged(Duration.ofHours(12), "cleanliness-scored", "score: 1");
        Calf moved = book.born("A");
        moved.aged(Duration.ofHours(2), "cleanliness-scored", "score: 3, pen: C");
        moved.aged(Duration.ofHours(3), "cleanliness-scored", "score: 0, pen: A");
        book.scored(null, 2);
        book.born("D");
        return book;
    }

    @Test
    void theFirstScoreByTwelveHoursCountsForThePenWhereItWasGiven() {
        PensAnswer answer = small().answer();
        assertEquals(
                List.of("A", "B", "C"),
                answer.pens().stream().map(PenShare::pen).toList());
        assertEquals(5, pen(answer, "A").share().n());
        assertEquals(1, pen(answer, "A").share().dirty());
        assertEquals(1, pen(answer, "C").share().dirty());
        assertEquals(10, answer.overall().n());
        assertEquals(5, answer.overall().dirty());
        assertEquals(1, answer.noPen());
        assertEquals(List.of("D"), answer.unscored());
    }

    @Test
    void meanScoreAndDistanceAreThoseOfPaper() {
        PensAnswer answer = small().answer();
        assertEquals((2 + 0 + 0 + 0 + 1) / 5.0, pen(answer, "A").meanScore(), 1e-12);
        assertEquals((0.2 - 0.5) / Math.sqrt(0.25 / 5), pen(answer, "A").z(), 1e-12);
        // Wilson 1927 for 1 of 5 at 95 %: 0.0362 to 0.6245 (Newcombe 1998, method 3)
        assertEquals(0.0362, pen(answer, "A").share().interval().low(), 5e-5);
        assertEquals(0.6245, pen(answer, "A").share().interval().high(), 5e-5);
    }

    @Test
    void twoPensWithFewCalvesAreHeldToFishersTest() {
        PensAnswer answer = new PenBook().pen("A", 1, 4).pen("B", 3, 4).answer();
        assertEquals("Fisher's exact test", answer.homogeneity().method());
        // 3 of 4 against 1 of 4: (16 + 16 + 1 + 1) / 70, Fisher 1935, the lady tasting tea
        assertEquals(34.0 / 70, answer.homogeneity().p(), 1e-12);
        assertEquals(2.0, answer.homogeneity().chiSquare(), 1e-12);
        assertEquals(34.0 / 70, pen(answer, "A").others().adjustedP(), 1e-12);
    }

    @Test
    void manyPensWithFewCalvesAreHeldToRandomTablesOfOneSeed() {
        PenBook book = new PenBook().pen("A", 1, 4).pen("B", 3, 4).pen("C", 0, 4);
        PenHomogeneity test = book.answer().homogeneity();
        assertTrue(test.method().contains("4999 random tables"), test::method);
        assertEquals(test, book.answer().homogeneity());
    }

    @Test
    void largePensAreHeldToChiSquare() {
        PensAnswer answer = new PenBook().pen("A", 10, 40).pen("B", 20, 40).answer();
        assertEquals("Pearson chi-square", answer.homogeneity().method());
        // 80 (10 * 20 - 20 * 30)^2 / (40 * 40 * 30 * 50)
        assertEquals(
                80 * 400.0 * 400.0 / (40.0 * 40 * 30 * 50), answer.homogeneity().chiSquare(), 1e-12);
    }

    @Test
    void daysSinceBeddingRunFromThePensOwnLastBeddingToTheBirth() {
        PenBook book = new PenBook();
        book.events().add("pen-bedded", "A", "2026-01-01 06:15", "");
        book.events().add("pen-bedded", "B", "2026-01-02 00:00", "");
        book.from("2026-01-04").pen("A", 1, 1).pen("C", 0, 1);
        book.events().add("pen-bedded", "A", "2026-01-05 06:00", "");
        PensAnswer answer = book.answer();
        assertEquals(3.0, pen(answer, "A").daysSinceBedding(), 1e-12);
        assertTrue(Double.isNaN(pen(answer, "C").daysSinceBedding()));
        assertTrue(pen(answer, "A").kept());
        assertFalse(pen(answer, "C").kept());
        assertEquals(1, answer.places().elsewhere().n());
    }

    @Test
    void twinsAreOneCalvingAndNoCalfCrowdsItself() {
        PenBook book = new PenBook();
        new Calf(book.events(), "first").born("2026-01-01 08:00", "alive: false, pen: A, dam: D1");
        new Calf(book.events(), "long-ago").born("2025-12-20 08:00", "alive: true, pen: A, dam: D0");
        for (String twin : List.of("08:00", "08:40")) {
            new Calf(book.events(), "twin-" + twin)
                    .born("2026-01-03 " + twin, "alive: true, pen: A, dam: D2")
                    .aged(Duration.ofHours(1), "cleanliness-scored", "score: 0");
        }
        new Calf(book.events(), "last")
                .born("2026-01-04 08:00", "alive: true, pen: A, dam: D3")
                .aged(Duration.ofHours(1), "cleanliness-scored", "score: 2");
        List<DirtyShare> stocking = book.answer().circumstances().stocking();
        assertEquals("1 or 2", stocking.get(1).name());
        assertEquals(3, stocking.get(1).n());
        assertEquals(3, stocking.stream().mapToInt(DirtyShare::n).sum());
    }

    @Test
    void illnessCountsAfterTheScoringAndOnlyWhereTwentyOneDaysAreOver() {
        PenBook book = new PenBook();
        Calf ill = book.scored("A", 3);
        ill.aged(Duration.ofDays(5), "illness-found", "condition: diarrhoea");
        book.scored("A", 0).aged(Duration.ofDays(22), "illness-found", "condition: diarrhoea");
        book.scored("A", 0).aged(Duration.ofDays(3), "left", "reason: sold");
        book.scored("A", 0).aged(Duration.ofDays(3), "died", "");
        Calf early = book.born("A");
        early.aged(Duration.ofHours(1), "illness-found", "condition: pneumonia");
        early.aged(Duration.ofHours(2), "cleanliness-scored", "score: 2");
        DirtyThenIll any = book.answer().illness().get(0);
        assertEquals(DirtyThenIll.ANY, any.outcome());
        assertEquals(new TwoByTwoTable(1, 0, 0, 2), any.table());
        assertEquals(2, any.leftOut());
    }

    @Test
    void aPenIsSetBesideItsOwnLastSeason() {
        PensAnswer answer = new PenBook(2025)
                .pen("A", 2, 30)
                .pen("B", 3, 30)
                .from("2026-01-02")
                .pen("A", 20, 30)
                .pen("B", 4, 30)
                .answer();
        assertEquals("2025", answer.lastSeason());
        assertTrue(pen(answer, "A").before().moreThanChance());
        assertFalse(pen(answer, "B").before().moreThanChance());
        assertEquals(30, pen(answer, "A").before().with().n());
    }

    @Test
    void whereEverybodyIsAlikeChanceSetsNoLimitsAndSaysWhy() {
        PensAnswer answer = new PenBook().pen("A", 0, 6).pen("B", 0, 5).answer();
        assertNull(pen(answer, "A").limits95());
        assertTrue(Double.isNaN(pen(answer, "A").z()));
        assertNull(pen(answer, "A").shrunken());
        assertEquals(
                "The spread between groups cannot be estimated because there is no case in any group.",
                answer.spread().why());
        assertTrue(answer.homogeneity().why().contains("cannot be estimated"), answer.homogeneity()::why);
    }
}
