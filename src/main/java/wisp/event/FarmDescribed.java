package wisp.event;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/**
 * The farm as it is from this event's time on; a field left out stays as it was.
 *
 * @param jurisdiction whose law holds, such as {@code england}; the name of a limits file
 * @param seasons named spans of local birth dates, null where not given
 */
public record FarmDescribed(String name, ZoneId zone, String jurisdiction, Enterprise enterprise, List<Season> seasons)
        implements EventData {

    /** What the farm keeps. */
    public enum Enterprise implements Named {
        DAIRY,
        BEEF
    }

    /**
     * One named season.
     *
     * @param from first local birth date in it
     * @param to first local birth date after it
     */
    public record Season(String name, LocalDate from, LocalDate to) {}

    static FarmDescribed read(DataReader in) {
        return new FarmDescribed(
                in.text("name"),
                in.zone("zone"),
                in.text("jurisdiction"),
                in.choice("enterprise", Enterprise.class),
                in.seasons("seasons"));
    }

    @Override
    public EventType type() {
        return EventType.FARM_DESCRIBED;
    }
}
