package wisp.question.season;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import wisp.indicator.Estimate;
import wisp.indicator.Rule;
import wisp.indicator.Verdict;
import wisp.statistics.Interval;
import wisp.statistics.KaplanMeier;
import wisp.statistics.SurvivalCurve;

/**
 * The share of a season's calves still alive at each age, by Kaplan and Meier from the same verdicts as the mortality
 * figure; its last step is 1 minus that figure.
 *
 * @param season the season
 * @param n calves at risk at the start
 * @param steps where it falls, in order of age, the start first
 * @param atRisk how many calves were followed at each round age
 */
public record SurvivalByAge(String season, int n, List<Step> steps, List<AtRisk> atRisk) {
    private static final double DAY = 86_400_000.0;
    private static final int AGES = 6;

    /**
     * The curve from an age on.
     *
     * @param ageDays exact age
     * @param deaths deaths at that age
     */
    public record Step(double ageDays, int deaths, double survival, double low, double high) {}

    /** Calves followed at an age. */
    public record AtRisk(double ageDays, int calves) {}

    /** The curve of a risk of death; empty lists where nobody was at risk. */
    static SurvivalByAge of(Estimate figure) {
        Rule.Risk rule = (Rule.Risk) figure.indicator().rule();
        double start = days(rule.window().start().exact());
        double end = days(rule.window().end().exact());
        List<Verdict> followed =
                figure.verdicts().stream().filter(Verdict::atRisk).toList();
        if (followed.isEmpty()) {
            return new SurvivalByAge(figure.season(), 0, List.of(), List.of());
        }
        double[] times = followed.stream().mapToDouble(Verdict::days).toArray();
        boolean[] died = new boolean[times.length];
        for (int i = 0; i < died.length; i++) {
            died[i] = followed.get(i).ending() == Verdict.Ending.OUTCOME;
        }
        SurvivalCurve curve = KaplanMeier.of(times, died);
        List<AtRisk> atRisk = new ArrayList<>();
        atRisk.add(new AtRisk(start, times.length));
        for (int i = 1; i <= AGES; i++) {
            double age = end * i / AGES;
            if (age > start) {
                atRisk.add(new AtRisk(age, curve.atRiskAt(age - start)));
            }
        }
        return new SurvivalByAge(figure.season(), times.length, steps(curve, start, end), atRisk);
    }

    private static List<Step> steps(SurvivalCurve curve, double start, double end) {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(start, 0, 1, 1, 1));
        for (int i = 0; i < curve.times().length; i++) {
            if (curve.events()[i] > 0) {
                Interval there = curve.at(curve.times()[i]);
                steps.add(new Step(
                        start + curve.times()[i], curve.events()[i], there.value(), there.low(), there.high()));
            }
        }
        Step last = steps.get(steps.size() - 1);
        double followedTo = Math.min(end, start + curve.followUp().last());
        if (followedTo > last.ageDays()) {
            steps.add(new Step(followedTo, 0, last.survival(), last.low(), last.high()));
        }
        return steps;
    }

    private static double days(Duration age) {
        return age.toMillis() / DAY;
    }
}
