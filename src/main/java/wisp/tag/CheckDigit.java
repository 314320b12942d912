package wisp.tag;

/**
 * The check digit of Great Britain's numeric ear tags, 1 to 7: the herd mark and the animal's number read as one
 * number, modulo 7, plus 1. The formula is from memory. It gives the published sequences of herds 123450 and 284205,
 * but these do not tell it from a rival, (herd + animal − 1) modulo 7, plus 1, because both herd marks are 5 modulo 7.
 * A digit that does not fit is therefore a reason to look at the tag again, and never to refuse its number.
 */
public final class CheckDigit {
    static final int HERD_DIGITS = 6;
    private static final int MODULUS = 7;

    private CheckDigit() {}

    /**
     * The digit that fits.
     *
     * @param herd the herd mark, 6 digits
     * @param animal the animal's number, 5 digits
     */
    public static int of(String herd, String animal) {
        return (int) (Long.parseLong(herd + animal) % MODULUS) + 1;
    }

    /** Whether the digit of a number fits; true of every number that is not Great Britain's. */
    public static boolean fits(TagNumber number) {
        return number.format() != TagFormat.GREAT_BRITAIN || fits(number.national());
    }

    /** Whether twelve digits, herd mark, check digit and animal, fit together. */
    static boolean fits(String twelve) {
        return twelve.charAt(HERD_DIGITS) - '0' == right(twelve);
    }

    /** The digit that would fit the other eleven. */
    static int right(String twelve) {
        return of(twelve.substring(0, HERD_DIGITS), twelve.substring(HERD_DIGITS + 1));
    }
}
