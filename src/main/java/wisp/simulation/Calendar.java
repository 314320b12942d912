package wisp.simulation;

import java.time.LocalDate;
import java.time.OffsetDateTime;

/**
 * When calves are born and when the books are read.
 *
 * @param season its name, such as {@code 2024-25}
 * @param from first day of the season
 * @param to first day after it
 * @param firstBirth no birth before this day
 * @param lastBirth no birth after this day
 * @param peak day about which births crowd
 * @param peakSdDays standard deviation of the crowd, days
 * @param peakShare share of calvings in the crowd; the others lie evenly from first to last birth
 * @param cut when the books are read: nothing that happened, or was written down, later is there
 */
public record Calendar(
        String season,
        LocalDate from,
        LocalDate to,
        LocalDate firstBirth,
        LocalDate lastBirth,
        LocalDate peak,
        double peakSdDays,
        double peakShare,
        OffsetDateTime cut) {}
