package wisp.question;

import java.util.ArrayList;
import java.util.List;
import wisp.statistics.CannotEstimate;
import wisp.statistics.FisherExactTest;
import wisp.statistics.Interval;
import wisp.statistics.MultipleTesting;
import wisp.statistics.NewcombeDifference;
import wisp.statistics.TwoByTwoTable;

/**
 * A pen's share beside another: of all other pens, or of the same pen last season.
 *
 * @param with the other share
 * @param difference this share less the other, Newcombe's 95 % interval
 * @param p Fisher's exact two-sided p-value, not a number where all calves are alike
 * @param adjustedP the same with Holm's adjustment for all pens compared
 * @param comparisons how many pens were compared at once
 */
public record PenContrast(DirtyShare with, Interval difference, double p, double adjustedP, int comparisons) {
    private static final double LEVEL = 0.05;

    /** Whether the difference is more than chance: by its own interval and by the adjusted p-value. */
    public boolean moreThanChance() {
        return adjustedP < LEVEL && (difference.low() > 0 || difference.high() < 0);
    }

    /** Whether it is more than chance and the pen is the dirtier one. */
    public boolean dirtier() {
        return moreThanChance() && difference.value() > 0;
    }

    /** Whether it is more than chance and the pen is the cleaner one. */
    public boolean cleaner() {
        return moreThanChance() && difference.value() < 0;
    }

    /**
     * Every share beside its partner; a pair without calves on one side gives null and is no comparison.
     *
     */
    static List<PenContrast> all(List<DirtyShare> shares, List<DirtyShare> partners) {
        List<PenContrast> plain = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            plain.add(plain(shares.get(i), partners.get(i)));
        }
        double[] p = plain.stream()
                .filter(contrast -> contrast != null && !Double.isNaN(contrast.p))
                .mapToDouble(PenContrast::p)
                .toArray();
        boolean mirrored = shares.size() == 2
                && shares.get(1).equals(partners.get(0))
                && shares.get(0).equals(partners.get(1));
        double[] adjusted = p.length == 0 || mirrored ? p : MultipleTesting.holm(p);
        List<PenContrast> all = new ArrayList<>();
        int next = 0;
        for (PenContrast contrast : plain) {
            boolean tested = contrast != null && !Double.isNaN(contrast.p);
            all.add(contrast == null ? null : contrast.adjusted(tested ? adjusted[next++] : Double.NaN, p.length));
        }
        return all;
    }

    private PenContrast adjusted(double value, int made) {
        return new PenContrast(with, difference, p, value, made);
    }

    private static PenContrast plain(DirtyShare share, DirtyShare other) {
        if (share.n() == 0 || other == null || other.n() == 0) {
            return null;
        }
        TwoByTwoTable table = TwoByTwoTable.ofGroups(share.dirty(), share.n(), other.dirty(), other.n());
        return new PenContrast(other, NewcombeDifference.of(table, DirtyShare.LEVEL), fisher(table), Double.NaN, 1);
    }

    static double fisher(TwoByTwoTable table) {
        try {
            return FisherExactTest.twoSided(table);
        } catch (CannotEstimate alike) {
            return Double.NaN;
        }
    }
}
