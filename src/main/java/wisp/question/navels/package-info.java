/**
 * Whether the time to navel treatment matters: risk by class of delay after a landmark at 24 h, late against early,
 * the curve over minutes, and what cannot be known.
 */
package wisp.question.navels;
