package wisp.tag;

/** How near a written number is to a known one, the nearest first. */
public enum Likeness {
    /** The same number. */
    SAME,
    /** The same digits with the letter O for a nought, or I or L for a one. */
    LETTERS_FOR_DIGITS,
    /** The known number ends with the digits that were written, at least four of them. */
    LAST_DIGITS,
    /** Two neighbours swapped. */
    NEIGHBOURS_SWAPPED,
    /** One sign wrong. */
    ONE_WRONG,
    /** One sign too few or too many. */
    ONE_MISSING,
    /** Nothing in common that would say so. */
    NONE;

    private static final int FEWEST = 4;

    /** How near the written number is to the known one. */
    public static Likeness of(TagNumber written, TagNumber known) {
        String one = written.key();
        String other = known.key();
        if (one.equals(other)) {
            return SAME;
        }
        if (TagNumber.read(mendLetters(written.compact())).key().equals(other)) {
            return LETTERS_FOR_DIGITS;
        }
        String digits = written.format() == TagFormat.OTHER ? written.compact() : "";
        boolean last = digits.length() >= FEWEST
                && digits.chars().allMatch(TagNumber::digit)
                && (other.endsWith(digits) || filledUp(digits, known.electronic()));
        return last ? LAST_DIGITS : oneSlip(one, other);
    }

    /** Some readers put noughts before the fifteen digits. */
    private static boolean filledUp(String digits, String electronic) {
        return !electronic.isEmpty() && digits.endsWith(electronic);
    }

    private static Likeness oneSlip(String one, String other) {
        int shorter = Math.min(one.length(), other.length());
        if (shorter < FEWEST || Math.abs(one.length() - other.length()) > 1) {
            return NONE;
        }
        int head = 0;
        while (head < shorter && one.charAt(head) == other.charAt(head)) {
            head++;
        }
        int tail = 0;
        while (tail < shorter - head
                && one.charAt(one.length() - 1 - tail) == other.charAt(other.length() - 1 - tail)) {
            tail++;
        }
        int left = Math.max(one.length(), other.length()) - head - tail;
        if (one.length() != other.length()) {
            return left == 1 ? ONE_MISSING : NONE;
        }
        boolean swapped =
                left == 2 && one.charAt(head) == other.charAt(head + 1) && one.charAt(head + 1) == other.charAt(head);
        return left == 1 ? ONE_WRONG : swapped ? NEIGHBOURS_SWAPPED : NONE;
    }

    /** The country's two letters stay. */
    private static String mendLetters(String compact) {
        if (compact.length() < 2) {
            return compact;
        }
        int from = CountryCode.ofLetters(compact.substring(0, 2)) == null ? 0 : 2;
        String rest =
                compact.substring(from).replace('O', '0').replace('I', '1').replace('L', '1');
        return compact.substring(0, from) + rest;
    }
}
