package wisp.due;

/** How a step with a calf stands at one moment; a step stands in exactly one state. */
public enum DueState {
    /** Its window is open and ends within two days. */
    DUE_NOW("due now"),
    /** Its window opens within a day, or is open and ends within seven days. */
    SOON("soon"),
    /** Its window is over, it was not done, and it can still be done. */
    OVERDUE("overdue"),
    /** Its window is over and it cannot be done any more in that way. */
    IMPOSSIBLE_NOW("impossible now"),
    /** There is more time, or no end is set; it may be done earlier where its window is open. */
    LATER("later"),
    /** It was done, in time or late. */
    DONE("done"),
    /** This calf does not need it. */
    NOT_NEEDED("not needed");

    private final String word;

    DueState(String word) {
        this.word = word;
    }

    /** The state in answers and on pages. */
    public String word() {
        return word;
    }

    /** Whether somebody has to think of it. */
    public boolean open() {
        return this == DUE_NOW || this == SOON || this == OVERDUE || this == IMPOSSIBLE_NOW;
    }
}
