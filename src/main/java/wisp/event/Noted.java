package wisp.event;

/** Something worth writing down that no other event says. */
public record Noted(String text) implements EventData {

    static Noted read(DataReader in) {
        return new Noted(in.requiredText("text"));
    }

    @Override
    public EventType type() {
        return EventType.NOTED;
    }
}
