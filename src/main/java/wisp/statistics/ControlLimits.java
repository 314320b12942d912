package wisp.statistics;

/**
 * One point of a control chart with its limits.
 *
 * @param value what is plotted
 * @param centre the centre line
 * @param low lower control limit
 * @param high upper control limit
 */
public record ControlLimits(double value, double centre, double low, double high) {

    /** Whether the point lies outside its limits. */
    public boolean outside() {
        return value < low || value > high;
    }
}
