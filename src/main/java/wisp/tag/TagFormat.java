package wisp.tag;

/** The published shape that a tag number has. */
public enum TagFormat {
    /** {@code UK}, 6-digit herd mark, check digit 1 to 7, 5-digit number of the animal. */
    GREAT_BRITAIN,
    /** {@code UK} or {@code XI} and 12 digits that begin with 9; its check digit is not known here. */
    NORTHERN_IRELAND,
    /** {@code IE} and 12 digits; its check digit is not known here. */
    IRELAND,
    /** Another country's letters and at most 12 digits. */
    EUROPEAN,
    /** 15 digits of ISO 11784 that begin with the numeric code of a country that has no letters here. */
    OTHER_COUNTRY,
    /** 15 digits of ISO 11784 that begin with a manufacturer's code, 900 to 998. */
    MANUFACTURER,
    /** 15 digits of ISO 11784 that begin with 999, for tests. */
    TEST,
    /** None of these: a farm's own number, or a slip. */
    OTHER;

    /** Whether it is an animal's official number, which both its ears should carry. */
    public boolean official() {
        return switch (this) {
            case GREAT_BRITAIN, NORTHERN_IRELAND, IRELAND, EUROPEAN, OTHER_COUNTRY -> true;
            case MANUFACTURER, TEST, OTHER -> false;
        };
    }
}
