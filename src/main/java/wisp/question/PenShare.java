package wisp.question;

import wisp.indicator.Estimate;
import wisp.statistics.FunnelLimits;
import wisp.statistics.Interval;

/**
 * One pen, or any other place where calves are born.
 *
 * @param figure the figure of dirty calves, of this pen alone
 * @param share its scored calves
 * @param kept whether it was ever bedded or cleaned out by the records; passages and fields are not
 * @param meanScore the mean score, not a number where scores are not what is judged
 * @param z distance from the herd's share in standard errors, not a number where all calves are alike
 * @param limits95 between which shares a pen of this size falls 95 times in 100 by chance, null where all are alike
 * @param limits998 the same, 998 times in 1000
 * @param shrunken the share drawn toward the herd's, null where the spread cannot be fitted
 * @param probabilityDirtiest not a number where it cannot be given
 * @param probabilityAboveMedian the same
 * @param daysSinceBedding the median over its calves, not a number where no bedding is on record
 * @param daysElsewhere the same over the calves of all other bedded pens
 * @param others beside all other pens together, null where there is none
 * @param before beside its own last season, null where there is none
 */
public record PenShare(
        Estimate figure,
        DirtyShare share,
        boolean kept,
        double meanScore,
        double z,
        FunnelLimits limits95,
        FunnelLimits limits998,
        Interval shrunken,
        double probabilityDirtiest,
        double probabilityAboveMedian,
        double daysSinceBedding,
        double daysElsewhere,
        PenContrast others,
        PenContrast before) {
    /** Up to so many calves a group is not to be ranked (Hayer et al. 2021, J Anim Sci skab266). */
    public static final int TOO_FEW_TO_RANK = 10;

    /** How a pen stands among the others. */
    public enum Standing {
        /** Dirtier by more than chance. */
        DIRTIER,
        /** Cleaner by more than chance. */
        CLEANER,
        /** What it differs by could be chance. */
        WITHIN
    }

    /** The pen's name. */
    public String pen() {
        return share.name();
    }

    /**
     * How it stands: outside the 95 % limits about the herd's share, and apart from the other pens by an interval and a
     * test that allow for chance and for how many pens were compared.
     */
    public Standing standing() {
        if (others == null || limits95 == null) {
            return Standing.WITHIN;
        }
        if (others.dirtier() && share.share() > limits95.high()) {
            return Standing.DIRTIER;
        }
        return others.cleaner() && share.share() < limits95.low() ? Standing.CLEANER : Standing.WITHIN;
    }

    /** Whether it holds too few calves to be ranked. */
    public boolean tooFewToRank() {
        return share.n() <= TOO_FEW_TO_RANK;
    }
}
