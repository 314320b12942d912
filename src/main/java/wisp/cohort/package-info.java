/** Many lives as columns: one row an animal, kept current event by event and always equal to what a replay gives. */
package wisp.cohort;
