package wisp.simulation;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.indicator.Estimate;
import wisp.indicator.Outcome;
import wisp.indicator.Rule;
import wisp.indicator.Verdict;
import wisp.statistics.AalenJohansen;
import wisp.statistics.KaplanMeier;

/**
 * What the figures come to over one very large season that is judged in parts: sums of numerators and denominators, and
 * for a risk with censoring the curve over all its lives together.
 */
final class TrueValues {
    private final int lives;
    private final Map<String, Sum> sums = new LinkedHashMap<>();

    /** One figure's sums so far, and the follow-up of each life where it is a risk with censoring. */
    private static final class Sum {
        private final Rule rule;
        private final double[] days;
        private final int[] causes;
        private int followed;
        private double numerator;
        private double denominator;

        Sum(Rule rule, int lives) {
            this.rule = rule;
            boolean curve = rule instanceof Rule.Risk risk && !risk.leaveOutCensored();
            this.days = new double[curve ? lives : 0];
            this.causes = new int[curve ? lives : 0];
        }
    }

    /** @param lives the most there will be */
    TrueValues(int lives) {
        this.lives = lives;
    }

    /** Takes in one part's figure under a name. */
    void add(String name, Estimate part) {
        Sum sum = sums.computeIfAbsent(name, n -> new Sum(part.indicator().rule(), lives));
        sum.numerator += part.numerator();
        sum.denominator += part.denominator();
        if (sum.days.length > 0) {
            for (Verdict verdict : part.verdicts()) {
                if (verdict.atRisk()) {
                    sum.days[sum.followed] = verdict.days();
                    sum.causes[sum.followed++] = cause(verdict.ending());
                }
            }
        }
    }

    /** Everybody in the denominator of a figure, over all parts. */
    double denominator(String name) {
        return sums.get(name).denominator;
    }

    /** Every figure over all parts, in its own unit; none where nobody is in its denominator. */
    Map<String, Double> values() {
        Map<String, Double> values = new LinkedHashMap<>();
        sums.forEach((name, sum) -> {
            if (sum.denominator > 0) {
                values.put(name, value(sum));
            }
        });
        return values;
    }

    private static double value(Sum sum) {
        if (sum.rule instanceof Rule.Rate) {
            return 1000 * sum.numerator / sum.denominator;
        }
        return sum.days.length > 0 ? risk(sum) : sum.numerator / sum.denominator;
    }

    private static double risk(Sum sum) {
        Rule.Risk risk = (Rule.Risk) sum.rule;
        double end =
                risk.window().end().exact().minus(risk.window().start().exact()).toMillis() / 86_400_000.0;
        double[] days = Arrays.copyOf(sum.days, sum.followed);
        int[] causes = Arrays.copyOf(sum.causes, sum.followed);
        if (risk.outcome() instanceof Outcome.Death) {
            boolean[] died = new boolean[days.length];
            for (int i = 0; i < died.length; i++) {
                died[i] = causes[i] == 1;
            }
            return 1 - KaplanMeier.of(days, died).at(end).value();
        }
        return AalenJohansen.of(days, causes, 2).get(0).at(end).value();
    }

    private static int cause(Verdict.Ending ending) {
        return List.of(Verdict.Ending.OUTCOME, Verdict.Ending.COMPETING).indexOf(ending) + 1;
    }
}
