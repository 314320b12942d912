package wisp.indicator;

import java.time.Duration;

/**
 * A span of exact age, closed at its end.
 *
 * @param start where it begins
 * @param open true: the start itself lies outside, as in (24 h, 60 d]
 * @param end where it ends, inside
 */
public record Window(Age start, boolean open, Age end) {

    /** Whether an age lies in it. */
    public boolean holds(Duration age) {
        int atStart = age.compareTo(start.exact());
        return (open ? atStart > 0 : atStart >= 0) && age.compareTo(end.exact()) <= 0;
    }

    /** In the notation of mathematics. */
    @Override
    public String toString() {
        return (open ? "(" : "[") + start.text() + ", " + end.text() + "]";
    }
}
