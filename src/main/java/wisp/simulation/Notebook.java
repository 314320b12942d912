package wisp.simulation;

import java.time.DayOfWeek;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wisp.event.Event;
import wisp.event.EventData;

/**
 * One calf's page as the staff keep it: what happens after the calf's death or leaving, or is written down after the
 * cut, is not there.
 */
final class Notebook {
    private final Recording recording;
    private final WallClock clock;
    private final Chance chance;
    private final String source;
    private final String subject;
    private final long cut;
    private final List<Event> events = new ArrayList<>(28);
    private long last = Long.MAX_VALUE;
    private int written;

    Notebook(Model model, String source, String subject, WallClock clock, Chance chance) {
        this.recording = model.recording();
        this.clock = clock;
        this.chance = chance;
        this.source = source;
        this.subject = subject;
        this.cut = model.calendar().cut().toEpochSecond() / 60;
    }

    /** Nothing is written that happens after this minute. */
    void endsAt(long minute) {
        last = Math.min(last, minute);
    }

    boolean open(long minute) {
        return minute <= last && minute <= cut;
    }

    /** Writes an event; null where the page has ended before it. */
    Event write(long minute, EventData data) {
        return write(minute, true, chance.happens(recording.late()) ? late() : delay(), data);
    }

    /** Writes an event of which only the date is known. */
    Event writeDate(long minute, EventData data) {
        return write(minute, false, delay(), data);
    }

    /** Writes an event within the hour. */
    Event writeAtOnce(long minute, EventData data) {
        return write(minute, true, chance.whole(1, 50), data);
    }

    /** Writes an event with a date that it did not have, when it truly was. */
    void writeMisdated(long wrong, long when, EventData data) {
        if (open(when)) {
            write(wrong, true, when - wrong, data);
        }
    }

    /** Events in order of recording. */
    List<Event> events() {
        events.sort(Comparator.comparing(Event::recordedTime, OffsetDateTime.timeLineOrder()));
        return events;
    }

    String source() {
        return source;
    }

    private Event write(long minute, boolean timeKnown, long delay, EventData data) {
        long recorded = minute + delay;
        if (!open(minute) || recorded > cut) {
            return null;
        }
        OffsetDateTime time = timeKnown ? clock.at(minute) : clock.startOfDay(minute);
        String id = subject + "-" + ++written;
        OffsetDateTime recordedTime = clock.at(recorded);
        Event event = new Event(source, id, subject, time, timeKnown, recordedTime, role(recordedTime), data, null);
        events.add(event);
        return event;
    }

    private long delay() {
        double u = chance.uniform();
        if (u < recording.nextDay()) {
            return chance.whole(1200, 1800);
        }
        return u < recording.nextDay() + recording.endOfShift() ? chance.whole(120, 480) : chance.whole(2, 55);
    }

    private long late() {
        return chance.whole(2880, 8640);
    }

    private static String role(OffsetDateTime at) {
        DayOfWeek day = at.getDayOfWeek();
        int hour = at.getHour();
        if (hour >= 22 || hour < 5) {
            return "night";
        }
        if (day == DayOfWeek.SATURDAY || day == DayOfWeek.SUNDAY) {
            return "weekend";
        }
        return hour < 13 ? "morning" : "evening";
    }
}
