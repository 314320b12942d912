package wisp.question.navels;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wisp.cohort.NavelDelay;
import wisp.statistics.MultipleTesting;

/**
 * The calves of one class of delay, and how they fared beside the reference class.
 *
 * @param delay the class
 * @param risk of its calves
 * @param against the comparison with the reference class
 * @param adjustedP Fisher's p after Holm's adjustment for the comparisons of all classes; NaN where there is none
 */
public record DelayClass(NavelDelay delay, GroupRisk risk, TwoGroups against, double adjustedP) {
    /** How many calves the class must hold that the others are compared with. */
    public static final int CALVES_OF_REFERENCE = 10;

    /** The earliest class that holds enough calves to compare others with. */
    static Optional<NavelDelay> reference(List<NavelCalf> calves) {
        return classes()
                .filter(delay -> in(delay, calves).size() >= CALVES_OF_REFERENCE)
                .findFirst();
    }

    /** All six classes in order, each compared with the reference. */
    static List<DelayClass> all(List<NavelCalf> calves, double days) {
        Optional<NavelDelay> reference = reference(calves);
        List<DelayClass> classes = classes()
                .map(delay -> new DelayClass(
                        delay,
                        GroupRisk.of(in(delay, calves), days),
                        against(delay, reference, calves, days),
                        Double.NaN))
                .toList();
        double[] p = classes.stream()
                .filter(one -> one.against.fisher().known())
                .mapToDouble(one -> one.against.fisher().p())
                .toArray();
        if (p.length == 0) {
            return classes;
        }
        double[] adjusted = MultipleTesting.holm(p);
        int[] next = {0};
        return classes.stream()
                .map(one -> one.against.fisher().known()
                        ? new DelayClass(one.delay, one.risk, one.against, adjusted[next[0]++])
                        : one)
                .toList();
    }

    private static TwoGroups against(
            NavelDelay delay, Optional<NavelDelay> reference, List<NavelCalf> calves, double days) {
        if (reference.isEmpty()) {
            return TwoGroups.none(
                    "No class holds " + CALVES_OF_REFERENCE + " calves, so that there is none to compare with.");
        }
        if (reference.get() == delay) {
            return TwoGroups.none("This is the class that the others are compared with.");
        }
        return TwoGroups.of(in(delay, calves), in(reference.get(), calves), days);
    }

    static Stream<NavelDelay> classes() {
        return Stream.of(NavelDelay.values()).filter(delay -> delay != NavelDelay.UNKNOWN);
    }

    static List<NavelCalf> in(NavelDelay delay, List<NavelCalf> calves) {
        return calves.stream().filter(calf -> calf.delay() == delay).toList();
    }
}
