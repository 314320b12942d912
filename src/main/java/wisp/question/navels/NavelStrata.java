package wisp.question.navels;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wisp.indicator.Stratum;
import wisp.statistics.MultipleTesting;
import wisp.statistics.TwoByTwoTable;

/**
 * Late against early in each part of the calves, and whether the parts differ.
 *
 * @param by what divides, null where nothing does
 * @param strata the parts in their order
 * @param pooled Mantel–Haenszel risk ratio within the parts
 * @param homogeneity Breslow–Day test with Tarone's correction: whether the parts differ in the odds ratio
 * @param sparse whether the parts hold too few cases for that test to be trusted
 * @param why why the calves are not divided, null where they are
 */
public record NavelStrata(
        Stratum by, List<NavelStratum> strata, Measured pooled, Tested homogeneity, boolean sparse, String why) {
    private static final String EXPOSURE = "The delay to navel treatment is what is compared here; calves divided by it"
            + " are in the table of classes already. Divide by something else, such as pen.";

    /** No division, or one that cannot be: by the delay itself. */
    static NavelStrata none(Stratum by) {
        String why = by == null ? "Nothing divides the calves." : EXPOSURE;
        return new NavelStrata(by, List.of(), Measured.none(why), Tested.none(why), false, why);
    }

    /** Whether calves can be divided by something. */
    static boolean divides(Stratum by) {
        return by != null && by != Stratum.NAVEL_DELAY;
    }

    /** Compares late with early in every part; a part without a calf at risk is left out. */
    static NavelStrata of(Stratum by, Map<String, List<NavelCalf>> parts, double days) {
        List<NavelStratum> strata = new ArrayList<>();
        List<TwoByTwoTable> tables = new ArrayList<>();
        parts.forEach((name, calves) -> {
            if (!calves.isEmpty()) {
                strata.add(NavelStratum.of(name, calves, days));
                tables.add(OverPens.table(NavelGroup.LATE.of(calves), NavelGroup.EARLY.of(calves), calf -> true));
            }
        });
        return new NavelStrata(
                by,
                adjusted(strata),
                OverPens.riskRatio(tables),
                OverPens.homogeneity(tables),
                OverPens.sparse(tables),
                null);
    }

    private static List<NavelStratum> adjusted(List<NavelStratum> strata) {
        List<NavelStratum> tested =
                strata.stream().filter(NavelStrata::compared).toList();
        if (tested.isEmpty()) {
            return strata;
        }
        double[] holm = MultipleTesting.holm(
                tested.stream().mapToDouble(one -> one.against().fisher().p()).toArray());
        return strata.stream()
                .map(one -> compared(one) ? one.with(holm[tested.indexOf(one)]) : one)
                .toList();
    }

    /** Whether a part has calves of both groups, so that they can be compared. */
    static boolean compared(NavelStratum one) {
        return one.early().n() > 0
                && one.late().n() > 0
                && one.against().fisher().known();
    }

    /** How many parts have calves of both groups. */
    public int comparisons() {
        return (int) strata.stream().filter(NavelStrata::compared).count();
    }
}
