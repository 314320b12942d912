package wisp.question.navels;

import java.util.List;
import wisp.indicator.Verdict;
import wisp.statistics.AalenJohansen;
import wisp.statistics.Interval;
import wisp.statistics.WilsonInterval;

/**
 * The risk of a navel case in one group of calves at risk at 24 h.
 *
 * <p>{@code share} is always cases / n with Wilson's interval. Where calves left or are not 21 days old yet it is no
 * more than a count of what was seen, and too low for a risk; {@code at21Days} then is the Aalen–Johansen estimate with
 * death competing and its log(−log) interval, the same as the figure gives. Where nobody is censored the two are one.
 *
 * @param n calves at risk at 24 h
 * @param cases of them with a navel case in the window
 * @param censored of them not followed to its end, without a case
 * @param share cases / n
 * @param at21Days risk at the window's end
 */
public record GroupRisk(int n, int cases, int censored, Measured share, Measured at21Days) {
    static final double LEVEL = 0.95;

    /**
     * The risk of these calves.
     *
     * @param days the window's length from the landmark to its end
     */
    static GroupRisk of(List<NavelCalf> calves, double days) {
        int cases = (int) calves.stream().filter(NavelCalf::sick).count();
        int censored = (int) calves.stream()
                .filter(calf -> calf.verdict().ending() == Verdict.Ending.CENSORED)
                .count();
        if (calves.isEmpty()) {
            Measured nobody = Measured.none("No calf is in this group.");
            return new GroupRisk(0, 0, 0, nobody, nobody);
        }
        Measured share = Measured.of(() -> WilsonInterval.of(cases, calves.size(), LEVEL));
        Measured risk = censored == 0 ? share : followed(calves, days);
        return new GroupRisk(calves.size(), cases, censored, share, risk);
    }

    private static Measured followed(List<NavelCalf> calves, double days) {
        double[] times =
                calves.stream().mapToDouble(calf -> calf.verdict().days()).toArray();
        int[] causes = calves.stream().mapToInt(GroupRisk::cause).toArray();
        Measured risk =
                Measured.of(() -> AalenJohansen.of(times, causes, 2).get(0).at(days));
        return risk.known() ? risk : Measured.none("No calf of this group has been followed to 21 days of age yet.");
    }

    private static int cause(NavelCalf calf) {
        return switch (calf.verdict().ending()) {
            case OUTCOME -> 1;
            case COMPETING -> 2;
            case CENSORED, COMPLETE -> 0;
        };
    }

    /** The risk in words of a table, value alone. */
    Interval interval() {
        return at21Days.interval();
    }
}
