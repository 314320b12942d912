package wisp.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.tag.TagDoubt.Kind;

class TagDoubtTest {
    private static List<Kind> kinds(String written) {
        return TagDoubt.of(TagNumber.read(written)).stream().map(TagDoubt::kind).toList();
    }

    @Test
    void anElectronicNumberMayBeAsLargeAsThirtyEightBits() {
        assertEquals((1L << 38) - 1, TagDoubt.LARGEST_NATIONAL);
        assertEquals(List.of(), kinds("982 274877906943"));
        assertEquals(List.of(Kind.BEYOND_ELECTRONIC), kinds("982 274877906944"));
        assertEquals(List.of(), kinds("IE 274877906944"), "a printed number has no such bound");
    }

    @Test
    void aNumberForTestsIsOdd() {
        assertEquals(List.of(Kind.TEST_CODE), kinds("999 000000000001"));
        assertEquals(List.of(), kinds("998 000000000001"));
    }

    @Test
    void aWrongCheckDigitSaysWhatIsExpected() {
        List<TagDoubt> doubts = TagDoubt.of(TagNumber.read("UK 123450 500001"));
        assertEquals(Kind.CHECK_DIGIT, doubts.get(0).kind());
        assertTrue(doubts.get(0).sentence().contains("5 stands where 6 is expected"), doubts.toString());
        assertEquals(List.of(), kinds("UK 123450 600001"));
        assertEquals(List.of(), kinds("UK 9 234505 0000 1"));
    }

    @Test
    void aDigitTooFewOrTooManyIsOddButAFarmsOwnNumberIsNot() {
        assertEquals(List.of(Kind.LENGTH), kinds("UK 123450 60001"));
        assertEquals(List.of(Kind.LENGTH), kinds("IE 1234567 8 12345"));
        assertEquals(List.of(Kind.LENGTH), kinds("FR 1234567890123"));
        assertEquals(List.of(), kinds("UK 12"));
        assertEquals(List.of(), kinds("bull 7"));
        assertEquals(List.of(), kinds("ZZ 123456789012"), "no country's letters");
    }
}
