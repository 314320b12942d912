package wisp.question.navels;

import wisp.statistics.CannotEstimate;
import wisp.statistics.SampleSize;

/**
 * How many calves it takes to settle a difference of the size seen, with a chance of 80 % that the test at 5 % finds
 * it, late and early in the proportion seen here. Two groups of unlike size are worth two equal ones of their
 * harmonic mean. Calves count as independent; likeness inside pens would ask for more.
 *
 * @param inAll calves of both groups, -1 where it cannot be said
 * @param more beyond those at hand, 0 where there are enough; -1 where it cannot be said
 * @param why null where it can be said
 */
public record CalvesNeeded(long inAll, long more, String why) {
    /** The wanted chance of finding the difference. */
    public static final double POWER = 0.8;

    static CalvesNeeded of(GroupRisk late, GroupRisk early) {
        if (late.n() == 0 || early.n() == 0) {
            return new CalvesNeeded(-1, -1, "One of the two groups has no calf.");
        }
        double one = (double) late.cases() / late.n();
        double two = (double) early.cases() / early.n();
        if (one == two) {
            return new CalvesNeeded(-1, -1, "The two risks seen are the same.");
        }
        if (Math.min(one, two) == 0 || Math.max(one, two) == 1) {
            return new CalvesNeeded(
                    -1,
                    -1,
                    "In one of the two groups " + (Math.min(one, two) == 0 ? "no calf" : "every calf")
                            + " fell ill, so that the size of the difference is not known.");
        }
        try {
            double each = SampleSize.twoRisks(one, two, GroupRisk.LEVEL, POWER, 1);
            double worth = 2.0 * late.n() * early.n() / (late.n() + early.n());
            int now = late.n() + early.n();
            long inAll = (long) Math.ceil(now * each / worth);
            return new CalvesNeeded(inAll, Math.max(0, inAll - now), null);
        } catch (CannotEstimate cannot) {
            return new CalvesNeeded(-1, -1, cannot.getMessage());
        }
    }
}
