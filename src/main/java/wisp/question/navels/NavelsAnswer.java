package wisp.question.navels;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import wisp.indicator.Estimate;

/**
 * Whether the time to navel treatment matters here: a landmark analysis at 24 h. A calf is classed by what was done in
 * its first 24 h and followed from then on, so that none can be put in a class by what happened after its infection.
 *
 * @param season the season asked for
 * @param only which calves alone were asked for, in words; empty where no filter narrows the season
 * @param asOf where follow-up ends
 * @param figure the figure of the shipped definition, whole; its calves are those behind every count here
 * @param classes the six classes of delay
 * @param delayUnknown calves at risk at 24 h whose delay is not known
 * @param trend over the five treated classes
 * @param late late against early
 * @param dose the dose–response curve
 * @param missing what calves of unknown delay could change
 * @param avoidable what would be avoided if all were treated in the first class
 * @param needed calves to settle it
 * @param products treated calves by product
 * @param methods treated calves by method
 * @param strata late against early in each part of the calves, where they are divided
 * @param calves every calf counted here: at risk at 24 h, and those born on a day without its hour that only
 *     {@code missing} counts
 * @param stratumOf the part that each row of the cohort falls in, empty where nothing divides
 */
public record NavelsAnswer(
        String season,
        String only,
        Instant asOf,
        Estimate figure,
        List<DelayClass> classes,
        int delayUnknown,
        Tested trend,
        LateTreatment late,
        DoseResponse dose,
        MissingDelay missing,
        AvoidableRisk avoidable,
        CalvesNeeded needed,
        List<CareStratum> products,
        List<CareStratum> methods,
        NavelStrata strata,
        List<NavelCalf> calves,
        Map<Integer, String> stratumOf) {

    /** The class that the others are compared with, null where none holds enough calves. */
    public DelayClass reference() {
        return classes.stream()
                .filter(one -> one.risk().n() >= DelayClass.CALVES_OF_REFERENCE)
                .findFirst()
                .orElse(null);
    }
}
