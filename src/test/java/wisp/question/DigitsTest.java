package wisp.question;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import wisp.statistics.Interval;

class DigitsTest {
    @Test
    void aLimitNearOneKeepsTheDigitsThatTellItFromOne() {
        assertEquals(
                "1.6 (95 % interval 1.05 to 2.3)", Digits.ratio(new Interval(1.5547, 1.047, 2.31, 0.95, "test"), 1));
        assertEquals("0.97", Digits.ratio(0.97, 1));
        assertEquals("1.0004", Digits.ratio(1.0004, 1));
    }

    @Test
    void aRatioOfExactlyOneIsOne() {
        assertEquals("1.0", Digits.ratio(1, 1));
    }

    @Test
    void aSmallRatioIsNotNought() {
        assertEquals("0.02", Digits.ratio(0.02, 1));
        assertEquals("0.0", Digits.ratio(0, 1));
        assertEquals("∞", Digits.ratio(Double.POSITIVE_INFINITY, 1));
    }

    @Test
    void aDifferenceNearNoughtIsNotNought() {
        assertEquals("0.3", Digits.size(-0.3, 0));
        assertEquals("12", Digits.size(12.3, 0));
        assertEquals("0", Digits.size(0, 0));
    }

    @Test
    void aPValueStaysOnItsSideOfOneInTwenty() {
        assertEquals("0.0497", Digits.p(0.0497));
        assertEquals("0.0503", Digits.p(0.0503));
        assertEquals("0.123", Digits.p(0.1234));
        assertEquals("below 0.001", Digits.p(0.0009));
    }

    @Test
    void sharesThatDifferReadAsDifferent() {
        assertEquals(1, Percent.apart(0.254, 0.246));
        assertEquals("25.4 %", Percent.of(0.254, 1));
        assertEquals(0, Percent.apart(0.25, 0.27));
        assertEquals(0, Percent.apart(0.25, 0.25));
    }
}
