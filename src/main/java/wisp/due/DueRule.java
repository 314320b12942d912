package wisp.due;

import wisp.indicator.Basis;
import wisp.indicator.Law;
import wisp.indicator.PracticeStep;

/**
 * The rule that makes a step due.
 *
 * @param place whose law it is, empty for good practice
 * @param limit what it says, in words
 * @param basis what it stands on
 */
public record DueRule(String place, String limit, Basis basis) {
    /** A limit of law. */
    public static DueRule of(Law law, String limit, Basis basis) {
        return new DueRule(law.title(), limit, basis);
    }

    /** What good practice asks. */
    public static DueRule of(PracticeStep step) {
        String limit = step.by() == null
                ? "by the end of day " + step.byDay() + " of life"
                : (step.best() == null ? "" : "best by " + step.best().text() + ", ") + "by "
                        + step.by().text();
        return new DueRule("", limit, step.basis());
    }

    /** A step that no file sets a limit for. */
    public static DueRule none(String place, String why) {
        return new DueRule(
                place,
                "no limit is on record",
                new Basis(Basis.Kind.GOOD_PRACTICE, why, "from memory", "", "Local law and the vet decide."));
    }
}
