package wisp.question.season;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import wisp.cohort.Cohort;
import wisp.indicator.Age;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.Indicator;
import wisp.indicator.Rule;
import wisp.indicator.Selection;
import wisp.indicator.Window;
import wisp.statistics.Interval;

/**
 * How often an illness opens in each week of life: episodes over the calf-days at risk in that week, by the rule of the
 * condition's rate, whose window is cut into weeks. Added up, they are that rate's episodes and days.
 *
 * @param condition the illness
 * @param title its name in a sentence
 * @param weeks the weeks of life
 */
public record AgeHazard(String condition, String title, List<Week> weeks) {
    private static final Duration SEVEN_DAYS = Duration.ofDays(7);
    private static final double DAY = 86_400_000.0;

    /**
     * One week of life, (from, to] in exact age.
     *
     * @param number 1 for the first
     * @param episodes the calves behind its episodes
     * @param calfDays days at risk
     * @param hazard episodes per 1000 calf-days with the exact interval, null where no calf was at risk
     */
    public record Week(
            int number, double fromDays, double toDays, CalfList episodes, double calfDays, Interval hazard) {}

    static AgeHazard of(
            String condition, String title, Indicator rate, Figures figures, Cohort cohort, Selection selection) {
        Rule.Rate rule = (Rule.Rate) rate.rule();
        List<Week> weeks = new ArrayList<>();
        Age from = rule.window().start();
        boolean open = rule.window().open();
        while (from.compareTo(rule.window().end()) < 0) {
            Age to = earlier(age(from.exact().plus(SEVEN_DAYS)), rule.window().end());
            Indicator week = during(rate, new Rule.Rate(new Window(from, open, to), rule.outcome()));
            Estimate there = figures.plain(week, cohort, selection);
            weeks.add(week(condition, title, weeks.size() + 1, from, to, there));
            from = to;
            open = true;
        }
        return new AgeHazard(condition, title, weeks);
    }

    private static Week week(String condition, String title, int number, Age from, Age to, Estimate there) {
        String id = "illness." + condition + ".week-" + number;
        CalfList episodes = new CalfList(id, title + " in week " + number + " of life", Episodic.rows(there));
        return new Week(number, days(from), days(to), episodes, there.denominator(), there.interval());
    }

    private static Indicator during(Indicator rate, Rule.Rate rule) {
        return new Indicator(
                rate.id(),
                rate.version(),
                rate.title(),
                rate.measure(),
                rate.needsHours(),
                rate.population(),
                rule,
                null,
                rate.source(),
                rate.remarks(),
                rate.file());
    }

    /** Episodes of all weeks. */
    public int episodes() {
        return weeks.stream().mapToInt(week -> week.episodes().count()).sum();
    }

    private static Age earlier(Age a, Age b) {
        return a.compareTo(b) < 0 ? a : b;
    }

    private static Age age(Duration exact) {
        return new Age(exact, exact.toDays() + " d");
    }

    private static double days(Age age) {
        return age.exact().toMillis() / DAY;
    }
}
