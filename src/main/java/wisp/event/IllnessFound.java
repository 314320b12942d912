package wisp.event;

/**
 * An illness was found.
 *
 * @param condition a key of the conditions file
 * @param severity 1 mild to 3 severe
 * @param temperatureC rectal temperature, degrees Celsius
 */
public record IllnessFound(String condition, Integer severity, Double temperatureC, String signs) implements EventData {

    static IllnessFound read(DataReader in) {
        return new IllnessFound(
                in.requiredCondition("condition"),
                in.whole("severity", 1, 3),
                in.number("temperature_c", 25, 45),
                in.text("signs"));
    }

    @Override
    public EventType type() {
        return EventType.ILLNESS_FOUND;
    }
}
