package wisp.event;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;

/** Times as RFC 3339 section 5.6 writes them: date, time with seconds, and an offset. */
public final class Rfc3339 {
    private static final Pattern SHAPE =
            Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d{1,9})?(Z|[+-]\\d\\d:\\d\\d)");

    private Rfc3339() {}

    /**
     * Reads a time.
     *
     * @param fault is told the problem and the mend where it cannot be read
     * @return the time, or null after a fault
     */
    public static OffsetDateTime read(String text, BiConsumer<String, String> fault) {
        String upper = text.toUpperCase(Locale.ROOT);
        try {
            if (SHAPE.matcher(upper).matches()) {
                return OffsetDateTime.parse(upper);
            }
        } catch (DateTimeException noSuchDay) {
            fault.accept("\"" + text + "\" is no day or time of the calendar.", "Check day, month and hour.");
            return null;
        }
        fault.accept(
                "\"" + text + "\" is not a time with an offset.",
                "Write it as 2026-03-01T07:30:00+00:00, the offset being that of the clock on the wall.");
        return null;
    }
}
