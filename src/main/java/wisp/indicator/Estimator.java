package wisp.indicator;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wisp.indicator.Verdict.Ending;
import wisp.indicator.Verdict.Part;
import wisp.statistics.AalenJohansen;
import wisp.statistics.CannotEstimate;
import wisp.statistics.GarwoodInterval;
import wisp.statistics.Interval;
import wisp.statistics.KaplanMeier;
import wisp.statistics.WilsonInterval;

/** Turns verdicts into an estimate: counts, value and interval. */
final class Estimator {
    static final double LEVEL = 0.95;

    private Estimator() {}

    /**
     * The estimate that these verdicts make.
     *
     * @param marks marked events that the figure would otherwise have used, by kind
     */
    static Estimate estimate(
            Indicator indicator, String name, String season, List<Verdict> verdicts, Map<String, Integer> marks) {
        List<Verdict> atRisk = new ArrayList<>(verdicts.size());
        Map<String, Integer> excluded = new TreeMap<>(marks);
        int numerator = 0;
        int pending = 0;
        for (Verdict verdict : verdicts) {
            if (verdict.atRisk()) {
                atRisk.add(verdict);
                numerator += verdict.count();
            } else if (verdict.part() == Part.EXCLUDED) {
                excluded.merge(verdict.reason(), 1, Integer::sum);
            }
            pending += verdict.pending() ? 1 : 0;
        }
        boolean rate = indicator.rule() instanceof Rule.Rate;
        double denominator = rate ? atRisk.stream().mapToDouble(Verdict::days).sum() : atRisk.size();
        Interval interval = null;
        String why = null;
        if (denominator > 0) {
            try {
                interval = interval(indicator, atRisk, numerator, denominator);
            } catch (CannotEstimate cannot) {
                why = indicator.rule() instanceof Rule.Risk risk
                        ? "No calf has been followed to " + risk.window().end().text() + " of age yet."
                        : cannot.getMessage();
            }
        } else {
            why = nobody(verdicts, pending, rate);
        }
        return new Estimate(
                indicator,
                name,
                season,
                numerator,
                denominator,
                interval,
                why,
                pending,
                excluded,
                attrition(verdicts),
                verdicts,
                List.of(),
                null);
    }

    private static Interval interval(Indicator indicator, List<Verdict> atRisk, int numerator, double denominator) {
        if (indicator.rule() instanceof Rule.Rate) {
            return GarwoodInterval.of(numerator, denominator, LEVEL, 1000);
        }
        boolean censored = atRisk.stream().anyMatch(verdict -> verdict.ending() == Ending.CENSORED);
        if (!censored || !(indicator.rule() instanceof Rule.Risk risk)) {
            return WilsonInterval.of(numerator, atRisk.size(), LEVEL);
        }
        double end = FollowedLife.days(
                risk.window().end().exact().minus(risk.window().start().exact()));
        double[] times = atRisk.stream().mapToDouble(Verdict::days).toArray();
        if (risk.outcome() instanceof Outcome.Death) {
            boolean[] died = new boolean[times.length];
            for (int i = 0; i < died.length; i++) {
                died[i] = atRisk.get(i).ending() == Ending.OUTCOME;
            }
            Interval survival = KaplanMeier.of(times, died).at(end);
            return new Interval(
                    1 - survival.value(), 1 - survival.high(), 1 - survival.low(), survival.level(), survival.method());
        }
        int[] causes = atRisk.stream().mapToInt(Estimator::cause).toArray();
        return AalenJohansen.of(times, causes, 2).get(0).at(end);
    }

    private static int cause(Verdict verdict) {
        return switch (verdict.ending()) {
            case OUTCOME -> 1;
            case COMPETING -> 2;
            case CENSORED, COMPLETE -> 0;
        };
    }

    private static String nobody(List<Verdict> verdicts, int pending, boolean rate) {
        if (verdicts.isEmpty()) {
            return "No calf was born in what is asked for.";
        }
        if (verdicts.stream().anyMatch(verdict -> verdict.reason().equals(LimitVerdict.NO_LIMIT))) {
            return "The farm's jurisdiction sets no such limit that Wisp knows of.";
        }
        if (pending > 0) {
            return "No calf is settled yet; " + pending + (pending == 1 ? " is" : " are") + " pending.";
        }
        return rate ? "No calf spent a day at risk." : "No calf belongs to the denominator.";
    }

    private static List<Estimate.Attrition> attrition(List<Verdict> verdicts) {
        Map<Part, Map<String, Integer>> reasons = new EnumMap<>(Part.class);
        for (Verdict verdict : verdicts) {
            if (!verdict.atRisk()) {
                String reason = verdict.part() == Part.PENDING ? "pending" : verdict.reason();
                reasons.computeIfAbsent(verdict.part(), part -> new TreeMap<>()).merge(reason, 1, Integer::sum);
            }
        }
        Map<String, Integer> lost = new LinkedHashMap<>();
        for (Part part : List.of(Part.OUTSIDE, Part.EXCLUDED, Part.PENDING)) {
            reasons.getOrDefault(part, Map.of()).forEach((reason, count) -> lost.merge(reason, count, Integer::sum));
        }
        List<Estimate.Attrition> steps = new ArrayList<>();
        int before = verdicts.size();
        for (Map.Entry<String, Integer> step : lost.entrySet()) {
            steps.add(new Estimate.Attrition(step.getKey(), before, step.getValue()));
            before -= step.getValue();
        }
        return steps;
    }
}
