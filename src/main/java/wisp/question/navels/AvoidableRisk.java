package wisp.question.navels;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import wisp.cohort.NavelDelay;
import wisp.statistics.Coefficients;
import wisp.statistics.GComputation;
import wisp.statistics.Logistic;

/**
 * What would be avoided if every calf were treated within 15 minutes, were the difference all due to the delay: the
 * risk as things were less the risk with every delay set to the median one of the first class, by g-computation from
 * a logistic model on log2(minutes), a term for calves never treated, and the covariates. Limits by the delta method
 * from the model's covariance, the covariates taken as fixed; pens are taken as independent.
 *
 * @param asItWas the model's mean risk with the delays as they were
 * @param ifEarly the same with every delay as the first class's median
 * @param avoided the first less the second
 * @param minutes the delay that every calf is given, NaN where there is no estimate
 * @param calves in the model
 * @param withCare whether the terms are kept though there are fewer than ten cases for each
 */
public record AvoidableRisk(
        Measured asItWas, Measured ifEarly, Measured avoided, double minutes, int calves, boolean withCare) {
    private static final double DAY = Math.log(1440) / Math.log(2);

    static AvoidableRisk of(List<NavelCalf> everyone) {
        double[] first = DelayClass.in(NavelDelay.TO_15_MIN, everyone).stream()
                .mapToDouble(AdjustedDose::log2)
                .sorted()
                .toArray();
        if (first.length < DelayClass.CALVES_OF_REFERENCE) {
            return none("Fewer than " + DelayClass.CALVES_OF_REFERENCE
                    + " calves were treated within 15 minutes, too few to know how such calves fare here.");
        }
        double early = (first[(first.length - 1) / 2] + first[first.length / 2]) / 2;
        Covariates covariates =
                Covariates.of(everyone.stream().filter(NavelCalf::known).toList());
        if (covariates.tooFew() != null) {
            return none(covariates.tooFew());
        }
        GComputation[] found = new GComputation[1];
        Measured avoided = Measured.of(() -> {
            found[0] = standardised(covariates, early);
            return found[0].difference();
        });
        if (!avoided.known()) {
            return none(avoided.why());
        }
        return new AvoidableRisk(
                new Measured(found[0].exposed(), null),
                new Measured(found[0].unexposed(), null),
                avoided,
                Math.pow(2, early),
                covariates.calves().size(),
                !covariates
                        .withCare(covariates.calves().stream().allMatch(NavelCalf::treated) ? 1 : 2)
                        .isEmpty());
    }

    private static GComputation standardised(Covariates covariates, double early) {
        List<NavelCalf> calves = covariates.calves();
        double[] dose = calves.stream()
                .mapToDouble(calf -> calf.treated() ? AdjustedDose.log2(calf) : DAY)
                .toArray();
        double[] never =
                calves.stream().mapToDouble(calf -> calf.treated() ? 0 : 1).toArray();
        boolean some = IntStream.range(0, never.length).anyMatch(i -> never[i] == 1);
        double[][] asItWas = some ? covariates.design(dose, never) : covariates.design(dose);
        double[] same = new double[dose.length];
        Arrays.fill(same, early);
        double[] none = new double[dose.length];
        double[][] ifEarly = some ? covariates.design(same, none) : covariates.design(same);
        Coefficients fit = Logistic.fit(covariates.outcomes(), asItWas).coefficients();
        return GComputation.of(fit, asItWas, ifEarly, GroupRisk.LEVEL);
    }

    private static AvoidableRisk none(String why) {
        Measured not = Measured.none(why);
        return new AvoidableRisk(not, not, not, Double.NaN, 0, false);
    }
}
