package wisp.question.navels;

import java.util.ArrayList;
import java.util.List;

/**
 * What the calves of unknown delay could do to the comparison of late with early treatment: the risk ratio if they all
 * fell so that delay looks least harmful (cases early, others late), and so that it looks most harmful.
 *
 * @param calves of unknown delay
 * @param cases among them
 * @param least risk ratio with the unknown placed to make it smallest
 * @param most risk ratio with the unknown placed to make it largest
 * @param untreatedLeftOut risk ratio with calves never treated left out, of which some may have been treated unwritten
 */
public record MissingDelay(int calves, int cases, Measured least, Measured most, Measured untreatedLeftOut) {

    static MissingDelay of(List<NavelCalf> everyone) {
        List<NavelCalf> early = everyone.stream().filter(NavelCalf::early).toList();
        List<NavelCalf> late = everyone.stream().filter(NavelCalf::late).toList();
        List<NavelCalf> sick =
                everyone.stream().filter(c -> !c.known() && c.sick()).toList();
        List<NavelCalf> well =
                everyone.stream().filter(c -> !c.known() && !c.sick()).toList();
        List<NavelCalf> treatedLate = late.stream().filter(NavelCalf::treated).toList();
        return new MissingDelay(
                sick.size() + well.size(),
                sick.size(),
                ratio(both(late, well), both(early, sick)),
                ratio(both(late, sick), both(early, well)),
                ratio(treatedLate, early));
    }

    private static Measured ratio(List<NavelCalf> late, List<NavelCalf> early) {
        return TwoGroups.riskRatio(OverPens.table(late, early, calf -> true));
    }

    private static List<NavelCalf> both(List<NavelCalf> one, List<NavelCalf> two) {
        List<NavelCalf> both = new ArrayList<>(one);
        both.addAll(two);
        return both;
    }
}
