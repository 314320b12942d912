package wisp.question.navels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * The calves treated with one product, or by one method, and how late and early treatment did among them.
 *
 * @param name the product or method, {@code not recorded} last
 * @param risk of all of them
 * @param against compared with the one most used; without a comparison for that one itself
 * @param early of those treated within 60 minutes
 * @param late of those treated later
 * @param lateRatio risk ratio of late over early inside the stratum
 */
public record CareStratum(
        String name, GroupRisk risk, TwoGroups against, GroupRisk early, GroupRisk late, Measured lateRatio) {
    private static final String NOT_RECORDED = "not recorded";

    /** The name of the stratum of a product or method, null where none is recorded. */
    public static String name(String recorded) {
        return recorded == null ? NOT_RECORDED : recorded;
    }

    /** The treated calves divided by what a function says of them. */
    static List<CareStratum> by(Function<NavelCalf, String> feature, List<NavelCalf> everyone, double days) {
        Map<String, List<NavelCalf>> byName =
                new TreeMap<>(Comparator.comparing((String name) -> NOT_RECORDED.equals(name))
                        .thenComparing(Comparator.naturalOrder()));
        everyone.stream().filter(NavelCalf::treated).forEach(calf -> {
            byName.computeIfAbsent(name(feature.apply(calf)), n -> new ArrayList<>())
                    .add(calf);
        });
        String most = byName.keySet().stream()
                .filter(name -> !name.equals(NOT_RECORDED))
                .max(Comparator.comparing(name -> byName.get(name).size()))
                .orElse(NOT_RECORDED);
        List<CareStratum> strata = new ArrayList<>();
        byName.forEach((name, calves) -> strata.add(of(name, calves, most, byName.get(most), days)));
        return strata;
    }

    private static CareStratum of(
            String name, List<NavelCalf> calves, String most, List<NavelCalf> mostUsed, double days) {
        List<NavelCalf> early = calves.stream().filter(NavelCalf::early).toList();
        List<NavelCalf> late = calves.stream().filter(NavelCalf::late).toList();
        TwoGroups against = name.equals(most)
                ? TwoGroups.none("This is the one most used, that the others are compared with.")
                : TwoGroups.of(calves, mostUsed, days);
        return new CareStratum(
                name,
                GroupRisk.of(calves, days),
                against,
                GroupRisk.of(early, days),
                GroupRisk.of(late, days),
                TwoGroups.riskRatio(OverPens.table(late, early, calf -> true)));
    }
}
