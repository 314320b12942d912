package wisp.chart;

/**
 * A place on an axis that is labelled.
 *
 * @param value the place, in the axis's own units
 * @param label what is written there
 */
record Tick(double value, String label) {}
