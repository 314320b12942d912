package wisp.event;

/**
 * A medicine was given.
 *
 * @param condition what it was given for, null where not written
 * @param meatWithdrawalDays days after treatment before slaughter for food
 */
public record Treated(
        String medicine,
        Double dose,
        String doseUnit,
        String route,
        String batch,
        String condition,
        Integer meatWithdrawalDays,
        String givenBy)
        implements EventData {

    static Treated read(DataReader in) {
        return new Treated(
                in.requiredText("medicine"),
                in.number("dose", 0, 100_000),
                in.text("dose_unit"),
                in.text("route"),
                in.text("batch"),
                in.condition("condition"),
                in.whole("meat_withdrawal_days", 0, 730),
                in.text("given_by"));
    }

    @Override
    public EventType type() {
        return EventType.TREATED;
    }
}
