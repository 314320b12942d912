package wisp.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TicksTest {

    private static String labels(Axis axis, double low, double high, int most) {
        boolean log = axis.scale() instanceof Scale.Log;
        return String.join(
                " ",
                Ticks.of(axis, new Domain(low, high, log), most).stream()
                        .map(Tick::label)
                        .toList());
    }

    // By hand: the smallest of 1, 2, 5 times a power of ten that is at least span / (most - 1).
    @ParameterizedTest
    @CsvSource({
        "10, 6, 2",
        "10, 11, 1",
        "1, 6, 0.2",
        "0.4, 6, 0.1",
        "0.37, 6, 0.1",
        "100, 4, 50",
        "90, 10, 10",
        "0.012, 6, 0.005",
        "7, 3, 5",
        "1000, 6, 200"
    })
    void theStepIsTheSmallestRoundOneThatKeepsWithinTheLabels(double span, int most, double step) {
        assertEquals(step, Ticks.step(span, most, false), 1e-12);
    }

    @Test
    void countsNeverStepByLessThanOne() {
        assertEquals(1, Ticks.step(2, 11, true));
        assertEquals("0 1 2", labels(Axis.fromZero("Calves", Format.COUNT), 0, 2, 11));
    }

    @ParameterizedTest
    @CsvSource({
        "NUMBER, 0, 10, 6, 0 2 4 6 8 10",
        "NUMBER, -1, 1, 5, −1.0 −0.5 0 0.5 1.0",
        "NUMBER, 0.13, 0.97, 6, 0.2 0.4 0.6 0.8",
        "NUMBER, 0.4, 8.6, 5, 2 4 6 8",
        "NUMBER, 7.5, 9, 5, 7.5 8.0 8.5 9.0",
        "PERCENT, 0, 0.4, 6, 0% 10% 20% 30% 40%",
        "PERCENT, 0, 0.01, 6, 0% 0.2% 0.4% 0.6% 0.8% 1.0%",
        "COUNT, 0, 400, 5, 0 100 200 300 400"
    })
    void labelsHaveNoMoreDecimalsThanTheirStep(Format format, double low, double high, int most, String expected) {
        assertEquals(expected, labels(Axis.linear("Some unit", format), low, high, most));
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, 5, 8, 0.5 0.7 1 1.5 2 3 5",
        "0.5, 5, 4, 0.5 1 2 5",
        "0.1, 10, 7, 0.1 0.2 0.5 1 2 5 10",
        "0.01, 100, 5, 0.01 0.1 1 10 100",
        "0.01, 100, 3, 0.01 1 100"
    })
    void logLabelsThinOutAsRoomRunsShort(double low, double high, int most, String expected) {
        assertEquals(expected, labels(Axis.log("Risk ratio", Format.NUMBER), low, high, most));
    }

    @ParameterizedTest
    @CsvSource({
        "0.3, false, 0.2",
        "0.5, false, 0.5",
        "1, false, 1",
        "7, false, 5",
        "3.1, true, 5",
        "5, true, 5",
        "8, true, 10",
        "0.06, true, 0.1"
    })
    void aFreeLogEndMovesOutToOneTwoOrFive(double value, boolean upwards, double end) {
        assertEquals(end, Ticks.logEnd(value, upwards), 1e-12);
    }

    @Test
    void datesStepByDaysWeeksAndMonths() {
        double february = Axis.at(LocalDate.of(2026, 2, 2)); // a Monday
        Axis dates = Axis.dates("Day");
        assertEquals("2 Feb 3 Feb 4 Feb", labels(dates, february, february + 2, 5));
        assertEquals("2 Feb 4 Feb 6 Feb 8 Feb", labels(dates, february, february + 6, 5));
        assertEquals("2 Feb 9 Feb 16 Feb", labels(dates, february, february + 20, 5));
        assertEquals("2 Feb 16 Feb 2 Mar", labels(dates, february, february + 40, 4));
        assertEquals("1 Mar 1 Apr 1 May", labels(dates, february, february + 100, 4));
        assertEquals("Mar 2026 Sep 2026 Mar 2027 Sep 2027", labels(dates, february, february + 700, 4));
    }

    @Test
    void categoriesAreAllLabelled() {
        List<Tick> ticks = Ticks.of(Axis.categories("Pen", List.of("North", "South")), new Domain(-0.5, 1.5, false), 1);
        assertEquals(List.of(new Tick(0, "North"), new Tick(1, "South")), ticks);
    }
}
