package wisp.tag;

import java.util.Map;
import java.util.stream.Collectors;

/**
 * Country codes on ear tags: letters (ISO 3166-1 alpha-2, with {@code UK} for Great Britain, {@code EL} for Greece and
 * {@code XI} for Northern Ireland) and the numeric code of electronic tags (ISO 3166-1 numeric, 899 for Northern
 * Ireland). Letters and 899 by Implementing Regulation (EU) 2021/520, Article 12; the other numeric codes from memory.
 */
final class CountryCode {
    static final String UK = "UK";
    static final String NORTHERN_IRELAND = "XI";
    static final String IRELAND = "IE";

    private static final Map<String, String> NUMERIC = Map.ofEntries(
            Map.entry("AT", "040"),
            Map.entry("BE", "056"),
            Map.entry("BG", "100"),
            Map.entry("CH", "756"),
            Map.entry("CY", "196"),
            Map.entry("CZ", "203"),
            Map.entry("DE", "276"),
            Map.entry("DK", "208"),
            Map.entry("EE", "233"),
            Map.entry("EL", "300"),
            Map.entry("ES", "724"),
            Map.entry("FI", "246"),
            Map.entry("FR", "250"),
            Map.entry("HR", "191"),
            Map.entry("HU", "348"),
            Map.entry(IRELAND, "372"),
            Map.entry("IS", "352"),
            Map.entry("IT", "380"),
            Map.entry("LT", "440"),
            Map.entry("LU", "442"),
            Map.entry("LV", "428"),
            Map.entry("MT", "470"),
            Map.entry("NL", "528"),
            Map.entry("NO", "578"),
            Map.entry("PL", "616"),
            Map.entry("PT", "620"),
            Map.entry("RO", "642"),
            Map.entry("SE", "752"),
            Map.entry("SI", "705"),
            Map.entry("SK", "703"),
            Map.entry(UK, "826"),
            Map.entry(NORTHERN_IRELAND, "899"));
    private static final Map<String, String> LETTERS =
            NUMERIC.entrySet().stream().collect(Collectors.toUnmodifiableMap(Map.Entry::getValue, Map.Entry::getKey));
    private static final Map<String, String> ALSO = Map.of("GB", UK, "GR", "EL");

    private CountryCode() {}

    /** The letters that stand on tags for these, or null where they are no country's. */
    static String ofLetters(String letters) {
        String usual = ALSO.getOrDefault(letters, letters);
        return NUMERIC.containsKey(usual) ? usual : null;
    }

    /** The letters of a numeric code, or null where it has none here. */
    static String ofNumeric(String digits) {
        return LETTERS.get(digits);
    }

    /** The numeric code of letters; what is a numeric code stays as it is. */
    static String numeric(String letters) {
        return NUMERIC.getOrDefault(letters, letters);
    }
}
