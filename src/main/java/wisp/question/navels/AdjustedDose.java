package wisp.question.navels;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import wisp.statistics.CannotEstimate;
import wisp.statistics.ClusterRobust;
import wisp.statistics.Coefficients;
import wisp.statistics.Interval;
import wisp.statistics.Logistic;

/**
 * A logistic model of the treated calves: the log odds of a navel case on log2(minutes) to treatment, with
 * the covariates. A delay below one minute counts as one minute. Calves never treated have no
 * minutes and are not in it. Beside the model's standard error stands the one that allows for likeness inside pens
 * (sandwich with the factor g / (g - 1), as R's {@code sandwich::vcovCL}); pens are few, so that its interval is by
 * Student's t on g - 1.
 *
 * @param terms one a column; empty where it cannot be fitted
 * @param calves in the model
 * @param cases among them
 * @param clusters pens, calves without a pen standing alone
 * @param withoutPen calves without a pen
 * @param dropped covariates not used, and why
 * @param leftOut calves left out, by what was not recorded
 * @param method how it was fitted
 * @param withCare what is to be minded where the cases do not bear the terms; empty where they do
 * @param why why it cannot be fitted, null where it can
 */
public record AdjustedDose(
        List<Term> terms,
        int calves,
        int cases,
        int clusters,
        int withoutPen,
        Map<String, String> dropped,
        Map<String, Integer> leftOut,
        String method,
        String withCare,
        String why) {

    /** The name of the term that the question is about. */
    public static final String DOSE = "log2_minutes";

    /**
     * One coefficient, on the scale of log odds.
     *
     * @param wald estimate and interval by the model's standard error
     * @param clustered the same by the standard error that allows for pens, null where there is one pen only
     */
    public record Term(
            String name, Interval wald, double standardError, Interval clustered, double clusteredStandardError) {
        /** The odds ratio of one unit more. */
        public Interval oddsRatio() {
            return new Interval(
                    Math.exp(wald.value()), Math.exp(wald.low()), Math.exp(wald.high()), wald.level(), wald.method());
        }
    }

    static AdjustedDose of(List<NavelCalf> everyone) {
        List<NavelCalf> treated = everyone.stream().filter(NavelCalf::treated).toList();
        Covariates covariates = Covariates.of(treated);
        int cases = (int) covariates.calves().stream().filter(NavelCalf::sick).count();
        double[] dose =
                covariates.calves().stream().mapToDouble(AdjustedDose::log2).toArray();
        int[] clusters = covariates.clusters();
        int pens = (int) Arrays.stream(clusters).distinct().count();
        List<Term> terms = List.of();
        String method = "";
        String why = covariates.tooFew();
        try {
            if (why == null) {
                var fit = Logistic.fit(covariates.outcomes(), covariates.design(dose));
                method = fit.coefficients().method();
                Coefficients robust =
                        pens < 2 ? null : ClusterRobust.of(fit, clusters, ClusterRobust.SmallSample.CLUSTERS);
                terms = terms(names(covariates), fit.coefficients(), robust, pens);
            }
        } catch (CannotEstimate cannot) {
            why = cannot.getMessage();
        }
        return new AdjustedDose(
                terms,
                covariates.calves().size(),
                cases,
                pens,
                (int) covariates.calves().stream()
                        .filter(calf -> calf.pen() == null)
                        .count(),
                covariates.dropped(),
                covariates.leftOut(),
                method,
                covariates.withCare(1),
                why);
    }

    /** The term of the delay itself, null where the model cannot be fitted. */
    public Term dose() {
        return terms.stream()
                .filter(term -> term.name().equals(DOSE))
                .findFirst()
                .orElse(null);
    }

    static double log2(NavelCalf calf) {
        return Math.log(Math.max(1, calf.minutes())) / Math.log(2);
    }

    private static List<String> names(Covariates covariates) {
        List<String> names = new ArrayList<>(List.of("intercept", DOSE));
        names.addAll(covariates.terms());
        return names;
    }

    private static List<Term> terms(List<String> names, Coefficients model, Coefficients robust, int pens) {
        List<Term> terms = new ArrayList<>();
        for (int j = 0; j < names.size(); j++) {
            terms.add(new Term(
                    names.get(j),
                    model.wald(j, GroupRisk.LEVEL),
                    model.standardError(j),
                    robust == null ? null : robust.waldT(j, GroupRisk.LEVEL, pens - 1),
                    robust == null ? Double.NaN : robust.standardError(j)));
        }
        return terms;
    }
}
