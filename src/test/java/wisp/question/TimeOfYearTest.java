package wisp.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The yearly wave beside bedding, stocking and pens. */
class TimeOfYearTest {
    private static final LocalDate NEW_YEAR = LocalDate.of(2026, 1, 1);

    /** A calf every day of a year, three pens in turn, bedded now and then; winter makes dirty by so much log odds. */
    private static PenBook year(long seed, int days, double wave) {
        System.out.println("TimeOfYearTest, seed " + seed);
        Random random = new Random(seed);
        PenBook book = new PenBook();
        String[] pens = {"A", "B", "C"};
        for (int day = 0; day < days; day += 9) {
            book.events().add("pen-bedded", pens[day % 3], NEW_YEAR.plusDays(day) + " 04:00", "");
            book.events().add("pen-bedded", pens[(day + 1) % 3], NEW_YEAR.plusDays(day + 4) + " 04:00", "");
            book.events().add("pen-bedded", pens[(day + 2) % 3], NEW_YEAR.plusDays(day + 7) + " 04:00", "");
        }
        for (int day = 8; day < days; day++) {
            LocalDate born = NEW_YEAR.plusDays(day);
            double logOdds = -1 + wave * Math.cos(2 * Math.PI * day / 365.0);
            boolean dirty = random.nextDouble() < 1 / (1 + Math.exp(-logOdds));
            book.from(born.toString()).scored(pens[random.nextInt(3)], dirty ? 2 : 0);
        }
        return book;
    }

    private static PensAnswer answer(long seed, int days, double wave) {
        return year(seed, days, wave).answer();
    }

    @Test
    void theModelIsThatOfR() {
        // R 4.2.2: glm(dirty ~ days + calvings + sin(a) + cos(a) + pen, binomial), a <- 2 * pi * yday / 365, on the
        // same 357 calves, epsilon 1e-14; Wald's chi-square of both waves by vcov; p.adjust(method = "holm")
        Circumstances so = answer(11, 365, 0.8).circumstances();
        DirtinessTerm days = so.terms().get(0);
        assertEquals(357, days.n());
        assertEquals(1.00376668201197, days.within().value(), 1e-9);
        assertEquals(0.919627552245771, days.within().low(), 1e-9);
        assertEquals(1.09560392080124, days.within().high(), 1e-9);
        DirtinessTerm calvings = so.terms().get(1);
        assertEquals(1.01235977651808, calvings.within().value(), 1e-9);
        assertEquals(0.832964028707554, calvings.within().low(), 1e-9);
        assertEquals(1.23039204790385, calvings.within().high(), 1e-9);
        assertTrue(so.timeOfYear().allowedFor());
        assertEquals(13.48361990537204, so.timeOfYear().chiSquare(), 1e-7);
        assertEquals(0.00118050855718356, so.timeOfYear().p(), 1e-10);
        assertEquals(0.00354152567155069, so.timeOfYear().adjustedP(), 1e-10);
    }

    @Test
    void aWaveBeyondChanceIsSaidAndTheMethodNamesIt() {
        PensAnswer answer = answer(11, 365, 0.8);
        assertTrue(
                answer.sentences()
                        .contains("How many calves were dirty went up and down with the time of year by more than"
                                + " chance, pens, bedding and stocking allowed for."),
                answer.sentences()::toString);
        assertTrue(
                answer.method().stream()
                        .anyMatch(step -> step.startsWith("The time of year is in that model as one yearly wave")),
                answer.method()::toString);
    }

    @Test
    void twoMonthsAreTooShortAPartOfTheYear() {
        PensAnswer answer = answer(3, 58, 0);
        assertFalse(answer.circumstances().timeOfYear().allowedFor());
        assertTrue(
                answer.method()
                        .contains("The time of year is not allowed for in that model. Calves of bedded pens were born"
                                + " in fewer than 3 months of the year, too short a part of it."),
                answer.method()::toString);
    }

    @Test
    void fewDirtyCalvesDoNotBearTheWaveAndTheReasonCountsThem() {
        PensAnswer answer = answer(5, 100, -1.2);
        TimeOfYear year = answer.circumstances().timeOfYear();
        long dirty = answer.circumstances().terms().get(0).calves().calves().stream()
                .filter(ScoredCalf::dirty)
                .count();
        assertTrue(dirty < 30, () -> dirty + " dirty");
        assertFalse(year.allowedFor());
        assertEquals(
                "With it the model would have 6 terms, and at least 5 dirty and as many clean calves are wanted for"
                        + " each (Vittinghoff and McCulloch 2007, Am J Epidemiol 165:710); there are " + dirty
                        + " dirty calves in bedded pens.",
                year.why());
        assertTrue(Double.isNaN(year.p()));
    }

    @Test
    void withoutAWaveItIsSeldomSeen() {
        int seen = 0;
        for (long seed = 100; seed < 140; seed++) {
            PensAnswer answer = answer(seed, 365, 0);
            TimeOfYear year = answer.circumstances().timeOfYear();
            assertNull(year.why());
            boolean said = String.join(" ", answer.sentences()).contains("time of year by more than chance");
            assertEquals(year.adjustedP() < 0.05, said, "seed " + seed);
            seen += said ? 1 : 0;
        }
        // Holm's adjustment keeps each at or below 0.05: P(more than 6 of 40) is below 0.004
        assertTrue(seen <= 6, seen + " of 40");
    }

    @Test
    void everyListHoldsAsManyCalvesAsItsCountSays() {
        Circumstances so = answer(11, 365, 0.8).circumstances();
        for (List<DirtyShare> shares : List.of(so.bedding(), so.stocking(), so.months())) {
            for (DirtyShare share : shares) {
                assertEquals(share.n(), share.calves().count(), share.name());
                assertEquals(share.dirty(), share.dirtyCalves().count(), share.name());
                assertTrue(
                        share.calves().calves().containsAll(share.dirtyCalves().calves()), share.name());
            }
        }
    }
}
