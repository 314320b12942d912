package wisp.question;

import java.util.List;
import wisp.statistics.Interval;
import wisp.statistics.WilsonInterval;

/**
 * How many of some calves were dirty.
 *
 * @param name which calves
 * @param n calves scored
 * @param dirty dirty ones among them
 * @param interval the share with its 95 % Wilson interval, null where no calf was scored
 */
public record DirtyShare(String name, int n, int dirty, Interval interval) {
    static final double LEVEL = 0.95;

    static DirtyShare of(String name, int dirty, int n) {
        return new DirtyShare(name, n, dirty, n == 0 ? null : WilsonInterval.of(dirty, n, LEVEL));
    }

    static DirtyShare of(String name, List<ScoredCalf> calves) {
        return of(name, (int) calves.stream().filter(ScoredCalf::dirty).count(), calves.size());
    }

    /** The share, not a number where no calf was scored. */
    public double share() {
        return n == 0 ? Double.NaN : (double) dirty / n;
    }
}
