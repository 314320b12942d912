package wisp.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TagNumberTest {
    private static String key(String written) {
        return TagNumber.read(written).key();
    }

    private static TagFormat format(String written) {
        return TagNumber.read(written).format();
    }

    @Test
    void everyWayToTypeABritishNumberIsOneNumber() {
        List<String> ways = List.of(
                "UK 123450 600001",
                "UK123450600001",
                "uk 123450-600001",
                "Uk-123450 6 00001",
                " GB 123450 600001 ",
                "UK\u00a0123450\u2009600001",
                "\uff35\uff2b 123450 600001",
                "826 123450 600001",
                "826123450600001",
                "'826123450600001");
        ways.forEach(way -> {
            assertEquals("UK123450600001", key(way), way);
            assertEquals(TagFormat.GREAT_BRITAIN, format(way), way);
            assertEquals("UK 123450 600001", TagNumber.read(way).shown(), way);
            assertEquals(way, TagNumber.read(way).written(), "what was written stays");
        });
    }

    @Test
    void aNumberOfNorthernIrelandIsOneUnderItsThreeCodes() {
        List.of("UK 9 123456 1234 5", "XI 9 123456 1234 5", "899 912345612345", "826912345612345")
                .forEach(way -> {
                    assertEquals("UK912345612345", key(way), way);
                    assertEquals(TagFormat.NORTHERN_IRELAND, format(way), way);
                });
        assertEquals("XI 9 123456 1234 5", TagNumber.read("xi912345612345").shown());
        assertEquals("", TagNumber.read("XI 9 123456 1234 5").herdMark(), "no place of the herd is published");
    }

    @Test
    void irishNumbersHaveTwelveDigits() {
        assertEquals(TagFormat.IRELAND, format("IE 1234567 8 1234"));
        assertEquals("IE123456781234", key("372123456781234"));
        assertEquals(TagFormat.OTHER, format("IE 1234567 8 123"));
    }

    @Test
    void otherEuropeanNumbersHaveAtMostTwelveDigits() {
        assertEquals(TagFormat.EUROPEAN, format("DE 1"));
        assertEquals(TagFormat.EUROPEAN, format("FR123456789012"));
        assertEquals(TagFormat.OTHER, format("FR1234567890123"), "thirteen");
        assertEquals(key("DE 09 123 45678"), key("276000912345678"), "electronic tags fill up with noughts");
        assertEquals("DE 0912345678", TagNumber.read("de 09 123 45678").shown());
        assertEquals(key("EL 123456789012"), key("GR123456789012"));
        assertNotEquals(key("DE 123456789012"), key("FR 123456789012"));
    }

    @Test
    void fifteenDigitsAreReadByTheirCountryOrManufacturer() {
        assertEquals(TagFormat.OTHER_COUNTRY, format("840 003 123 456 789"));
        assertEquals(TagFormat.OTHER_COUNTRY, format("898000000000001"));
        assertEquals(TagFormat.MANUFACTURER, format("900000000000001"), "the first manufacturer's code");
        assertEquals(TagFormat.MANUFACTURER, format("998000000000001"), "the last one");
        assertEquals(TagFormat.TEST, format("999000000000001"));
        assertEquals(TagFormat.OTHER, format("000000000000001"), "no country has the code 000");
        assertEquals("982 000 123 456 789", TagNumber.read("982000123456789").shown());
        assertFalse(TagFormat.MANUFACTURER.official());
        assertTrue(TagFormat.OTHER_COUNTRY.official());
    }

    @Test
    void aFarmsOwnNumberKeepsItsHyphensAndLosesItsBlanks() {
        assertEquals("A12", key(" a 12"));
        assertNotEquals(key("1-23"), key("12-3"));
        assertEquals("a 12", TagNumber.read(" a 12 ").shown(), "shown as written");
        assertEquals("", TagNumber.read("A12").electronic());
    }

    @Test
    void nothingThatIsTypedBreaksTheReading() {
        for (String odd :
                List.of("", " ", "UK", "u", "8.26E+14", "\ud83d\udc04 7", "UK 12345O 600001", "UKAB1234 00123")) {
            assertEquals(TagFormat.OTHER, format(odd), odd);
            assertEquals(odd.strip(), TagNumber.read(odd).shown());
        }
    }
}
