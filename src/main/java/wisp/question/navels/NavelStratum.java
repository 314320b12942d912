package wisp.question.navels;

import java.util.List;
import wisp.cohort.NavelDelay;

/**
 * One part of the calves, such as those of one pen: how they fared by class of delay, and late beside early.
 *
 * @param name of the part
 * @param classes risk in each of the six classes
 * @param early of those treated within 60 minutes
 * @param late of those treated later, or not by 24 h
 * @param against late compared with early
 * @param adjustedP Fisher's p after Holm's adjustment for the comparisons of all parts; NaN where there is none
 */
public record NavelStratum(
        String name, List<ClassRisk> classes, GroupRisk early, GroupRisk late, TwoGroups against, double adjustedP) {

    /** The calves of one class of delay. */
    public record ClassRisk(NavelDelay delay, GroupRisk risk) {}

    static NavelStratum of(String name, List<NavelCalf> calves, double days) {
        List<NavelCalf> early = NavelGroup.EARLY.of(calves);
        List<NavelCalf> late = NavelGroup.LATE.of(calves);
        return new NavelStratum(
                name,
                DelayClass.classes()
                        .map(delay -> new ClassRisk(delay, GroupRisk.of(DelayClass.in(delay, calves), days)))
                        .toList(),
                GroupRisk.of(early, days),
                GroupRisk.of(late, days),
                TwoGroups.of(late, early, days),
                Double.NaN);
    }

    NavelStratum with(double p) {
        return new NavelStratum(name, classes, early, late, against, p);
    }

    /** Whether late and early differ by more than chance, the number of parts that were looked at allowed for. */
    public boolean moreThanChance() {
        return against.moreThanChance() && adjustedP < 1 - GroupRisk.LEVEL;
    }
}
