package wisp.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Gamma;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * Groups' risks drawn from one beta distribution, fitted by maximum likelihood to each group's cases among its members,
 * and each group's risk shrunken toward the mean (empirical Bayes).
 *
 * <p>With mean μ and θ = 1/(α+β) the likelihood of x among n is, up to the binomial coefficient (Griffiths 1973
 * Biometrics 29:637; Williams 1975 Biometrics 31:949),
 *
 * <pre>∏(r&lt;x) (μ + rθ) · ∏(r&lt;n-x) (1-μ + rθ) / ∏(r&lt;n) (1 + rθ)</pre>
 *
 * <p>which is smooth down to θ = 0, the plain binomial. The intra-class correlation is ρ = 1/(α+β+1). Given the data a
 * group's risk is Beta(α+x, β+n-x); α and β are taken as known, so the intervals leave out their uncertainty and are
 * too narrow when groups are few (Carlin &amp; Louis, Bayes and Empirical Bayes Methods, 2nd ed. 2000, ch. 3):
 * with twenty groups of 15 to 54 at ρ = 0.05 a 95 % interval held some 90 % of the true risks.
 *
 * <p>Where the groups differ no more than chance the maximum is at ρ = 0: then {@link #boundary} is true, α and β are
 * {@link Double#POSITIVE_INFINITY}, every group's value is the pooled proportion with its Wilson interval, and every
 * group is as likely as any other to be the largest. That says that no difference was seen, not that there is none.
 *
 * @param alpha α, first shape
 * @param beta β, second shape
 * @param mean μ = α/(α+β), the pooled proportion at the boundary
 * @param rho intra-class correlation, 0 to 1
 * @param boundary whether the maximum is at ρ = 0
 * @param logLikelihood with the binomial coefficients
 * @param cases cases in each group
 * @param sizes members of each group
 */
public record BetaBinomial(
        double alpha,
        double beta,
        double mean,
        double rho,
        boolean boundary,
        double logLikelihood,
        List<Integer> cases,
        List<Integer> sizes) {

    /** The method's name in {@link Interval#method()}. */
    public static final String METHOD = "beta-binomial shrinkage";

    /** The method's name in {@link Interval#method()} where no spread was found. */
    public static final String BOUNDARY_METHOD = "pooled, no spread between groups, Wilson score";

    private static final String WHAT = "The spread between groups";

    /**
     * Fits groups' cases among their members.
     *
     * @param cases cases in each group
     * @param sizes members of each group, in the same order; a group of 0 is kept and says nothing
     * @throws CannotEstimate if the rows differ in length, a count is impossible, fewer than two groups have members,
     *     no group has two, everyone or no one is a case, or each group is either all cases or none (ρ would be 1)
     */
    public static BetaBinomial fit(int[] cases, int[] sizes) {
        requireInformation(cases, sizes);
        BetaBinomialLikelihood likelihood = BetaBinomialLikelihood.of(cases, sizes);
        double theta = DispersionSearch.maximum(
                candidate -> likelihood.slope(likelihood.meanAt(candidate), candidate),
                candidate -> likelihood.log(likelihood.meanAt(candidate), candidate));
        double mean = likelihood.meanAt(theta);
        return new BetaBinomial(
                mean / theta,
                (1 - mean) / theta,
                mean,
                theta / (1 + theta),
                theta == 0,
                likelihood.log(mean, theta),
                Arrays.stream(cases).boxed().toList(),
                Arrays.stream(sizes).boxed().toList());
    }

    private static void requireInformation(int[] cases, int[] sizes) {
        Require.sameLength(WHAT, cases.length, sizes.length);
        for (int i = 0; i < cases.length; i++) {
            if (cases[i] != 0 || sizes[i] != 0) {
                Require.share(WHAT, cases[i], sizes[i]);
            }
        }
        if (Arrays.stream(sizes).filter(n -> n > 0).count() < 2) {
            throw new CannotEstimate(WHAT, "fewer than two groups have members");
        }
        if (Arrays.stream(sizes).allMatch(n -> n < 2)) {
            throw new CannotEstimate(WHAT, "no group has two members, so that likeness within groups cannot be seen");
        }
        long total = Arrays.stream(cases).asLongStream().sum();
        if (total == 0 || total == Arrays.stream(sizes).asLongStream().sum()) {
            throw new CannotEstimate(WHAT, total == 0 ? "there is no case in any group" : "everyone is a case");
        }
        if (IntStream.range(0, cases.length).allMatch(i -> cases[i] == 0 || cases[i] == sizes[i])) {
            throw new CannotEstimate(WHAT, "every group is either all cases or none");
        }
    }

    /**
     * Each group's posterior mean with its equal-tailed posterior interval, in the order of the input.
     *
     * @throws CannotEstimate if the level is not in (0, 1)
     */
    public List<Interval> shrunken(double level) {
        Require.level(WHAT, level);
        if (boundary) {
            int total = cases.stream().mapToInt(Integer::intValue).sum();
            int everyone = sizes.stream().mapToInt(Integer::intValue).sum();
            Interval wilson = WilsonInterval.of(total, everyone, level);
            Interval pooled = new Interval(wilson.value(), wilson.low(), wilson.high(), level, BOUNDARY_METHOD);
            return cases.stream().map(x -> pooled).toList();
        }
        double tail = (1 - level) / 2;
        return IntStream.range(0, cases.size())
                .mapToObj(i -> new Interval(
                        first(i) / (first(i) + second(i)),
                        Quantile.beta(tail, first(i), second(i)),
                        Quantile.beta(1 - tail, first(i), second(i)),
                        level,
                        METHOD))
                .toList();
    }

    /**
     * The chance that each group's risk is the largest of all, and its expected rank (1 is the largest), under the
     * independent posteriors, by numerical integration on the logit scale (Laird &amp; Louis 1989 J Educ Stat 14:29).
     */
    public PosteriorRanks ranks() {
        int groups = cases.size();
        return boundary
                ? PosteriorRanks.equal(groups)
                : PosteriorRanks.integrate(IntStream.range(0, groups)
                        .mapToObj(i -> logitPosterior(first(i), second(i)))
                        .toList());
    }

    /**
     * The probability that each group's risk is above the median of the fitted beta distribution, so above that of the
     * middle one of all groups like these; one half at the boundary, where every group is the same.
     */
    public List<Double> probabilityAboveMedian() {
        double median = boundary ? mean : Quantile.beta(0.5, alpha, beta);
        return IntStream.range(0, cases.size())
                .mapToObj(i -> boundary
                        ? 0.5
                        : BetaDistribution.of(first(i), second(i)).survivalProbability(median))
                .toList();
    }

    private double first(int group) {
        return alpha + cases.get(group);
    }

    private double second(int group) {
        return beta + sizes.get(group) - cases.get(group);
    }

    private static PosteriorRanks.Posterior logitPosterior(double a, double b) {
        BetaDistribution posterior = BetaDistribution.of(a, b);
        double logBeta = Beta.logBeta(a, b);
        return new PosteriorRanks.Posterior(
                logit -> Math.exp(-a * Math.log1p(Math.exp(-logit)) - b * Math.log1p(Math.exp(logit)) - logBeta),
                logit -> posterior.cumulativeProbability(1 / (1 + Math.exp(-logit))),
                logit(Quantile.beta(1e-13, a, b)),
                -logit(Quantile.beta(1e-13, b, a)),
                Math.sqrt(Gamma.trigamma(a) + Gamma.trigamma(b)));
    }

    private static double logit(double share) {
        return share == 0 ? -600 : Math.log(share) - Math.log1p(-share);
    }
}
