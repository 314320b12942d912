package wisp.simulation;

/**
 * One thing that is so in the simulation.
 *
 * @param name a plain name, units last
 * @param value a number
 * @param means a sentence that says what it is
 */
public record Truth(String name, double value, String means) {}
