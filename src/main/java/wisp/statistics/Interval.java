package wisp.statistics;

/**
 * A point estimate with its two-sided confidence interval.
 *
 * @param value the point estimate, in the unit of what was estimated
 * @param low lower limit, same unit
 * @param high upper limit, same unit
 * @param level confidence level, such as 0.95
 * @param method the textbook name of the method, such as "Wilson score"
 */
public record Interval(double value, double low, double high, double level, String method) {}
