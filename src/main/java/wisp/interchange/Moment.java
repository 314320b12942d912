package wisp.interchange;

/**
 * A time as a cell said it.
 *
 * @param rfc3339 the time with its offset
 * @param known false where the cell held only a date; the time is then the beginning of that day
 */
record Moment(String rfc3339, boolean known) {}
