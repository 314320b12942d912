package wisp.indicator;

import wisp.history.Life;
import wisp.history.Mark;

/**
 * A marked event that a figure leaves out.
 *
 * @param life of the animal that it is of
 * @param mark the event and what is wrong with it
 */
public record MarkedEvent(Life life, Mark mark) {}
