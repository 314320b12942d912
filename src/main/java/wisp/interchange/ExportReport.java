package wisp.interchange;

import java.util.Map;

/**
 * What an export wrote and what it could not.
 *
 * @param written events in the file
 * @param notExported events that the format has no place for, by type; withdrawn ones as {@code retracted event}
 * @param fieldsLeftOut fields of written events that the format has no place for: type and field, and how many
 */
public record ExportReport(long written, Map<String, Long> notExported, Map<String, Long> fieldsLeftOut) {

    /** What was written and what was not, in a few lines. */
    public String sentence() {
        StringBuilder said = new StringBuilder(written + " events written.");
        if (!notExported.isEmpty()) {
            said.append(" Not written, as the format has no place for them: ")
                    .append(listed(notExported))
                    .append('.');
        }
        if (!fieldsLeftOut.isEmpty()) {
            said.append(" Fields left out for the same reason: ")
                    .append(listed(fieldsLeftOut))
                    .append('.');
        }
        return said.toString();
    }

    private static String listed(Map<String, Long> counts) {
        StringBuilder list = new StringBuilder();
        counts.forEach((name, count) -> list.append(list.isEmpty() ? "" : ", ")
                .append(count)
                .append(' ')
                .append(name));
        return list.toString();
    }
}
