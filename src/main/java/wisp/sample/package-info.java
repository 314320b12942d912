/**
 * Tissue samples from taking to result, the alert that a positive one raises, and whose a laboratory's tag number is.
 */
package wisp.sample;
