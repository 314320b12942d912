package wisp.question.navels;

import java.util.List;
import wisp.statistics.CannotEstimate;
import wisp.statistics.EValue;

/**
 * Calves treated after more than 60 minutes or not by 24 h, beside those treated within 60 minutes.
 *
 * @param known risk of all calves whose delay is known, late and early together
 * @param late risk of the late
 * @param early risk of the early
 * @param against the late compared with the early
 * @param withinSeasons risk ratio within seasons (Mantel–Haenszel)
 * @param withinNight risk ratio within births by night and births by day, seasons apart (Mantel–Haenszel)
 * @param adjusted logistic model on log2(minutes)
 * @param adjustedRatio risk ratio with covariates allowed for
 * @param eValue of the risk ratio of the counts, null where there is none
 */
public record LateTreatment(
        GroupRisk known,
        GroupRisk late,
        GroupRisk early,
        TwoGroups against,
        Measured withinSeasons,
        Measured withinNight,
        AdjustedDose adjusted,
        AdjustedRatio adjustedRatio,
        EValue eValue) {

    static LateTreatment of(List<NavelCalf> everyone, double days) {
        List<NavelCalf> late = everyone.stream().filter(NavelCalf::late).toList();
        List<NavelCalf> early = everyone.stream().filter(NavelCalf::early).toList();
        TwoGroups against = TwoGroups.of(late, early, days);
        return new LateTreatment(
                GroupRisk.of(everyone.stream().filter(NavelCalf::known).toList(), days),
                GroupRisk.of(late, days),
                GroupRisk.of(early, days),
                against,
                OverPens.riskRatio(OverPens.tables(late, early, calf -> "all")),
                OverPens.riskRatio(OverPens.tables(late, early, calf -> calf.night() ? "night" : "day")),
                AdjustedDose.of(everyone),
                AdjustedRatio.of(everyone),
                eValue(against.riskRatio()));
    }

    private static EValue eValue(Measured ratio) {
        try {
            return ratio.known() ? EValue.of(ratio.interval()) : null;
        } catch (CannotEstimate noRatio) {
            return null;
        }
    }
}
