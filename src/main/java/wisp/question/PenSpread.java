package wisp.question;

import java.util.List;
import wisp.statistics.BetaBinomial;
import wisp.statistics.CannotEstimate;
import wisp.statistics.Interval;

/**
 * How far the pens' true shares lie apart, and each pen's share drawn toward the herd's as far as its few calves demand
 * (beta-binomial, empirical Bayes by maximum likelihood).
 *
 * @param a first shape of the beta distribution of pens, infinite at the boundary, not a number where it is not fitted
 * @param b second shape
 * @param rho likeness within pens, 0 to 1
 * @param boundary whether no spread beyond chance was found: then all shrunken shares equal the herd's
 * @param shrunken one a pen, in order; empty where it cannot be fitted
 * @param dirtiest the probability that each pen is the dirtiest; empty where it cannot be given
 * @param aboveMedian the probability that each pen is dirtier than the middle one of such pens
 * @param why why something cannot be given, null where all can
 */
public record PenSpread(
        double a,
        double b,
        double rho,
        boolean boundary,
        List<Interval> shrunken,
        List<Double> dirtiest,
        List<Double> aboveMedian,
        String why) {

    static PenSpread of(int[] dirty, int[] sizes) {
        BetaBinomial fit;
        try {
            fit = BetaBinomial.fit(dirty, sizes);
        } catch (CannotEstimate cannot) {
            return new PenSpread(
                    Double.NaN, Double.NaN, Double.NaN, false, List.of(), List.of(), List.of(), cannot.getMessage());
        }
        List<Double> dirtiest = List.of();
        String why = null;
        try {
            dirtiest = fit.ranks().probabilityLargest();
        } catch (CannotEstimate tooFarApart) {
            why = tooFarApart.getMessage();
        }
        return new PenSpread(
                fit.alpha(),
                fit.beta(),
                fit.rho(),
                fit.boundary(),
                fit.shrunken(DirtyShare.LEVEL),
                dirtiest,
                fit.probabilityAboveMedian(),
                why);
    }

    /** Whether a distribution was fitted. */
    public boolean fitted() {
        return !shrunken.isEmpty();
    }
}
