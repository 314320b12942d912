package wisp.statistics;

/**
 * Two groups and a yes-or-no outcome, as counts.
 *
 * @param exposedCases a, cases in the exposed (first) group
 * @param exposedOthers b, non-cases in the exposed group
 * @param unexposedCases c, cases in the unexposed (reference) group
 * @param unexposedOthers d, non-cases in the unexposed group
 */
public record TwoByTwoTable(int exposedCases, int exposedOthers, int unexposedCases, int unexposedOthers) {

    /**
     * Checks the counts.
     *
     * @throws CannotEstimate if a count is negative
     */
    public TwoByTwoTable {
        if (Math.min(Math.min(exposedCases, exposedOthers), Math.min(unexposedCases, unexposedOthers)) < 0) {
            throw new CannotEstimate("The two-by-two table", "a count in it is negative");
        }
    }

    /**
     * The table of cases among all of each group.
     *
     * @throws CannotEstimate if a group has fewer than 0 cases or more cases than members
     */
    public static TwoByTwoTable ofGroups(int exposedCases, int exposed, int unexposedCases, int unexposed) {
        return new TwoByTwoTable(
                exposedCases,
                Math.subtractExact(exposed, exposedCases),
                unexposedCases,
                Math.subtractExact(unexposed, unexposedCases));
    }

    /** Size of the exposed group, a + b. */
    public int exposed() {
        return Math.addExact(exposedCases, exposedOthers);
    }

    /** Size of the unexposed group, c + d. */
    public int unexposed() {
        return Math.addExact(unexposedCases, unexposedOthers);
    }

    /** Cases in both groups, a + c. */
    public int cases() {
        return Math.addExact(exposedCases, unexposedCases);
    }

    /** Everyone, a + b + c + d. */
    public int total() {
        return Math.addExact(exposed(), unexposed());
    }

    /** Risk in the exposed group. */
    double exposedRisk() {
        return (double) exposedCases / exposed();
    }

    /** Risk in the unexposed group. */
    double unexposedRisk() {
        return (double) unexposedCases / unexposed();
    }

    /** Both groups must have members. */
    void requireBothGroups(String what) {
        Require.share(what, exposedCases, exposed());
        Require.share(what, unexposedCases, unexposed());
    }
}
