package wisp.backup;

import wisp.log.ChainHead;

/**
 * What was restored.
 *
 * @param head the newest event now in the log
 * @param leftOut how many events of the backup came later
 * @param files how many of the farm's own definitions were put back
 * @param note what else must be known, whole sentences; empty where nothing
 */
public record Restored(ChainHead head, long leftOut, int files, String note) {}
