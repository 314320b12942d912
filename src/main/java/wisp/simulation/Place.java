package wisp.simulation;

/**
 * A place where calves are born.
 *
 * @param calvingPen false for a place outside the calving pens
 * @param share its share of the births inside, or outside, the calving pens; shares need not add up to one
 * @param dirtiness what it adds to the log odds of a dirtier calf; fixed, not drawn anew each season
 * @param beddedEveryDays days from one bedding to the next, 0 for a place that gets none
 */
public record Place(String name, boolean calvingPen, double share, double dirtiness, int beddedEveryDays) {}
