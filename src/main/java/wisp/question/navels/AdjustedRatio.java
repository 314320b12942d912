package wisp.question.navels;

import java.util.List;
import wisp.statistics.Coefficients;
import wisp.statistics.Design;
import wisp.statistics.GComputation;
import wisp.statistics.Logistic;

/**
 * Late against early with cleanliness, ease and colostrum allowed for: the risk ratio if all calves had been treated
 * late over that if all had been treated within 60 minutes, by g-computation from a logistic model.
 *
 * @param riskRatio with its interval, the model's own covariance, so that pens are taken as independent
 * @param calves in the model
 * @param covariates that were allowed for
 */
public record AdjustedRatio(Measured riskRatio, int calves, List<String> covariates) {

    static AdjustedRatio of(List<NavelCalf> everyone) {
        Covariates covariates =
                Covariates.of(everyone.stream().filter(NavelCalf::known).toList());
        double[] late = covariates.calves().stream()
                .mapToDouble(calf -> calf.late() ? 1 : 0)
                .toArray();
        Measured ratio = Measured.of(() -> {
            double[][] design = covariates.design(late);
            Coefficients fit = Logistic.fit(covariates.outcomes(), design).coefficients();
            return GComputation.of(fit, Design.with(design, 1, 1), Design.with(design, 1, 0), GroupRisk.LEVEL)
                    .ratio();
        });
        return new AdjustedRatio(ratio, covariates.calves().size(), covariates.names());
    }
}
