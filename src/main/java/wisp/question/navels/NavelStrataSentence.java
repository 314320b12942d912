package wisp.question.navels;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What dividing the calves shows, in plain words. A group is said to stand out only where ratio and exact test agree
 * and Holm's allowance for the number of groups leaves it so; groups are said to differ only where homogeneity is
 * rejected.
 */
public final class NavelStrataSentence {
    private static final double SIGNIFICANT = 1 - GroupRisk.LEVEL;

    private NavelStrataSentence() {}

    /** The sentences; empty where nothing divides. */
    public static String of(NavelStrata strata) {
        if (strata.by() == null) {
            return "";
        }
        if (strata.why() != null) {
            return strata.why();
        }
        String by = "Divided by " + strata.by().title() + ", ";
        int compared = strata.comparisons();
        if (compared == 0) {
            return by + "no group has both calves treated within 60 minutes and calves treated later, so that there is"
                    + " nothing to compare.";
        }
        return by + standingOut(strata, compared) + " " + differing(strata.homogeneity(), strata.sparse())
                + pooled(strata);
    }

    private static String standingOut(NavelStrata strata, int compared) {
        List<NavelStratum> out =
                strata.strata().stream().filter(NavelStratum::moreThanChance).toList();
        String allowed = compared == 1 ? "" : " (" + compared + " groups looked at, and allowed for)";
        if (out.isEmpty()) {
            return (compared == 1
                            ? "one group alone can be compared; in it the difference of late from early treatment could"
                                    + " be chance"
                            : "late treatment stands out from early in no group; each difference could be chance")
                    + allowed + ".";
        }
        String names = out.stream()
                .map(one -> one.name() + ", where late treatment went with "
                        + (one.against().riskRatio().interval().value() > 1 ? "more" : "less") + " infection")
                .collect(Collectors.joining("; "));
        return "more than chance alone makes likely is found in " + names + allowed + "."
                + (out.size() < compared ? " In each of the others it could be chance." : "");
    }

    private static String differing(Tested homogeneity, boolean sparse) {
        if (!homogeneity.known()) {
            return "Whether the groups differ from each other in this cannot be tested. " + homogeneity.why();
        }
        String p = " (" + homogeneity.method() + ", p " + Plain.p(homogeneity.p()) + ")";
        if (sparse) {
            return "Whether they differ from each other stays open: groups hold too few cases for the test" + p
                    + " to be trusted.";
        }
        return homogeneity.p() < SIGNIFICANT
                ? "The groups differ from each other in this by more than chance alone makes likely" + p
                        + ": no single ratio speaks for them all."
                : "That they differ from each other could be chance" + p
                        + "; in groups of this size only gross differences would show.";
    }

    private static String pooled(NavelStrata strata) {
        Measured pooled = strata.pooled();
        if (!pooled.finite() || strata.comparisons() < 2) {
            return "";
        }
        return " Within groups, pooled (Mantel–Haenszel), the risk of late over early is "
                + Plain.ratio(pooled.interval().value()) + " times (" + Plain.span(pooled.interval()) + ")"
                + (pooled.excludes(1) ? "." : "; it could be chance.");
    }
}
