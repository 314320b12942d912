package wisp.event;

/**
 * A calf was born. Everything but {@code alive} may be null.
 *
 * @param ease calving ease, 1 unassisted to 5
 * @param litterSize calves born at this calving, 2 for twins
 * @param damParity the dam's calvings, this one included
 * @param keepEntire true for a bull calf that is to stay uncastrated
 */
public record Birth(
        boolean alive,
        Sex sex,
        String dam,
        String sire,
        String breed,
        String pen,
        Integer ease,
        Integer litterSize,
        Integer damParity,
        Double weightKg,
        Boolean keepEntire)
        implements EventData {

    /** A calf's sex as written at birth. */
    public enum Sex implements Named {
        FEMALE,
        MALE,
        UNKNOWN
    }

    static Birth read(DataReader in) {
        return new Birth(
                in.requiredFlag("alive"),
                in.choice("sex", Sex.class),
                in.text("dam"),
                in.text("sire"),
                in.text("breed"),
                in.text("pen"),
                in.whole("ease", 1, 5),
                in.whole("litter_size", 1, 6),
                in.whole("dam_parity", 0, 30),
                in.number("weight_kg", 3, 150),
                in.flag("keep_entire"));
    }

    @Override
    public EventType type() {
        return EventType.BIRTH;
    }
}
