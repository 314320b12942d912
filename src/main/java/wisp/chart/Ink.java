package wisp.chart;

/**
 * The part that a layer plays, from which a painter takes colour, shape and dash; never a colour itself.
 *
 * <p>Every ink differs from the others by shape or dash as well as by colour, so a picture can be read without colour.
 */
public enum Ink {
    /** The main series: filled dot, full line. */
    FIRST,
    /** What it is compared with: ring, dashed line. */
    SECOND,
    /** A third series: filled square, dotted line. */
    THIRD,
    /** A fourth series: filled triangle, dash-dot line. */
    FOURTH,
    /** A summary of the others: filled diamond. */
    SUMMARY,
    /** Background: small grey dot, thin line. */
    MUTED,
    /** Outside its limits: cross in a warning colour. */
    ALARM
}
