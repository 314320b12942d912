/**
 * Limits of law and good practice applied to lives: what is due, by when, what is no more possible, what was missed.
 */
package wisp.due;
