package wisp.question;

import java.util.List;
import java.util.stream.Stream;
import wisp.statistics.Interval;
import wisp.statistics.WilsonInterval;

/**
 * How many of some calves were dirty.
 *
 * @param name which calves
 * @param n calves scored
 * @param dirty dirty ones among them
 * @param interval the share with its 95 % Wilson interval, null where no calf was scored
 * @param calves those counted in {@code n}, null where the count is that of a figure, which has its own list
 * @param dirtyCalves those counted in {@code dirty}, null likewise
 */
public record DirtyShare(
        String name, int n, int dirty, Interval interval, ScoredCalves calves, ScoredCalves dirtyCalves) {
    static final double LEVEL = 0.95;

    static DirtyShare of(String name, int dirty, int n) {
        return new DirtyShare(name, n, dirty, interval(dirty, n), null, null);
    }

    /**
     * Counts calves and keeps them.
     *
     * @param id what the lists' names in an address begin with
     * @param those what the calves have in common, to follow the word "calves"; may be empty
     */
    static DirtyShare of(String id, String name, String those, List<ScoredCalf> calves) {
        List<ScoredCalf> dirty = calves.stream().filter(ScoredCalf::dirty).toList();
        String end = those.isEmpty() ? "" : " " + those;
        return new DirtyShare(
                name,
                calves.size(),
                dirty.size(),
                interval(dirty.size(), calves.size()),
                new ScoredCalves(id + ".scored", "Scored calves" + end, calves),
                new ScoredCalves(id + ".dirty", "Dirty calves" + end, dirty));
    }

    private static Interval interval(int dirty, int n) {
        return n == 0 ? null : WilsonInterval.of(dirty, n, LEVEL);
    }

    /** The lists that it keeps, none where its calves are those of a figure. */
    Stream<ScoredCalves> lists() {
        return calves == null ? Stream.empty() : Stream.of(calves, dirtyCalves);
    }

    /** The share, not a number where no calf was scored. */
    public double share() {
        return n == 0 ? Double.NaN : (double) dirty / n;
    }
}
