package wisp.event;

/** Horn buds were removed. */
public record Disbudded(String method, Relief anaesthetic, Relief painRelief) implements EventData {

    static Disbudded read(DataReader in) {
        return new Disbudded(in.requiredText("method"), in.relief("anaesthetic"), in.relief("pain_relief"));
    }

    @Override
    public EventType type() {
        return EventType.DISBUDDED;
    }
}
