package wisp.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import wisp.due.Due;
import wisp.due.DueItem;
import wisp.indicator.Definitions;
import wisp.testing.Calf;
import wisp.testing.Events;

/** What is due as a calendar, read back with another library (ical4j) than the one that writes it. */
class DueCalendarTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private final Due due = new Due(Definitions.load(null));
    private final Events log = Events.london();

    @Test
    void anotherParserReadsItAndFindsItValid() throws Exception {
        Calf calf =
                new Calf(log, "C1; \"ä\",\\ 1").born("2026-03-01 06:00", "alive: true, sex: male, pen: \"Stroh, 1\"");
        Calendar calendar = parsed(text(calf, "2026-03-01 06:10"));
        assertFalse(calendar.validate().hasErrors(), () -> String.valueOf(validation(calendar)));
        List<VEvent> events = events(calendar);
        assertTrue(events.size() > 5);
        VEvent first = events.get(0);
        assertTrue(
                first.getSummary().getValue().endsWith(", C1; \"ä\",\\ 1"),
                first.getSummary().getValue());
        assertEquals("Stroh, 1", first.getLocation().getValue());
    }

    @Test
    void goodPracticeThatIsLongTooLateLeavesTheCalendarAsItLeavesTheList() throws Exception {
        Calf calf = new Calf(log, "C1").born("2026-03-01 06:00", "alive: true, sex: male");
        assertTrue(text(calf, "2026-03-02 12:00").contains("Too late as planned: First colostrum"));
        String later = text(calf, "2026-04-01 12:00");
        assertFalse(later.contains("colostrum"), later);
        assertTrue(later.contains("Too late as planned: Ring"), later); // it still has to be castrated
    }

    @Test
    void everyStepHasItsOwnUidAndKeepsIt() throws Exception {
        Calf calf = new Calf(log, "C1").born("2026-03-01 06:00", "alive: true, sex: male");
        String before = titled(text(calf, "2026-03-01 07:00"), "ring")
                .getUid()
                .orElseThrow()
                .getValue();
        log.amend(calf.birth(), "2026-03-01 08:00", "2026-03-01 05:30", "alive: true, sex: male");
        Map<String, String> after = uids(text(calf, "2026-03-01 08:30"));
        assertTrue(after.get(before).toLowerCase().contains("ring"), after::toString);
        Calf twin = new Calf(log, "C2").born("2026-03-01 06:05", "alive: true, sex: male");
        for (String uid : uids(text(twin, "2026-03-01 08:30")).keySet()) {
            assertFalse(after.containsKey(uid));
        }
    }

    @Test
    void aLimitInDaysIsTheWholeDayOfItsEndWithAnAlarmInTheMorning() throws Exception {
        // ringed by the end of day 7 in England: 5 April, after the night on which the clocks go forward (29 March
        // 2026)
        Calf calf = new Calf(log, "C1").born("2026-03-29 06:00", "alive: true, sex: male");
        VEvent ring = titled(text(calf, "2026-03-29 12:00"), "ring");
        assertEquals("20260405", value(ring, Property.DTSTART));
        assertEquals("20260406", value(ring, Property.DTEND));
        assertEquals(Instant.parse("2026-04-05T06:00:00Z"), alarm(ring)); // 07:00 of British Summer Time
    }

    @Test
    void aLimitInHoursShowsItsLastHour() throws Exception {
        Calf calf = new Calf(log, "C1").born("2026-03-01 06:00", "alive: true, sex: female");
        VEvent tag = titled(text(calf, "2026-03-01 12:00"), "first tag", "ear tag");
        assertEquals("20260302T170000Z", value(tag, Property.DTSTART)); // 36 h after birth, less one
        assertEquals("20260302T180000Z", value(tag, Property.DTEND));
        assertEquals(Instant.parse("2026-03-02T17:00:00Z"), alarm(tag));
    }

    @Test
    void whatIsOverdueStandsOnTheDayAskedForAndWhatIsDoneIsGone() throws Exception {
        Calf calf = new Calf(log, "C1").born("2026-03-01 06:00", "alive: true, sex: female");
        VEvent late = titled(text(calf, "2026-04-10 09:00"), "overdue: register", "overdue: passport");
        assertEquals("20260410", value(late, Property.DTSTART));
        calf.at("2026-04-10 10:00", "registered", "");
        assertTrue(events(parsed(text(calf, "2026-04-10 11:00"))).stream()
                .noneMatch(event -> event.getSummary().getValue().toLowerCase().contains("regist")));
    }

    @Test
    void aDeadCalfAsksForNothing() throws Exception {
        Calf calf = new Calf(log, "C1").born("2026-03-01 06:00", "alive: true, sex: male");
        calf.at("2026-03-01 08:00", "died", "");
        assertEquals(List.of(), events(parsed(text(calf, "2026-03-01 09:00"))));
    }

    @Test
    void theTextKeepsToRfc5545() throws Exception {
        Calf calf = new Calf(log, "käääääääääääääääääääääääääääääääääääääääääääääääääääääälbchen 🐄🐄🐄🐄🐄🐄🐄🐄🐄🐄")
                .born("2026-03-01 06:00", "alive: true, sex: male");
        String text = text(calf, "2026-03-01 06:10");
        for (String line : text.split("\r\n")) {
            assertFalse(line.contains("\n"), "a line ends with CR LF (RFC 5545, section 3.1)");
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, "75 octets at most (section 3.1): " + line);
        }
        Calendar calendar = parsed(text);
        assertEquals("2.0", calendar.getVersion().getValue());
        assertTrue(text.contains("REFRESH-INTERVAL;VALUE=DURATION:PT15M"), text); // RFC 7986, section 5.7
        for (VEvent event : events(calendar)) {
            assertTrue(event.getUid().isPresent());
            assertTrue(event.getProperty(Property.DTSTAMP).isPresent());
            assertEquals(1, event.getAlarms().size());
        }
    }

    @Test
    void laterCalendarsHaveAHigherSequence() throws Exception {
        Calf calf = new Calf(log, "C1").born("2026-03-01 06:00", "alive: true, sex: male");
        String before = value(events(parsed(text(calf, "2026-03-01 06:10"))).get(0), Property.SEQUENCE);
        log.add("noted", "C1", "2026-03-01 06:12", "text: wet");
        String after = value(events(parsed(text(calf, "2026-03-01 06:15"))).get(0), Property.SEQUENCE);
        assertNotEquals(before, after);
        assertTrue(Integer.parseInt(after) > Integer.parseInt(before));
    }

    private String text(Calf calf, String when) {
        Instant at =
                OffsetDateTime.parse(calf.events().instant(when).toString()).toInstant();
        List<DueItem> items = due.of(calf.life(), 0, at);
        return new DueCalendar(at, LONDON, log.all().size(), "http://localhost:7373").text("Calves", items);
    }

    private static Calendar parsed(String text) throws IOException, ParserException {
        return new CalendarBuilder().build(new StringReader(text));
    }

    private static List<VEvent> events(Calendar calendar) {
        List<VEvent> events = new ArrayList<>();
        calendar.getComponents("VEVENT").forEach(one -> events.add((VEvent) one));
        return events;
    }

    private static Map<String, String> uids(String text) throws IOException, ParserException {
        Map<String, String> uids = new TreeMap<>();
        for (VEvent event : events(parsed(text))) {
            String uid = event.getUid().orElseThrow().getValue();
            assertFalse(uids.containsKey(uid), uid + " twice");
            uids.put(uid, event.getSummary().getValue());
        }
        return uids;
    }

    private static VEvent titled(String text, String... parts) throws IOException, ParserException {
        List<String> seen = new ArrayList<>();
        for (VEvent event : events(parsed(text))) {
            String title = event.getSummary().getValue().toLowerCase();
            seen.add(title);
            for (String part : parts) {
                if (title.contains(part)) {
                    return event;
                }
            }
        }
        throw new AssertionError("none of " + List.of(parts) + " among " + seen);
    }

    private static String value(VEvent event, String property) {
        return event.getProperty(property).orElseThrow().getValue();
    }

    private static Instant alarm(VEvent event) {
        VAlarm alarm = event.getAlarms().get(0);
        String text = alarm.getProperty(Property.TRIGGER).orElseThrow().getValue();
        return Instant.from(DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmssX").parse(text));
    }

    private static String validation(Calendar calendar) {
        return calendar.validate().toString();
    }
}
