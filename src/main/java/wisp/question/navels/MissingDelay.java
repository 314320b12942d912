package wisp.question.navels;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * What the calves of unknown delay could do to the comparison of late with early treatment: the risk ratio if they all
 * fell so that delay looks least harmful (cases early, others late), and so that it looks most harmful. A calf that was
 * late, or early, whatever the hours were is not moved about. Calves born on a day without its hour are at risk, and
 * fall ill, by age since the midnight that begins that day.
 *
 * @param treatmentHour treated on a day written without its hour
 * @param birthHour born on a day written without its hour
 * @param placedEarly of all these, treated within 60 minutes whatever the hours were
 * @param placedLate of all these, treated later or not at all whatever the hours were
 * @param movable of all these, the ones that may be either
 * @param least risk ratio with the movable placed to make it smallest
 * @param most risk ratio with the movable placed to make it largest
 * @param untreated calves known late for want of any treatment on record by 24 h
 * @param untreatedLeftOut risk ratio with calves never treated left out, of which some may have been treated unwritten
 */
public record MissingDelay(
        Calves treatmentHour,
        Calves birthHour,
        Calves placedEarly,
        Calves placedLate,
        Calves movable,
        Measured least,
        Measured most,
        Calves untreated,
        Measured untreatedLeftOut) {

    /** How many calves of a kind, and how many of them were cases. */
    public record Calves(int n, int cases) {
        static Calves of(List<NavelCalf> calves, Predicate<NavelCalf> kind) {
            List<NavelCalf> some = calves.stream().filter(kind).toList();
            return new Calves(
                    some.size(), (int) some.stream().filter(NavelCalf::sick).count());
        }
    }

    /**
     * What could be.
     *
     * @param everyone calves at risk, those whose hour of birth is unknown among them
     */
    static MissingDelay of(List<NavelCalf> everyone) {
        List<NavelCalf> unknown = everyone.stream().filter(c -> !c.known()).toList();
        List<NavelCalf> knownLate = everyone.stream().filter(NavelCalf::late).toList();
        List<NavelCalf> knownEarly = everyone.stream().filter(NavelCalf::early).toList();
        List<NavelCalf> late = both(knownLate, in(unknown, c -> c.possible() == PossibleDelay.LATE));
        List<NavelCalf> early = both(knownEarly, in(unknown, c -> c.possible() == PossibleDelay.EARLY));
        List<NavelCalf> sick = in(unknown, c -> c.movable() && c.sick());
        List<NavelCalf> well = in(unknown, c -> c.movable() && !c.sick());
        return new MissingDelay(
                Calves.of(unknown, NavelCalf::birthHourKnown),
                Calves.of(unknown, c -> !c.birthHourKnown()),
                Calves.of(unknown, c -> c.possible() == PossibleDelay.EARLY),
                Calves.of(unknown, c -> c.possible() == PossibleDelay.LATE),
                Calves.of(unknown, NavelCalf::movable),
                ratio(both(late, well), both(early, sick)),
                ratio(both(late, sick), both(early, well)),
                Calves.of(knownLate, c -> !c.treated()),
                ratio(in(knownLate, NavelCalf::treated), knownEarly));
    }

    /** Calves of unknown delay. */
    public int calves() {
        return treatmentHour.n() + birthHour.n();
    }

    /** The risk ratio with the movable placed so that it speaks most against a ratio on this side of 1. */
    public Measured worst(double ratio) {
        return ratio > 1 ? least : most;
    }

    /** Cases among them. */
    public int cases() {
        return treatmentHour.cases() + birthHour.cases();
    }

    private static List<NavelCalf> in(List<NavelCalf> calves, Predicate<NavelCalf> kind) {
        return calves.stream().filter(kind).toList();
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
