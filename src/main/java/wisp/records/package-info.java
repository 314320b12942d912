/** The log, the lives folded from it and the definitions, held together: takes events in and gives cohorts out. */
package wisp.records;
