package wisp.indicator;

import java.util.Set;
import java.util.TreeSet;

/**
 * A limit that law sets in days of life; the day named lies inside.
 *
 * @param byDay the last day of life that is inside
 * @param deadToo whether it also holds for calves that were born dead or died before it was done
 * @param basis statute or guidance
 */
public record DayLimit(int byDay, boolean deadToo, Basis basis) implements Limit {
    /** The limits in days that a limits file may set. */
    public static final Set<String> NAMES = new TreeSet<>(Set.of("tags", "tissue-sample", "registration", "ring"));
}
