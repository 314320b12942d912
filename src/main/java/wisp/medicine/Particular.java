package wisp.medicine;

import java.util.Locale;

/**
 * What a record of a medicine given to an animal that may become food should hold beside its date, its name and the
 * animal. Which of them the law asks for stands in the limits file of the farm's place; the others are good practice.
 */
public enum Particular {
    QUANTITY("quantity"),
    BATCH("batch"),
    WITHDRAWAL("withdrawal period"),
    GIVEN_BY("who gave it"),
    REASON("reason");

    private final String word;

    Particular(String word) {
        this.word = word;
    }

    /** Whether a limits file means this when it names a field, as by "withdrawal period even if zero". */
    boolean namedBy(String field) {
        return field.strip().toLowerCase(Locale.ROOT).startsWith(word);
    }

    /** The particular in words. */
    public String word() {
        return word;
    }
}
