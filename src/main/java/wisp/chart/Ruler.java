package wisp.chart;

/**
 * A stretch of an axis laid along a stretch of paper.
 *
 * @param domain the values shown
 * @param from where the lower end lies, in pixels
 * @param to where the upper end lies, in pixels
 */
record Ruler(Domain domain, double from, double to) {

    /** The place of a value in pixels. */
    double at(double value) {
        return from + share(domain, value) * (to - from);
    }

    /** The place of a value, or of the nearest end where it lies beyond. */
    double cut(double value) {
        return at(domain.cut(value));
    }

    private static double share(Domain domain, double value) {
        return domain.log()
                ? Math.log(value / domain.low()) / Math.log(domain.high() / domain.low())
                : (value - domain.low()) / (domain.high() - domain.low());
    }
}
