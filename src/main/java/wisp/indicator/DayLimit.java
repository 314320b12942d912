package wisp.indicator;

import java.util.Set;
import java.util.TreeSet;

/**
 * A limit that law sets in days of life; the day named lies inside.
 *
 * @param byDay the last day of life that is inside
 * @param source statute or guidance
 * @param status {@code verified}, or {@code from memory}
 */
public record DayLimit(int byDay, String source, String status) {
    /** The limits in days that a limits file may set. */
    public static final Set<String> NAMES = new TreeSet<>(Set.of("tags", "tissue-sample", "registration", "ring"));
}
