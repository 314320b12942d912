package wisp.question;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wisp.statistics.ControlLimits;
import wisp.statistics.FunnelLimits;
import wisp.statistics.ShewhartChart;

/**
 * One week of births on the p-chart.
 *
 * @param monday the week's first day
 * @param share its scored calves
 * @param limits three standard errors about the share of all weeks, null where all calves are alike
 * @param outside whether it lies outside those limits and outside the exact binomial 99.8 % limits too: the first are
 *     poor where a week has few calves
 */
public record WeekShare(LocalDate monday, DirtyShare share, ControlLimits limits, boolean outside) {
    private static final double WIDTH = 3;

    static List<WeekShare> of(List<ScoredCalf> calves) {
        Map<LocalDate, List<ScoredCalf>> byWeek = new TreeMap<>();
        for (ScoredCalf calf : calves) {
            LocalDate monday = calf.life().birthDate().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
            byWeek.computeIfAbsent(monday, week -> new ArrayList<>()).add(calf);
        }
        double centre = DirtyShare.of("", "", "", calves).share();
        List<WeekShare> weeks = new ArrayList<>();
        byWeek.forEach((monday, part) -> weeks.add(of(monday, week(monday, part), centre)));
        return weeks;
    }

    private static DirtyShare week(LocalDate monday, List<ScoredCalf> part) {
        return DirtyShare.of("week." + monday, monday.toString(), "born in the week from " + monday, part);
    }

    private static WeekShare of(LocalDate monday, DirtyShare share, double centre) {
        if (!(centre > 0 && centre < 1)) {
            return new WeekShare(monday, share, null, false);
        }
        ControlLimits limits = ShewhartChart.p(new int[] {share.dirty()}, new int[] {share.n()}, centre, WIDTH)
                .get(0);
        FunnelLimits exact = FunnelLimits.of(share.n(), centre, 0.998, FunnelLimits.Method.EXACT_BINOMIAL_INTERPOLATED);
        boolean beyond = share.share() < exact.low() || share.share() > exact.high();
        return new WeekShare(monday, share, limits, limits.outside() && beyond);
    }
}
