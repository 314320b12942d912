package wisp.question.season;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wisp.cohort.Cohort;
import wisp.history.Episode;
import wisp.history.Life;
import wisp.indicator.Estimate;
import wisp.indicator.Rule;
import wisp.indicator.Verdict;
import wisp.indicator.Window;
import wisp.statistics.GarwoodInterval;
import wisp.statistics.Interval;

/**
 * When in the year an illness was found: the episodes of the condition's rate by calendar week, beside the days that
 * calves of that age were on the farm in it.
 *
 * @param condition the illness
 * @param title its name in a sentence
 * @param weeks every week in which such a calf was on the farm
 */
public record IllnessCalendar(String condition, String title, List<Week> weeks) {
    private static final double DAY = 86_400_000.0;
    private static final double PER = 1000;

    /**
     * One calendar week.
     *
     * @param monday its first day
     * @param episodes the calves behind its episodes
     * @param calfDays days that calves of the rate's ages were present
     */
    public record Week(LocalDate monday, CalfList episodes, double calfDays) {

        /** Episodes per 1000 calf-days present, with the exact interval; null without a day. */
        public Interval rate() {
            return calfDays > 0 ? GarwoodInterval.of(episodes.count(), calfDays, 0.95, PER) : null;
        }
    }

    /** Days present by week of the calves at risk of any illness; most illnesses share them. */
    static final class Presence {
        private record Who(Window window, List<Integer> rows) {}

        private final Cohort cohort;
        private final Map<Who, TreeMap<LocalDate, Double>> days = new HashMap<>();

        Presence(Cohort cohort) {
            this.cohort = cohort;
        }

        private TreeMap<LocalDate, Double> days(Window window, List<Integer> rows) {
            return days.computeIfAbsent(new Who(window, rows), who -> {
                TreeMap<LocalDate, Double> byWeek = new TreeMap<>();
                Map<ZoneId, WeekStarts> starts = new HashMap<>();
                rows.forEach(row -> {
                    Life life = cohort.lives().get(row);
                    ZoneId zone = life.farm().zone();
                    present(life, window, cohort.cut(), starts.computeIfAbsent(zone, WeekStarts::new), byWeek);
                });
                return byWeek;
            });
        }
    }

    static IllnessCalendar of(String condition, String title, Estimate rate, Presence presence) {
        Cohort cohort = presence.cohort;
        Window window = ((Rule.Rate) rate.indicator().rule()).window();
        TreeMap<LocalDate, List<Integer>> episodes = new TreeMap<>();
        List<Integer> atRisk = new ArrayList<>();
        for (Verdict verdict : rate.verdicts()) {
            if (verdict.atRisk()) {
                atRisk.add(verdict.row());
                if (verdict.count() > 0) {
                    openings(cohort.lives().get(verdict.row()), condition, window, cohort.cut())
                            .forEach(monday -> episodes.computeIfAbsent(monday, m -> new ArrayList<>())
                                    .add(verdict.row()));
                }
            }
        }
        TreeMap<LocalDate, Double> days = presence.days(window, atRisk);
        List<Week> weeks = new ArrayList<>();
        if (!days.isEmpty()) {
            for (LocalDate monday : Weeks.between(days.firstKey(), days.lastKey())) {
                weeks.add(week(condition, title, monday, episodes, days));
            }
        }
        return new IllnessCalendar(condition, title, weeks);
    }

    /** Episodes of all weeks. */
    public int episodes() {
        return weeks.stream().mapToInt(week -> week.episodes().count()).sum();
    }

    private static Week week(
            String condition,
            String title,
            LocalDate monday,
            Map<LocalDate, List<Integer>> episodes,
            Map<LocalDate, Double> days) {
        CalfList list = new CalfList(
                "illness." + condition + "." + monday,
                title + " found in the week from " + monday,
                episodes.getOrDefault(monday, List.of()));
        return new Week(monday, list, days.getOrDefault(monday, 0.0));
    }

    private static List<LocalDate> openings(Life life, String condition, Window window, Instant cut) {
        List<LocalDate> mondays = new ArrayList<>();
        for (Episode episode : life.episodes()) {
            boolean counts =
                    episode.condition().equals(condition) && !episode.opened().isAfter(cut);
            if (counts && inside(life, episode, window)) {
                mondays.add(
                        Weeks.monday(episode.opened().atZone(life.farm().zone()).toLocalDate()));
            }
        }
        return mondays;
    }

    /** An illness known only by the date of birth was found after the birth. */
    private static boolean inside(Life life, Episode episode, Window window) {
        boolean dayOfBirth =
                !episode.timeKnown() && life.ageAt(episode.opened()).isZero();
        return window.holds(dayOfBirth ? life.ageAt(episode.opened().plusMillis(1)) : life.ageAt(episode.opened()));
    }

    private static void present(Life life, Window window, Instant cut, WeekStarts starts, Map<LocalDate, Double> days) {
        Instant from = life.born().time().plus(window.start().exact());
        Instant to = life.born().time().plus(window.end().exact());
        to = to.isAfter(cut) ? cut : to;
        if (life.exit() != null && life.exit().time().isBefore(to)) {
            to = life.exit().time();
        }
        while (from.isBefore(to)) {
            WeekStarts.Week week = starts.holding(from);
            Instant end = week.next().isBefore(to) ? week.next() : to;
            days.merge(week.monday(), (end.toEpochMilli() - from.toEpochMilli()) / DAY, Double::sum);
            from = end;
        }
    }
}
