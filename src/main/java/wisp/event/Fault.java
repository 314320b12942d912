package wisp.event;

/**
 * One thing wrong with an event that was offered.
 *
 * @param field the field, such as {@code data.score}; empty where the whole line is at fault
 * @param problem what is wrong, a whole sentence
 * @param mend what to write instead, a whole sentence
 */
public record Fault(String field, String problem, String mend) {
    @Override
    public String toString() {
        return (field.isEmpty() ? "" : field + ": ") + problem + " " + mend;
    }
}
