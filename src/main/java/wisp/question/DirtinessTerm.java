package wisp.question;

import wisp.statistics.Interval;

/**
 * What one more day since bedding, or one more calving in the last week, goes along with: a term of a logistic model of
 * the calves of bedded pens.
 *
 * @param name what there is one more of
 * @param crude odds ratio by itself, null where it cannot be estimated
 * @param within odds ratio within pens, days and calvings in one model with a term for each pen and, where the data
 *     allow, the time of year
 * @param adjustedP p-value of {@code within}, Holm's adjustment for all that the model is asked
 * @param calves those in the model
 * @param method how {@code within} was fitted, empty where it was not
 * @param why why an odds ratio is missing, null where both stand
 */
public record DirtinessTerm(
        String name,
        Interval crude,
        Interval within,
        double adjustedP,
        ScoredCalves calves,
        String method,
        String why) {
    static final String BEDDING = "one more day since bedding";
    static final String CALVING = "one more calving in the pen in the last 7 days";

    /** Calves in the model. */
    public int n() {
        return calves.count();
    }

    /** Whether it goes along with more, or fewer, dirty calves by more than chance. */
    public boolean moreThanChance() {
        return within != null && adjustedP < 0.05 && (within.low() > 1 || within.high() < 1);
    }
}
