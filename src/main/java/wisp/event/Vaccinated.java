package wisp.event;

/** A vaccine was given. */
public record Vaccinated(String vaccine, String batch) implements EventData {

    static Vaccinated read(DataReader in) {
        return new Vaccinated(in.requiredText("vaccine"), in.text("batch"));
    }

    @Override
    public EventType type() {
        return EventType.VACCINATED;
    }
}
