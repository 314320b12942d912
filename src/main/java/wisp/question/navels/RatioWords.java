package wisp.question.navels;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wisp.question.Counted;

/** The ways in which late is set beside early, and the calves that each of them stands on, in words. */
public final class RatioWords {
    private RatioWords() {}

    /** What each way compares, and on how many calves. */
    public static Counted of(NavelsAnswer answer) {
        LateTreatment late = answer.late();
        boolean apart = late.against().mantelHaenszel().seasons() > 1;
        return new Counted("Crude: every calf of known delay, the risks by 21 days as in the answer above. Within pens"
                + (apart ? " and seasons" : "")
                + ", within night (22 to 6 h by the farm's clock; common practice, no source) and day"
                + (apart ? " of each season" : "") + ": like compared with like, and pooled (Mantel–Haenszel). "
                + adjusted(late.adjustedRatio()));
    }

    private static String adjusted(AdjustedRatio adjusted) {
        if (!adjusted.riskRatio().known()) {
            return "Adjusted: none. " + adjusted.riskRatio().why();
        }
        int without = adjusted.leftOut().values().stream().mapToInt(n -> n).sum();
        String what = adjusted.covariates().isEmpty()
                ? "nothing is on record that could be allowed for"
                : NavelsWords.covariates(adjusted.covariates()) + " allowed for";
        return "Adjusted: " + what + ", on the "
                + NavelGroup.COMPARED.count(adjusted.calves(), Plain.count(adjusted.calves(), "calf", "calves"))
                + " with all of that on record"
                + (without == 0
                        ? ""
                        : " (" + NavelGroup.NOT_COMPARED.count(without, Plain.whole(without))
                                + (without == 1 ? " has not)" : " have not)"))
                + "; above it the crude ratio of just these."
                + adjusted.withCare() + notAllowedFor(adjusted.dropped());
    }

    /** What a model does not allow for, and why; each after a blank. */
    static String notAllowedFor(Map<String, String> dropped) {
        List<String> words = new ArrayList<>();
        dropped.forEach(
                (name, why) -> words.add(" Not allowed for: " + NavelsWords.covariates(List.of(name)) + ". " + why));
        return String.join("", words);
    }

    /** How a model was fitted, and what that means for terms that divide cases from others. */
    public static String fitted(AdjustedDose model) {
        if (model.why() != null) {
            return "";
        }
        return "Fitted by " + model.method() + "."
                + (model.method().startsWith("Firth")
                        ? " One term, or some together, part cases from other calves without overlap: only the penalty"
                                + " keeps an odds ratio from running off, and its wide interval says how little is"
                                + " known of it."
                        : "");
    }
}
