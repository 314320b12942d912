package wisp.tag;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * A number that may have been meant where a check digit does not fit.
 *
 * @param number the number that fits
 * @param slip how the written one came of it
 */
public record LikelyNumber(TagNumber number, Slip slip) {
    /** A slip of the hand; of two candidates the one whose slip stands first is likelier, as fewer others share it. */
    public enum Slip {
        NEIGHBOURS_SWAPPED,
        CHECK_DIGIT,
        ONE_DIGIT
    }

    /**
     * Every number of Great Britain that one slip turns into the written one and whose check digit fits, best first:
     * those of known herd marks before others, then by slip. Nothing where the written one fits or has no check digit.
     *
     * @param herdMarks herd marks that the farm's other numbers have, as {@link TagNumber#herdMark()} gives them
     */
    public static List<LikelyNumber> of(TagNumber written, Set<String> herdMarks) {
        List<LikelyNumber> likely = new ArrayList<>();
        if (CheckDigit.fits(written)) {
            return likely;
        }
        String digits = written.national();
        for (int at = 0; at < digits.length(); at++) {
            Slip slip = at == CheckDigit.HERD_DIGITS ? Slip.CHECK_DIGIT : Slip.ONE_DIGIT;
            for (char digit = '0'; digit <= '9'; digit++) {
                add(digits.substring(0, at) + digit + digits.substring(at + 1), slip, likely);
            }
            if (at > 0 && digits.charAt(at) != digits.charAt(at - 1)) {
                String swapped = digits.substring(0, at - 1)
                        + digits.charAt(at)
                        + digits.charAt(at - 1)
                        + digits.substring(at + 1);
                add(swapped, Slip.NEIGHBOURS_SWAPPED, likely);
            }
        }
        likely.sort(Comparator.comparing(
                        (LikelyNumber one) -> !herdMarks.contains(one.number().herdMark()))
                .thenComparing(LikelyNumber::slip));
        return likely;
    }

    private static void add(String twelve, Slip slip, List<LikelyNumber> likely) {
        // what begins with 9 is Northern Ireland's and has its check digit elsewhere
        if (!twelve.startsWith("9") && CheckDigit.fits(twelve)) {
            likely.add(new LikelyNumber(TagNumber.read(CountryCode.UK + twelve), slip));
        }
    }
}
