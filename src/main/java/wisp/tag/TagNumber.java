package wisp.tag;

import java.text.Normalizer;
import java.util.Locale;

/**
 * An ear tag number as somebody wrote it, and what it is by its published format. Spaces, hyphens and small letters
 * make no difference, nor whether the country stands in letters or as its numeric code. Nothing is ever refused: what
 * has no published format is a number of its own.
 *
 * @param written as it was written
 * @param format its published shape
 * @param country the country's letters as on tags, or the first three digits of an electronic number that has none;
 *     empty where the number has no published shape
 * @param national the digits behind the country; where the number has no published shape, what is compared
 */
public record TagNumber(String written, TagFormat format, String country, String national) {
    /** Digits of a national number in an electronic tag, and of British and Irish numbers. */
    static final int NATIONAL_DIGITS = 12;

    private static final int COUNTRY_DIGITS = 3;
    private static final int FIRST_MANUFACTURER = 900;
    private static final int TEST = 999;

    /** Reads a number as people type it. */
    public static TagNumber read(String written) {
        String plain = plain(written);
        String compact = compact(plain);
        int letters = 0;
        while (letters < compact.length() && !digit(compact.charAt(letters))) {
            letters++;
        }
        String digits = compact.substring(letters);
        boolean whole = digits.chars().allMatch(TagNumber::digit);
        if (whole && letters == 2) {
            return ofCountry(written, plain, CountryCode.ofLetters(compact.substring(0, 2)), digits);
        }
        if (whole && letters == 0 && digits.length() == COUNTRY_DIGITS + NATIONAL_DIGITS) {
            return electronic(written, plain, digits);
        }
        return other(written, plain);
    }

    private static TagNumber electronic(String written, String plain, String digits) {
        String code = digits.substring(0, COUNTRY_DIGITS);
        String national = digits.substring(COUNTRY_DIGITS);
        String letters = CountryCode.ofNumeric(code);
        if (letters != null) {
            return ofCountry(written, plain, letters, national);
        }
        int number = Integer.parseInt(code);
        TagFormat format = number == TEST
                ? TagFormat.TEST
                : number >= FIRST_MANUFACTURER ? TagFormat.MANUFACTURER : TagFormat.OTHER_COUNTRY;
        return number == 0 ? other(written, plain) : new TagNumber(written, format, code, national);
    }

    private static TagNumber ofCountry(String written, String plain, String country, String digits) {
        boolean twelve = digits.length() == NATIONAL_DIGITS;
        if (country == null || digits.isEmpty() || digits.length() > NATIONAL_DIGITS) {
            return other(written, plain);
        }
        TagFormat format = switch (country) {
            case CountryCode.UK -> digits.startsWith("9") ? TagFormat.NORTHERN_IRELAND : TagFormat.GREAT_BRITAIN;
            case CountryCode.NORTHERN_IRELAND -> TagFormat.NORTHERN_IRELAND;
            case CountryCode.IRELAND -> TagFormat.IRELAND;
            default -> TagFormat.EUROPEAN;
        };
        return format == TagFormat.EUROPEAN || twelve
                ? new TagNumber(written, format, country, digits)
                : other(written, plain);
    }

    /** A farm's own number keeps its hyphens: 1-23 need not be 12-3. */
    private static TagNumber other(String written, String plain) {
        StringBuilder kept = new StringBuilder();
        plain.chars().filter(c -> !space(c)).forEach(c -> kept.append((char) c));
        return new TagNumber(written, TagFormat.OTHER, "", kept.toString());
    }

    /**
     * What two writings of one number have in common. Northern Ireland's {@code XI} and {@code UK} are one, and zeros
     * before the digits of another European country make no difference, as an electronic tag fills up with them.
     */
    public String key() {
        return switch (format) {
            case OTHER -> national;
            case NORTHERN_IRELAND -> CountryCode.UK + national;
            default -> country + padded();
        };
    }

    /** Whether another is the same number, however it is written. */
    public boolean same(TagNumber other) {
        return key().equals(other.key());
    }

    /**
     * The number in its usual groups. Great Britain's are published; those of Ireland and Northern Ireland are from
     * memory. What has no published groups keeps its digits together.
     */
    public String shown() {
        return switch (format) {
            case GREAT_BRITAIN -> grouped(6, 12);
            case NORTHERN_IRELAND -> grouped(1, 7, 11, 12);
            case IRELAND -> grouped(7, 8, 12);
            case EUROPEAN -> grouped(national.length());
            case OTHER_COUNTRY, MANUFACTURER, TEST -> grouped(3, 6, 9, 12);
            case OTHER -> written.strip();
        };
    }

    /** The herd's part of the number, empty where the format has none that is published. */
    public String herdMark() {
        return format == TagFormat.GREAT_BRITAIN ? country + national.substring(0, CheckDigit.HERD_DIGITS) : "";
    }

    /** The number as an electronic tag gives it, 15 digits; empty where it has no published shape. */
    public String electronic() {
        return format == TagFormat.OTHER ? "" : CountryCode.numeric(country) + padded();
    }

    /** Letters and digits alone, in capitals, as they were written. */
    public String compact() {
        return compact(plain(written));
    }

    private String padded() {
        return "0".repeat(NATIONAL_DIGITS - national.length()) + national;
    }

    private String grouped(int... ends) {
        StringBuilder groups = new StringBuilder(country);
        int from = 0;
        for (int end : ends) {
            groups.append(' ').append(national, from, end);
            from = end;
        }
        return groups.toString();
    }

    private static String plain(String written) {
        boolean ascii = written.chars().allMatch(c -> c < 128);
        String one = ascii ? written : Normalizer.normalize(written, Normalizer.Form.NFKC);
        return one.toUpperCase(Locale.ROOT);
    }

    private static String compact(String plain) {
        StringBuilder kept = new StringBuilder(plain.length());
        plain.chars().filter(Character::isLetterOrDigit).forEach(c -> kept.append((char) c));
        return kept.toString();
    }

    private static boolean space(int c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    static boolean digit(int c) {
        return c >= '0' && c <= '9';
    }
}
