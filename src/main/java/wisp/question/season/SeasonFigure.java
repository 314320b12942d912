package wisp.question.season;

import wisp.indicator.Estimate;
import wisp.indicator.Target;

/**
 * One figure of the season, beside last season's and its targets.
 *
 * @param estimate the figure with its comparison
 * @param standardised the comparison with the same mix of calves, null where there is no last season
 * @param own the farm's own target, null where it set none
 * @param headline whether it is one of the figures that are searched for something that stands out
 * @param adjustedP p-value of the difference after Holm's adjustment over the headline figures; mortality, asked
 *     for beforehand, has its own; NaN elsewhere
 */
public record SeasonFigure(
        Estimate estimate, Standardised standardised, Target own, boolean headline, double adjustedP) {

    /** How it stands to the farm's own target, null without one or without an estimate. */
    public Target.Standing ownStanding() {
        return estimate.standing(own);
    }

    /** Whether it was looked through with others, and not asked for beforehand as mortality is. */
    public boolean lookedThrough() {
        return !Double.isNaN(adjustedP) && !estimate.indicator().id().equals(SeasonQuestion.MORTALITY);
    }

    /** Whether chance explains its difference from last season; a headline figure answers for all searched. */
    public Chance chance() {
        if (estimate.comparison() == null) {
            return Chance.CANNOT_SAY;
        }
        return Chance.of(
                estimate.comparison(),
                headline ? adjustedP : estimate.comparison().p());
    }

    SeasonFigure adjusted(double p) {
        return new SeasonFigure(estimate, standardised, own, headline, p);
    }
}
