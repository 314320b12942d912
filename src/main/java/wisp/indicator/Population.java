package wisp.indicator;

import wisp.event.Birth.Sex;

/**
 * The calves that a figure is about.
 *
 * @param bornDeadToo true where calves born dead belong to it
 * @param sex only this sex, null for all
 * @param presentAt only calves alive and present past this age, null where nothing is asked
 * @param leaveOutEntire true where bull calves marked to stay entire are left out
 */
public record Population(boolean bornDeadToo, Sex sex, Age presentAt, boolean leaveOutEntire) {}
