package wisp.question.season;

import wisp.indicator.Comparison;

/** Whether chance explains a difference, decided the same way wherever it is said. */
public enum Chance {
    /** The interval leaves out no difference, and the test agrees. */
    MORE_THAN_CHANCE,
    /** This difference alone would be more, but as one of so many that were compared it could be chance. */
    CHANCE_AMONG_MANY,
    /** No difference is among what the records do not rule out. */
    COULD_BE_CHANCE,
    /** One of the two has no estimate. */
    CANNOT_SAY;

    /** The two must agree: the 95 % interval of the difference and the p-value, adjusted where many are compared. */
    static Chance of(Comparison comparison, double p) {
        if (comparison == null || comparison.difference() == null) {
            return CANNOT_SAY;
        }
        boolean apart =
                comparison.difference().low() > 0 || comparison.difference().high() < 0;
        if (apart && p < 0.05) {
            return MORE_THAN_CHANCE;
        }
        return apart && comparison.p() < 0.05 ? CHANCE_AMONG_MANY : COULD_BE_CHANCE;
    }

    /** In words. */
    public String words() {
        return switch (this) {
            case MORE_THAN_CHANCE -> "more than chance";
            case CHANCE_AMONG_MANY -> "could be chance, so many being compared";
            case COULD_BE_CHANCE -> "could be chance";
            case CANNOT_SAY -> "cannot be compared";
        };
    }
}
