package wisp.event;

/** An ear tag was fitted. */
public record TagFitted(String number, Ear ear, Role role) implements EventData {

    /** Which ear. */
    public enum Ear implements Named {
        LEFT,
        RIGHT
    }

    /** Whether it is the primary or the secondary tag of the pair. */
    public enum Role implements Named {
        PRIMARY,
        SECONDARY
    }

    static TagFitted read(DataReader in) {
        return new TagFitted(in.requiredText("number"), in.choice("ear", Ear.class), in.choice("role", Role.class));
    }

    @Override
    public EventType type() {
        return EventType.TAG_FITTED;
    }
}
