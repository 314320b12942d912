package wisp.question.navels;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import wisp.statistics.Homogeneity;
import wisp.statistics.MantelHaenszel;
import wisp.statistics.TwoByTwoTable;

/**
 * Two groups compared within the pens where the calves were born, each season by itself where there are several, and
 * the comparisons pooled (Mantel–Haenszel).
 *
 * @param pens pens that hold calves of both groups; only these lend anything
 * @param seasons that the calves were born in
 * @param withoutPen calves left out because no pen of birth is recorded
 * @param test the Cochran–Mantel–Haenszel chi-square without continuity correction
 * @param homogeneity Breslow–Day test with Tarone's correction: whether pens differ in the odds ratio
 * @param sparse whether pens hold too few cases for that test to be trusted (Cochran 1954)
 */
public record OverPens(
        int pens,
        int seasons,
        int withoutPen,
        Measured riskRatio,
        Measured oddsRatio,
        Measured riskDifference,
        Tested test,
        Tested homogeneity,
        boolean sparse) {
    private static final double EXPECTED = 5;
    private static final double SHARE = 0.2;

    static OverPens of(List<NavelCalf> exposed, List<NavelCalf> reference) {
        int without = (int) Stream.concat(exposed.stream(), reference.stream())
                .filter(calf -> calf.pen() == null)
                .count();
        List<TwoByTwoTable> strata = tables(exposed, reference, NavelCalf::pen);
        Set<String> other =
                reference.stream().map(calf -> inSeason(calf, NavelCalf::pen)).collect(Collectors.toSet());
        int both = (int) exposed.stream()
                .filter(calf -> calf.pen() != null && other.contains(inSeason(calf, NavelCalf::pen)))
                .map(NavelCalf::pen)
                .distinct()
                .count();
        return new OverPens(
                both,
                (int) Stream.concat(exposed.stream(), reference.stream())
                        .map(NavelCalf::season)
                        .distinct()
                        .count(),
                without,
                riskRatio(strata),
                Measured.of(
                        () -> MantelHaenszel.oddsRatio(strata, GroupRisk.LEVEL),
                        () -> MantelHaenszel.exactOddsRatio(strata, GroupRisk.LEVEL)),
                Measured.of(() ->
                        MantelHaenszel.riskDifference(strata, GroupRisk.LEVEL, MantelHaenszel.DifferenceVariance.SATO)),
                Tested.of(() -> MantelHaenszel.chiSquare(strata, false)),
                homogeneity(strata),
                sparse(strata));
    }

    /** The risk ratio pooled over tables, or in plain words why there is none. */
    static Measured riskRatio(List<TwoByTwoTable> strata) {
        List<TwoByTwoTable> both = strata.stream()
                .filter(t -> t.exposed() > 0 && t.unexposed() > 0)
                .toList();
        if (both.isEmpty()) {
            return Measured.none("Nowhere do both groups stand side by side.");
        }
        if (both.stream().allMatch(t -> t.exposedCases() == 0)
                || both.stream().allMatch(t -> t.unexposedCases() == 0)) {
            return Measured.none("Where both groups stand side by side, one of them has no case.");
        }
        return Measured.of(() -> MantelHaenszel.riskRatio(strata, GroupRisk.LEVEL));
    }

    /** Whether tables differ in the odds ratio, or in plain words why that cannot be told. */
    static Tested homogeneity(List<TwoByTwoTable> strata) {
        List<TwoByTwoTable> telling = strata.stream()
                .filter(t -> t.exposed() > 0 && t.unexposed() > 0 && t.cases() > 0 && t.cases() < t.total())
                .toList();
        if (telling.size() < 2) {
            return Tested.none("It takes two of them that hold both groups, with cases and calves that were none.");
        }
        if (telling.stream().allMatch(t -> t.exposedCases() == 0 || t.unexposedOthers() == 0)
                || telling.stream().allMatch(t -> t.unexposedCases() == 0 || t.exposedOthers() == 0)) {
            return Tested.none("In every one of them no calf, or every calf, of one group is a case.");
        }
        return Tested.of(() -> Homogeneity.breslowDayTarone(strata));
    }

    /**
     * Whether a chi-square of these tables is not to be trusted: a count expected below 1, or more than a fifth of them
     * below 5 (Cochran, W. G. 1954, Biometrics 10:417), among tables that lend anything.
     */
    static boolean sparse(List<TwoByTwoTable> strata) {
        double[] expected = strata.stream()
                .filter(t -> t.exposed() > 0 && t.unexposed() > 0 && t.cases() > 0 && t.cases() < t.total())
                .flatMapToDouble(t -> {
                    double sick = (double) t.cases() / t.total();
                    return DoubleStream.of(
                            t.exposed() * sick,
                            t.exposed() * (1 - sick),
                            t.unexposed() * sick,
                            t.unexposed() * (1 - sick));
                })
                .toArray();
        long few = Arrays.stream(expected).filter(count -> count < EXPECTED).count();
        return few > SHARE * expected.length || Arrays.stream(expected).anyMatch(count -> count < 1);
    }

    /** A table for each season and, inside it, each value of a feature; calves without it are left out. */
    static List<TwoByTwoTable> tables(
            List<NavelCalf> exposed, List<NavelCalf> reference, Function<NavelCalf, String> feature) {
        Map<String, List<List<NavelCalf>>> parts = new TreeMap<>();
        for (List<NavelCalf> group : List.of(exposed, reference)) {
            for (NavelCalf calf : group) {
                if (feature.apply(calf) != null) {
                    parts.computeIfAbsent(
                                    inSeason(calf, feature), part -> List.of(new ArrayList<>(), new ArrayList<>()))
                            .get(group == exposed ? 0 : 1)
                            .add(calf);
                }
            }
        }
        return parts.values().stream()
                .map(part -> table(part.get(0), part.get(1), calf -> true))
                .toList();
    }

    private static String inSeason(NavelCalf calf, Function<NavelCalf, String> feature) {
        return calf.season() + '\n' + feature.apply(calf);
    }

    static OverPens none(String why) {
        Measured not = Measured.none(why);
        return new OverPens(0, 0, 0, not, not, not, Tested.none(why), Tested.none(why), false);
    }

    /** Cases and others of the two groups, of the calves that match. */
    static TwoByTwoTable table(List<NavelCalf> exposed, List<NavelCalf> reference, Predicate<NavelCalf> which) {
        List<NavelCalf> one = exposed.stream().filter(which).toList();
        List<NavelCalf> two = reference.stream().filter(which).toList();
        return TwoByTwoTable.ofGroups(cases(one), one.size(), cases(two), two.size());
    }

    private static int cases(List<NavelCalf> calves) {
        return (int) calves.stream().filter(NavelCalf::sick).count();
    }
}
