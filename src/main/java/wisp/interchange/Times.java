package wisp.interchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import wisp.event.Rfc3339;

/**
 * Reads the dates and times of cells: ISO 8601 always, and the patterns that a mapping states. A date that two of its
 * patterns read differently is not guessed at.
 */
final class Times {
    /** What to make of an hour that came twice. */
    enum AmbiguousHour {
        EARLIER,
        LATER,
        REFUSE
    }

    private static final DateTimeFormatter ISO = new DateTimeFormatterBuilder()
            .parseCaseInsensitive()
            .appendPattern("uuuu-MM-dd[['T'][ ]HH:mm[:ss]")
            .appendFraction(ChronoField.NANO_OF_SECOND, 0, 9, true)
            .appendPattern("[ ][XXX]]")
            .toFormatter(Locale.ROOT)
            .withResolverStyle(ResolverStyle.STRICT);

    private static final Pattern ISO_SHAPE = Pattern.compile("\\d{4}-\\d\\d-\\d\\d([Tt ]\\d\\d:\\d\\d.*)?");
    private static final Pattern DAY_OR_MONTH = Pattern.compile("\\d{1,2}[./-]\\d{1,2}[./-]\\d{2,4}\\b");

    private static final DateTimeFormatter WRITTEN = DateTimeFormatter.ISO_OFFSET_DATE_TIME;

    private final ZoneId zone;
    private final Map<String, DateTimeFormatter> formats = new LinkedHashMap<>();
    private final AmbiguousHour twice;

    /**
     * A reader of cells.
     *
     * @param zone the clock of times without an offset
     * @param patterns further ways to write a date, such as {@code dd/MM/yyyy HH:mm}
     * @param twice what to make of an hour that came twice, in the night when clocks go back
     */
    Times(ZoneId zone, List<String> patterns, AmbiguousHour twice) {
        this.zone = zone;
        this.twice = twice;
        patterns.forEach(pattern -> formats.put(pattern, formatter(pattern)));
    }

    /** A pattern as a formatter; throws IllegalArgumentException where it is none. */
    static DateTimeFormatter formatter(String pattern) {
        return new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern(pattern.replace('y', 'u'))
                .toFormatter(Locale.ENGLISH)
                .withResolverStyle(ResolverStyle.STRICT);
    }

    /** The moment, or null after the fault has been told its problem and mend. */
    Moment read(String cell, BiConsumer<String, String> fault) {
        List<TemporalAccessor> readings = new ArrayList<>();
        List<String> by = new ArrayList<>();
        if (ISO_SHAPE.matcher(cell).matches()) {
            attempt(ISO, "ISO 8601", cell, readings, by);
        }
        formats.forEach((pattern, format) -> attempt(format, pattern, cell, readings, by));
        if (readings.isEmpty()) {
            unreadable(cell, fault);
            return null;
        }
        if (readings.size() > 1) {
            String problem = "\"" + cell + "\" is " + readings.get(0) + " by " + by.get(0) + " and " + readings.get(1)
                    + " by " + by.get(1) + ".";
            fault.accept(problem, "Keep one of the two in the mapping's dates, or write the date as 2026-03-31.");
            return null;
        }
        return moment(readings.get(0), cell, fault);
    }

    private static void attempt(
            DateTimeFormatter format, String name, String cell, List<TemporalAccessor> readings, List<String> by) {
        try {
            TemporalAccessor read = format.parseBest(cell, OffsetDateTime::from, LocalDateTime::from, LocalDate::from);
            if (!readings.contains(read)) {
                readings.add(read);
                by.add(name);
            }
        } catch (DateTimeException otherPattern) {
            // The next pattern may fit.
        }
    }

    private void unreadable(String cell, BiConsumer<String, String> fault) {
        if (ISO_SHAPE.matcher(cell).matches()) {
            fault.accept("\"" + cell + "\" is no day or hour of the calendar.", "Check day, month and hour.");
            return;
        }
        if (formats.isEmpty() && DAY_OR_MONTH.matcher(cell).lookingAt()) {
            fault.accept(
                    "In \"" + cell + "\" day and month could be either way round.",
                    "State its form under dates in a mapping file, or write it as 2026-03-31.");
            return;
        }
        String mend = formats.isEmpty()
                ? "Write it as 2026-03-31 or 2026-03-31T07:30, or state its form under dates in a mapping file."
                : "Write it as 2026-03-31 or 2026-03-31T07:30, or add its form to the mapping's dates.";
        String known = formats.isEmpty() ? "" : " None of " + String.join(", ", formats.keySet()) + " fits.";
        fault.accept("\"" + cell + "\" is not a date or time that can be read." + known, mend);
    }

    private Moment moment(TemporalAccessor read, String cell, BiConsumer<String, String> fault) {
        if (read instanceof OffsetDateTime whole) {
            return new Moment(cell.contains("T") && isRfc3339(cell) ? cell : WRITTEN.format(whole), true);
        }
        if (read instanceof LocalDate day) {
            return new Moment(WRITTEN.format(day.atStartOfDay(zone).toOffsetDateTime()), false);
        }
        LocalDateTime local = (LocalDateTime) read;
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offsets.isEmpty()) {
            fault.accept(
                    "\"" + cell + "\" never was: the clocks of " + zone + " went forward over it.",
                    "Write the time with its offset, as 2026-03-29T02:30:00+01:00.");
            return null;
        }
        if (offsets.size() > 1 && twice == AmbiguousHour.REFUSE) {
            fault.accept(
                    "\"" + cell + "\" came twice: the clocks of " + zone + " went back over it.",
                    "Write the time with its offset, or say ambiguous_hour: earlier or later in a mapping file.");
            return null;
        }
        ZoneOffset offset = offsets.get(twice == AmbiguousHour.LATER ? offsets.size() - 1 : 0);
        return new Moment(WRITTEN.format(local.atOffset(offset)), true);
    }

    private static boolean isRfc3339(String cell) {
        return Rfc3339.read(cell, (problem, mend) -> {}) != null;
    }
}
