package wisp.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wisp.tag.LikelyNumber.Slip;

class LikelyNumberTest {
    private static List<LikelyNumber> likely(String written, String... marks) {
        return LikelyNumber.of(TagNumber.read(written), Set.of(marks));
    }

    private static List<String> shown(List<LikelyNumber> likely) {
        return likely.stream().map(one -> one.number().shown()).toList();
    }

    @Test
    void swappedNeighboursOfAKnownHerdComeFirst() {
        // right: UK 284205 700016
        List<LikelyNumber> likely = likely("UK 284205 700061", "UK284205");
        assertEquals("UK 284205 700016", likely.get(0).number().shown());
        assertEquals(Slip.NEIGHBOURS_SWAPPED, likely.get(0).slip());
    }

    @Test
    void theKnownHerdGoesBeforeTheKindOfSlip() {
        // right: UK 123450 600001, one digit of the herd mark wrong
        List<LikelyNumber> likely = likely("UK 123460 600001", "UK123450");
        assertEquals("UK 123450 600001", likely.get(0).number().shown());
        assertEquals(Slip.ONE_DIGIT, likely.get(0).slip());
    }

    @Test
    void aWrongCheckDigitIsAmongThem() {
        assertTrue(shown(likely("UK 123450 500001")).contains("UK 123450 600001"));
        assertTrue(shown(likely("UK 123450 000001")).contains("UK 123450 600001"), "0 is never a check digit");
    }

    @Test
    void whatFitsOrHasNoCheckDigitHasNone() {
        assertEquals(List.of(), likely("UK 123450 600001"));
        assertEquals(List.of(), likely("UK 9 123456 1234 5"));
        assertEquals(List.of(), likely("A 7"));
    }

    @Test
    void everyCaughtSlipLeadsBackToTheRightNumber() {
        long seed = 20261125;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 2000; i++) {
            String herd = String.format("%06d", random.nextInt(900_000));
            String animal = String.format("%05d", random.nextInt(100_000));
            String right = herd + CheckDigit.of(herd, animal) + animal;
            int at = random.nextInt(12);
            char[] wrong = right.toCharArray();
            if (random.nextBoolean() && at < 11) {
                wrong[at] = right.charAt(at + 1);
                wrong[at + 1] = right.charAt(at);
            } else {
                wrong[at] = (char) ('0' + random.nextInt(10));
            }
            TagNumber written = TagNumber.read("UK" + new String(wrong));
            if (!CheckDigit.fits(written)) {
                List<LikelyNumber> likely = LikelyNumber.of(written, Set.of("UK" + herd));
                assertTrue(
                        likely.stream().anyMatch(one -> one.number().key().equals("UK" + right)),
                        "seed " + seed + ": " + written.written() + " from " + right);
                assertTrue(likely.stream().allMatch(one -> CheckDigit.fits(one.number())));
                assertEquals(likely.size(), new HashSet<>(shown(likely)).size(), "none twice");
            }
        }
    }
}
