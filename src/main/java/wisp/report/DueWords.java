package wisp.report;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import wisp.due.DueItem;
import wisp.due.DueState;
import wisp.history.EarTags;
import wisp.history.Life;
import wisp.tag.TagNumber;

/**
 * One step with one calf in a stock person's words, for paper and page.
 *
 * @param first the end in a word or two: an hour today and tomorrow, else the day
 * @param second what stands below it
 */
public record DueWords(String first, String second) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter YEAR = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final String END = "end of day";

    /** When a step ends. A limit that ends with a day is told by that day, not by the midnight after it. */
    public static DueWords end(DueItem item, Instant at) {
        Instant closes = item.span().closes();
        if (closes == null) {
            return item.state() == DueState.DUE_NOW ? new DueWords("now", "no end set") : new DueWords("–", "no end");
        }
        ZoneId zone = item.life().farm().zone();
        LocalDate today = at.atZone(zone).toLocalDate();
        ZonedDateTime end = closes.atZone(zone);
        boolean wholeDay = !item.span().endInside() && end.toLocalTime().equals(LocalTime.MIDNIGHT);
        LocalDate day = wholeDay ? end.toLocalDate().minusDays(1) : end.toLocalDate();
        String name = day(day, today);
        if (wholeDay) {
            return new DueWords(name, END);
        }
        boolean near = day.equals(today) || day.equals(today.plusDays(1)) || day.equals(today.minusDays(1));
        return near ? new DueWords(HOUR.format(end), name) : new DueWords(name, HOUR.format(end));
    }

    /** Both parts in a line. */
    public String line() {
        return first.equals("–") ? "no end is set" : second.equals(END) ? "end of " + first : first + " " + second;
    }

    /** The last local day of a step, null where it has no end. */
    public static LocalDate lastDay(DueItem item) {
        Instant closes = item.span().closes();
        ZoneId zone = item.life().farm().zone();
        return closes == null ? null : closes.minusNanos(1).atZone(zone).toLocalDate();
    }

    private static String day(LocalDate day, LocalDate today) {
        if (day.equals(today)) {
            return "today";
        }
        if (day.equals(today.plusDays(1))) {
            return "tomorrow";
        }
        if (day.equals(today.minusDays(1))) {
            return "yesterday";
        }
        boolean sameYear = Math.abs(day.toEpochDay() - today.toEpochDay()) < 180;
        return (sameYear ? DAY : YEAR).format(day);
    }

    /** The tag number that a calf is called by, else its key. */
    public static String name(Life life) {
        return EarTags.of(life).number().map(TagNumber::shown).orElse(life.key());
    }

    /** How old a calf is at a moment; in hours only where the hour of its birth is known. */
    public static String age(Life life, Instant at) {
        Duration age = life.ageAt(at);
        if (life.birthTimeKnown() && age.toHours() < 48) {
            return age.toMinutes() < 120 ? age.toMinutes() + " min old" : age.toHours() + " h old";
        }
        return "day " + life.dayOfLife(at);
    }
}
