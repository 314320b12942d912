package wisp.calendar;

import biweekly.ICalDataType;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.Classification;
import biweekly.property.Trigger;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Date;
import java.util.List;
import java.util.UUID;
import wisp.due.DueItem;
import wisp.due.DueState;
import wisp.indicator.Basis;

/**
 * What is due as an iCalendar (RFC 5545, with RFC 7986's name and refresh interval). A step whose window ends with a
 * day is a whole day, that of its end, with an alarm at seven in the morning; of one that ends at an hour the last hour
 * is shown, with an alarm at its beginning. What is overdue or no more possible stands on the day asked for until
 * somebody records it. A step keeps its UID for good, whatever is corrected.
 */
public final class DueCalendar {
    private static final LocalTime MORNING = LocalTime.of(7, 0);
    private static final java.time.Duration LAST_HOUR = java.time.Duration.ofHours(1);
    private static final java.time.Duration AHEAD = java.time.Duration.ofDays(60);
    private static final String PRODUCT = "-//Wisp//What is due//EN";

    private final Instant at;
    private final ZoneId zone;
    private final long sequence;
    private final String base;

    /**
     * A calendar.
     *
     * @param at the moment that is asked for
     * @param zone the farm's clocks
     * @param sequence the newest event taken into account; later calendars have a higher one
     * @param base the address of the pages, without a slash at its end
     */
    public DueCalendar(Instant at, ZoneId zone, long sequence, String base) {
        this.at = at;
        this.zone = zone;
        this.sequence = sequence;
        this.base = base;
    }

    /**
     * Whether a step belongs in a calendar: the list of what is due holds it, or it ends within the next sixty days.
     */
    public boolean holds(DueItem item) {
        boolean ahead = item.state() == DueState.LATER
                && item.span().closes() != null
                && item.span().closes().isBefore(at.plus(AHEAD));
        return item.listed() || ahead;
    }

    /** The text of the calendar. */
    public String text(String name, List<DueItem> items) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId(PRODUCT);
        calendar.setName(name);
        calendar.addExperimentalProperty("X-WR-CALNAME", name);
        // RFC 7986, section 5.7, demands the type; the library's own property leaves it out
        calendar.addExperimentalProperty("REFRESH-INTERVAL", ICalDataType.DURATION, "PT15M");
        items.stream().filter(this::holds).map(this::event).forEach(calendar::addEvent);
        StringWriter text = new StringWriter();
        try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null); // it counts characters, not octets
            writer.write(calendar);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return Folding.fold(text.toString());
    }

    private VEvent event(DueItem item) {
        VEvent event = new VEvent();
        event.setUid(uid(item));
        event.setDateTimeStamp(Date.from(at));
        event.setSequence((int) Math.min(sequence, Integer.MAX_VALUE));
        event.setSummary(summary(item));
        event.setDescription(description(item));
        event.setUrl(base + "/calves/" + encoded(item.life().key()));
        event.setClassification(Classification.private_());
        event.addCategories(item.rule().basis().kind() == Basis.Kind.LAW ? "law" : "good practice");
        if (item.pen() != null) {
            event.setLocation(item.pen());
        }
        LocalDate today = at.atZone(zone).toLocalDate();
        Instant closes = item.span().lastEnd();
        if (item.state() == DueState.OVERDUE || item.state() == DueState.IMPOSSIBLE_NOW) {
            wholeDay(event, today);
        } else if (closes == null) {
            LocalDate opens = item.span().opens().atZone(zone).toLocalDate();
            wholeDay(event, opens.isBefore(today) ? today : opens);
        } else if (closes.atZone(zone).toLocalTime().equals(LocalTime.MIDNIGHT)) {
            wholeDay(event, closes.minusNanos(1).atZone(zone).toLocalDate());
        } else {
            lastHour(event, item.span().opens(), closes);
        }
        return event;
    }

    private static void lastHour(VEvent event, Instant opens, Instant closes) {
        Instant hour = closes.minus(LAST_HOUR);
        Instant start = hour.isBefore(opens) ? opens : hour;
        event.setDateStart(Date.from(start), true);
        event.setDateEnd(Date.from(closes), true);
        alarm(event, start);
    }

    private void wholeDay(VEvent event, LocalDate day) {
        event.setDateStart(date(day), false);
        event.setDateEnd(date(day.plusDays(1)), false);
        alarm(event, day.atTime(MORNING).atZone(zone).toInstant());
    }

    private static ICalDate date(LocalDate day) {
        return new ICalDate(new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
    }

    private static void alarm(VEvent event, Instant when) {
        event.addAlarm(
                VAlarm.display(new Trigger(Date.from(when)), event.getSummary().getValue()));
    }

    private static String uid(DueItem item) {
        String name = item.life().born().source() + "\n" + item.life().born().id() + "\n" + item.step();
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)) + "@wisp";
    }

    private static String summary(DueItem item) {
        String whose = item.tag() == null ? item.life().key() : item.tag();
        return switch (item.state()) {
                    case OVERDUE -> "Overdue: ";
                    case IMPOSSIBLE_NOW -> "Too late as planned: ";
                    default -> "";
                }
                + item.title() + ", " + whose;
    }

    private static String description(DueItem item) {
        StringBuilder text = new StringBuilder();
        line(text, "Calf " + item.life().key() + (item.pen() == null ? "" : ", pen " + item.pen()) + ".");
        String place =
                item.rule().place().isEmpty() ? "Good practice" : item.rule().place();
        line(text, place + ": " + item.rule().limit() + ".");
        line(text, "Source: " + item.rule().basis().source());
        line(text, "Checked: " + item.rule().basis().status() + ".");
        line(text, item.why());
        item.ways().forEach(way -> line(text, way));
        item.cautions().forEach(caution -> line(text, caution));
        line(text, "Local law and the vet decide.");
        return text.toString().strip();
    }

    private static void line(StringBuilder text, String line) {
        if (!line.isBlank()) {
            text.append(line).append('\n');
        }
    }

    private static String encoded(String key) {
        return URLEncoder.encode(key, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
