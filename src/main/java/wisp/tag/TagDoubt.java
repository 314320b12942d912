package wisp.tag;

import java.util.ArrayList;
import java.util.List;

/**
 * A reason to look at a tag again. It never stands in the way of its number.
 *
 * @param kind what is odd
 * @param sentence the same in words
 */
public record TagDoubt(Kind kind, String sentence) {
    /** The largest national number that the 38 bits of an electronic tag hold (ISO 11784, from memory). */
    public static final long LARGEST_NATIONAL = 274_877_906_943L;

    private static final int FEWEST_MEANT = 9;

    /** What can be odd about a number. */
    public enum Kind {
        CHECK_DIGIT,
        LENGTH,
        TEST_CODE,
        BEYOND_ELECTRONIC
    }

    /** Everything odd about a number. */
    public static List<TagDoubt> of(TagNumber number) {
        List<TagDoubt> doubts = new ArrayList<>();
        String compact = number.compact();
        if (number.format() == TagFormat.OTHER) {
            length(compact, doubts);
        } else if (number.format() == TagFormat.TEST) {
            doubts.add(new TagDoubt(Kind.TEST_CODE, "Numbers that begin with 999 are for tests, not for animals."));
        }
        if (!CheckDigit.fits(number)) {
            doubts.add(new TagDoubt(
                    Kind.CHECK_DIGIT,
                    "The tag number's check digit does not fit: "
                            + number.national().charAt(CheckDigit.HERD_DIGITS)
                            + " stands where " + CheckDigit.right(number.national()) + " is expected. The formula is"
                            + " from memory: look at the tag."));
        }
        boolean electronic = compact.equals(number.electronic());
        if (electronic && Long.parseLong(compact.substring(3)) > LARGEST_NATIONAL) {
            doubts.add(new TagDoubt(
                    Kind.BEYOND_ELECTRONIC,
                    "No electronic tag can hold a number above 274,877,906,943 behind its country: look at the tag."));
        }
        return doubts;
    }

    /** British and Irish numbers have twelve digits; a few digits behind the letters may be a farm's own number. */
    private static void length(String compact, List<TagDoubt> doubts) {
        if (compact.length() < 2 + FEWEST_MEANT || !compact.substring(2).chars().allMatch(TagNumber::digit)) {
            return;
        }
        String country = CountryCode.ofLetters(compact.substring(0, 2));
        if (country != null) {
            int digits = compact.length() - 2;
            String wanted = country.equals(CountryCode.UK)
                            || country.equals(CountryCode.IRELAND)
                            || country.equals(CountryCode.NORTHERN_IRELAND)
                    ? "12 digits"
                    : "at most 12 digits";
            doubts.add(new TagDoubt(
                    Kind.LENGTH, "A number of " + country + " has " + wanted + ", this one has " + digits + "."));
        }
    }
}
