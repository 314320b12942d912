package wisp.question.navels;

import java.util.List;
import java.util.Map;
import wisp.statistics.Coefficients;
import wisp.statistics.Design;
import wisp.statistics.GComputation;
import wisp.statistics.Logistic;

/**
 * Late against early with the covariates allowed for: the risk ratio if all calves had been treated
 * late over that if all had been treated within 60 minutes, by g-computation from a logistic model.
 *
 * @param riskRatio with its interval, the model's own covariance, so that pens are taken as independent
 * @param crude the risk ratio of the counts of just these calves, nothing allowed for
 * @param calves in the model
 * @param covariates that were allowed for
 * @param dropped covariates not used, and why
 * @param leftOut calves of known delay left out, by what was not recorded
 * @param withCare what is to be minded where the cases do not bear the terms; empty where they do
 */
public record AdjustedRatio(
        Measured riskRatio,
        Measured crude,
        int calves,
        List<String> covariates,
        Map<String, String> dropped,
        Map<String, Integer> leftOut,
        String withCare) {

    static AdjustedRatio of(List<NavelCalf> everyone) {
        Covariates covariates =
                Covariates.of(everyone.stream().filter(NavelCalf::known).toList());
        double[] late = covariates.calves().stream()
                .mapToDouble(calf -> calf.late() ? 1 : 0)
                .toArray();
        String tooFew = covariates.tooFew();
        Measured ratio = tooFew != null
                ? Measured.none(tooFew)
                : Measured.of(() -> {
                    double[][] design = covariates.design(late);
                    Coefficients fit =
                            Logistic.fit(covariates.outcomes(), design).coefficients();
                    return GComputation.of(fit, Design.with(design, 1, 1), Design.with(design, 1, 0), GroupRisk.LEVEL)
                            .ratio();
                });
        List<NavelCalf> calves = covariates.calves();
        return new AdjustedRatio(
                ratio,
                TwoGroups.riskRatio(
                        OverPens.table(NavelGroup.LATE.of(calves), NavelGroup.EARLY.of(calves), calf -> true)),
                calves.size(),
                covariates.names(),
                covariates.dropped(),
                covariates.leftOut(),
                covariates.withCare(1));
    }
}
