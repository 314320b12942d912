package wisp.log;

import java.time.LocalDate;

/**
 * The chain's head when a day ended.
 *
 * @param day a local day on which something was recorded
 * @param head the newest event then
 */
public record DayHead(LocalDate day, ChainHead head) {}
