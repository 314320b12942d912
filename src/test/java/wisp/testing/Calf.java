package wisp.testing;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Set;
import wisp.history.FarmHistory;
import wisp.history.Life;
import wisp.history.LifeFold;
import wisp.log.StoredEvent;

/** One calf in a short log: its events are written by the clock or by its exact age. */
public final class Calf {
    private final Events events;
    private final String key;
    private StoredEvent birth;

    /** A calf of a log of its own by London time. */
    public Calf(String key) {
        this(Events.london(), key);
    }

    /** A calf in a log that others share. */
    public Calf(Events events, String key) {
        this.events = events;
        this.key = key;
    }

    /** A calf called A, born alive at a local time. */
    public static Calf bornAt(String when) {
        return new Calf("A").born(when, "alive: true");
    }

    /** Records its birth. */
    public Calf born(String when, String fields) {
        birth = events.add("birth", key, when, fields);
        return this;
    }

    /** Records an event at a local time. */
    public StoredEvent at(String when, String type, String fields) {
        return events.add(type, key, when, fields);
    }

    /** Records an event at an exact age. */
    public StoredEvent aged(Duration age, String type, String fields) {
        return at(whenAged(age), type, fields);
    }

    /** The moment of an exact age, as text for an event. */
    public String whenAged(Duration age) {
        OffsetDateTime time = birth.event().time().plus(age);
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
    }

    /** Its birth event as first recorded. */
    public StoredEvent birth() {
        return birth;
    }

    /** The log that it stands in. */
    public Events events() {
        return events;
    }

    /** Its life, on the farm that its log describes. */
    public Life life() {
        FarmHistory farm = FarmHistory.of(events.of(FarmHistory.SUBJECT));
        return LifeFold.fold(key, events.of(key), farm, Set.of());
    }
}
