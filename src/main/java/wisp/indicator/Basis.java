package wisp.indicator;

/**
 * What a limit stands on.
 *
 * @param kind law, or what is only good practice
 * @param source statute or guidance with its section, or the paper
 * @param status {@code verified}, {@code verified (secondary)} where only a report of it was read, or {@code from
 *     memory}
 * @param readOn when the source was last checked
 * @param remarks what to beware of, empty where nothing
 */
public record Basis(Kind kind, String source, String status, String readOn, String remarks) {

    /** Whether a limit binds by law. */
    public enum Kind {
        LAW("law"),
        GOOD_PRACTICE("good practice");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The kind in files and answers. */
        public String word() {
            return word;
        }
    }

    /** Whether the source itself was read. */
    public boolean verified() {
        return status.equalsIgnoreCase("verified");
    }
}
