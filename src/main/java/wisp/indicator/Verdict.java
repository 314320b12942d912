package wisp.indicator;

import wisp.history.LifeEvent;

/**
 * What one calf, or one episode, is to a figure.
 *
 * @param row the calf's row in the cohort
 * @param part where it counts
 * @param reason why it is left out or outside, empty where it counts
 * @param pending true where the cut of follow-up still leaves it open
 * @param days for a risk the end of its follow-up in days since the window's start; for a rate its days at risk
 * @param ending for a risk how that follow-up ended
 * @param count outcomes: 0 or 1, for a rate the episodes
 * @param because the event that decided, null where none did
 */
public record Verdict(
        int row, Part part, String reason, boolean pending, double days, Ending ending, int count, LifeEvent because) {

    /** Where a calf counts. */
    public enum Part {
        /** In the numerator and in the denominator. */
        CASE,
        /** In the denominator only. */
        CLEAR,
        /** Not settled yet, in neither. */
        PENDING,
        /** Belongs to the population but cannot be judged, in neither. */
        EXCLUDED,
        /** Not in the population. */
        OUTSIDE
    }

    /** How follow-up inside a risk's window ended. */
    public enum Ending {
        COMPLETE,
        OUTCOME,
        COMPETING,
        CENSORED
    }

    /** True where it stands in the denominator. */
    public boolean atRisk() {
        return part == Part.CASE || part == Part.CLEAR;
    }

    static Verdict outside(int row, String reason) {
        return new Verdict(row, Part.OUTSIDE, reason, false, 0, Ending.COMPLETE, 0, null);
    }

    static Verdict excluded(int row, String reason, LifeEvent because) {
        return new Verdict(row, Part.EXCLUDED, reason, false, 0, Ending.COMPLETE, 0, because);
    }

    static Verdict pending(int row) {
        return new Verdict(row, Part.PENDING, "", true, 0, Ending.COMPLETE, 0, null);
    }

    static Verdict settled(int row, boolean outcome, LifeEvent because) {
        Part part = outcome ? Part.CASE : Part.CLEAR;
        return new Verdict(row, part, "", false, 0, Ending.COMPLETE, outcome ? 1 : 0, because);
    }

    static Verdict followed(int row, double days, Ending ending, boolean pending, LifeEvent because) {
        boolean outcome = ending == Ending.OUTCOME;
        return new Verdict(row, outcome ? Part.CASE : Part.CLEAR, "", pending, days, ending, outcome ? 1 : 0, because);
    }

    static Verdict rated(int row, double days, int count, boolean pending, LifeEvent because) {
        Part part = count > 0 ? Part.CASE : Part.CLEAR;
        return new Verdict(row, part, "", pending, days, Ending.COMPLETE, count, because);
    }
}
