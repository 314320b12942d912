/**
 * One season of an invented farm, drawn from a stated hazard model, as events. The model's constants are the truth that
 * an analysis of the events ought to find again.
 */
package wisp.simulation;
