/**
 * The append-only log of events: sequence without gaps, hash chain, safe retries. Nothing in it is ever changed.
 *
 * <p>What an event passes on its way in: {@link wisp.log.Offered} (its content), {@link wisp.log.Admission} (new,
 * repeated or in conflict), {@link wisp.log.StoredRow} (number, hash, columns), {@link wisp.log.EventTable} (SQL). On
 * its way out {@link wisp.log.CheckedRead} works its hash out again. A store adds where rows lie and what its failures
 * mean; {@code EventLogConformance} in the tests is what each of them must do.
 */
package wisp.log;
