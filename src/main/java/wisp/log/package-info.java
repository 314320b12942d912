/** The append-only log of events: sequence without gaps, hash chain, safe retries. Nothing in it is ever changed. */
package wisp.log;
