package wisp.simulation;

/**
 * Death that no illness of the model leads to.
 *
 * @param hazard by age
 * @param assisted what ease 3–5 multiplies it by
 * @param twin what being a twin multiplies it by
 */
public record BackgroundDeath(Hazard hazard, double assisted, double twin) {}
