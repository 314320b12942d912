/**
 * A copy of the log and of the farm's own definitions in one ZIP file that every store can write and read.
 *
 * <pre>
 * backup.json    format, number of events, the chain's head, when it was made
 * analytics/…    the data folder's own definitions, as they are
 * events.jsonl   one event a line with its sequence and hash, in order
 * </pre>
 *
 * <p>{@link wisp.backup.Backup} writes it, {@link wisp.backup.BackupEvents} reads it and believes no event that does
 * not follow from the one before, {@link wisp.backup.Restore} records it into an empty log up to a {@link
 * wisp.backup.PointInTime}.
 */
package wisp.backup;
