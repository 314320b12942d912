package wisp.indicator;

/**
 * A value to be reached.
 *
 * @param below true: the figure should lie below it; false: at least at it
 * @param value in the figure's unit
 * @param source who set it and where it is published
 */
public record Target(boolean below, double value, String source) {

    /** How an estimate stands to the target. */
    public enum Standing {
        MET,
        MISSED,
        UNSURE
    }

    /** Met or missed only when the whole interval lies on one side. */
    public Standing standing(double low, double high) {
        if (below ? high < value : low >= value) {
            return Standing.MET;
        }
        return (below ? low >= value : high < value) ? Standing.MISSED : Standing.UNSURE;
    }
}
