package wisp.calendar;

import java.time.LocalDate;

/**
 * One person's calendar of what is due.
 *
 * @param person whose it is
 * @param pen the pen whose calves it holds, empty for all
 * @param made the day on which it was made
 * @param digest SHA-256, in hex, of the secret in its address; the secret itself is kept nowhere
 */
public record CalendarAddress(String person, String pen, LocalDate made, String digest) {}
