package wisp.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LikenessTest {
    private static Likeness of(String written, String known) {
        return Likeness.of(TagNumber.read(written), TagNumber.read(known));
    }

    @Test
    void itIsNamedByTheSlip() {
        String known = "UK 123450 600001";
        assertEquals(Likeness.SAME, of("826123450600001", known));
        assertEquals(Likeness.LETTERS_FOR_DIGITS, of("UK I2345O 6OOOOl", known));
        assertEquals(Likeness.LAST_DIGITS, of("123450 600001", known), "without its country");
        assertEquals(Likeness.LAST_DIGITS, of("0001", known));
        assertEquals(Likeness.LAST_DIGITS, of("0826123450600001", known), "filled up by a reader");
        assertEquals(Likeness.NEIGHBOURS_SWAPPED, of("UK 123405 600001", known));
        assertEquals(Likeness.ONE_WRONG, of("UK 123450 600007", known));
        assertEquals(Likeness.ONE_MISSING, of("UK 123450 60001", known));
        assertEquals(Likeness.ONE_MISSING, of("UK 123450 6000011", known));
        assertEquals(Likeness.NONE, of("UK 123450 600077", known));
    }

    @Test
    void threeDigitsOrShortNamesSayNothing() {
        assertEquals(Likeness.NONE, of("001", "UK 123450 600001"));
        assertEquals(Likeness.NONE, of("A1", "A2"));
    }

    @Test
    void noughtsThatASpreadsheetDroppedAreNoHindrance() {
        assertEquals(Likeness.LAST_DIGITS, of("72600002", "UK 000072 600002"));
    }
}
