package wisp.event;

/** A navel was looked at. */
public record NavelChecked(Finding finding) implements EventData {

    /** What was found; painful and discharging make a case of navel infection. */
    public enum Finding implements Named {
        NORMAL,
        THICKENED,
        PAINFUL,
        DISCHARGING,
        HERNIA
    }

    static NavelChecked read(DataReader in) {
        return new NavelChecked(in.requiredChoice("finding", Finding.class));
    }

    @Override
    public EventType type() {
        return EventType.NAVEL_CHECKED;
    }
}
