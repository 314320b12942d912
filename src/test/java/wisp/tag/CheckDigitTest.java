package wisp.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CheckDigitTest {
    @Test
    void thePublishedSequencesFit() {
        // GOV.WALES, cattle ear tags: herd 123450, animals 1 to 3 have 6, 7, 1; the numeric format's published example
        // 284205, animals 15 to 17 have 6, 7, 1
        assertEquals(6, CheckDigit.of("123450", "00001"));
        assertEquals(7, CheckDigit.of("123450", "00002"));
        assertEquals(1, CheckDigit.of("123450", "00003"));
        assertEquals(6, CheckDigit.of("284205", "00015"));
        assertEquals(7, CheckDigit.of("284205", "00016"));
        assertEquals(1, CheckDigit.of("284205", "00017"));
    }

    @Test
    void thePublishedSequencesDoNotTellItFromItsRival() {
        for (String herd : new String[] {"123450", "284205"}) {
            for (int animal = 0; animal < 100; animal++) {
                int rival = (Integer.parseInt(herd) + animal + 6) % 7 + 1;
                assertEquals(rival, CheckDigit.of(herd, String.format("%05d", animal)), herd + " " + animal);
            }
        }
    }

    @Test
    void itIsAlwaysOneToSeven() {
        for (int animal = 0; animal < 100_000; animal += 7) {
            int digit = CheckDigit.of("999999", String.format("%05d", animal));
            assertTrue(digit >= 1 && digit <= 7, animal + " has " + digit);
        }
    }

    @Test
    void onlyGreatBritainsNumbersCanFail() {
        assertFalse(CheckDigit.fits(TagNumber.read("UK 123450 500001")));
        assertTrue(CheckDigit.fits(TagNumber.read("UK 123450 600001")));
        assertTrue(CheckDigit.fits(TagNumber.read("UK 923450 500001")), "Northern Ireland's stands elsewhere");
        assertTrue(CheckDigit.fits(TagNumber.read("IE 123450 500001")));
        assertTrue(CheckDigit.fits(TagNumber.read("A 7")));
    }

    @Test
    void aSingleWrongDigitIsMissedOnlyWhereDigitsDifferBySeven() {
        String right = "123450600001";
        for (int at = 0; at < right.length(); at++) {
            for (char digit = '0'; digit <= '9'; digit++) {
                String wrong = right.substring(0, at) + digit + right.substring(at + 1);
                boolean missed = Math.abs(digit - right.charAt(at)) % 7 == 0 && at != 6;
                assertEquals(missed || wrong.equals(right), CheckDigit.fits(wrong), wrong);
            }
        }
    }
}
