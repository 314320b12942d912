package wisp.medicine;

/**
 * What a record of a medicine given to an animal that may become food should hold beside its date, its name and the
 * animal: quantity and withdrawal period by the Veterinary Medicines Regulations 2013 (United Kingdom, from memory for
 * the whole list) and Regulation (EU) 2019/6 Article 108; batch, reason and giver are good practice, and law where a
 * vet gives it.
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

    /** The particular in words. */
    public String word() {
        return word;
    }
}
