package wisp.question.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.Measure;
import wisp.indicator.Verdict;
import wisp.statistics.Interval;
import wisp.statistics.Mover;
import wisp.statistics.Standardisation;

/**
 * A figure of two seasons as it would be had both had the same mix of dams' parity and sex: direct standardisation over
 * parity (1, 2, 3 and over) × sex, the standard being the two seasons' calves together.
 *
 * <p>A rate takes the gamma interval of Fay and Feuer 1997; a share or risk, which may rest on censored calves, the
 * weighted sum of its strata's own estimates (Zou, Huang and Zhang 2009). Calves whose parity or sex is not recorded,
 * and those of a stratum that one season has not, are left out of both and counted.
 *
 * @param now this season's standardised value, null where none can be given
 * @param before last season's
 * @param difference this season's less last season's
 * @param strata the strata that both seasons have
 * @param counted calves (or episodes) of this season in them
 * @param leftOut calves (or episodes) of this season outside them
 * @param leftOutBefore the same of last season
 * @param why why there is none, empty where there is one
 */
public record Standardised(
        Interval now,
        Interval before,
        Interval difference,
        List<String> strata,
        int counted,
        int leftOut,
        int leftOutBefore,
        String why) {
    private static final double LEVEL = 0.95;
    private static final double PER = 1000;

    private record Pair(String name, Estimate now, Estimate before) {
        double both() {
            return now.denominator() + before.denominator();
        }
    }

    static Standardised of(Estimate now, Estimate before, CalfMix mixes) {
        Map<String, List<Verdict>> mine = divide(now, mixes);
        Map<String, List<Verdict>> theirs = divide(before, mixes);
        List<Pair> pairs = new ArrayList<>();
        mine.keySet().stream().filter(theirs::containsKey).sorted().forEach(name -> {
            Pair pair = new Pair(
                    name, Figures.among(now, name, mine.get(name)), Figures.among(before, name, theirs.get(name)));
            if (pair.now.interval() != null && pair.before.interval() != null) {
                pairs.add(pair);
            }
        });
        List<String> strata = pairs.stream().map(Pair::name).toList();
        int counted = strata.stream().mapToInt(name -> mine.get(name).size()).sum();
        int countedBefore =
                strata.stream().mapToInt(name -> theirs.get(name).size()).sum();
        int leftOut = atRisk(now) - counted;
        int leftOutBefore = atRisk(before) - countedBefore;
        if (pairs.isEmpty()) {
            String why = "No group of parity and sex has calves with a figure in both seasons.";
            return new Standardised(null, null, null, strata, 0, leftOut, leftOutBefore, why);
        }
        Interval one = standardise(now, pairs, pairs.stream().map(Pair::now).toList());
        Interval other =
                standardise(now, pairs, pairs.stream().map(Pair::before).toList());
        return new Standardised(one, other, Mover.difference(one, other), strata, counted, leftOut, leftOutBefore, "");
    }

    private static Interval standardise(Estimate figure, List<Pair> pairs, List<Estimate> season) {
        double[] standard = pairs.stream().mapToDouble(Pair::both).toArray();
        if (figure.indicator().measure() == Measure.RATE) {
            int[] events = season.stream().mapToInt(Estimate::numerator).toArray();
            double[] time = season.stream()
                    .mapToDouble(stratum -> stratum.denominator() / PER)
                    .toArray();
            return Standardisation.direct(events, time, standard, LEVEL);
        }
        double all = pairs.stream().mapToDouble(Pair::both).sum();
        double[] weights = pairs.stream().mapToDouble(pair -> pair.both() / all).toArray();
        return Mover.sum(weights, season.stream().map(Estimate::interval).toList());
    }

    private static int atRisk(Estimate estimate) {
        int atRisk = 0;
        for (Verdict verdict : estimate.verdicts()) {
            atRisk += verdict.atRisk() ? 1 : 0;
        }
        return atRisk;
    }

    private static Map<String, List<Verdict>> divide(Estimate estimate, CalfMix mixes) {
        Map<String, List<Verdict>> strata = new LinkedHashMap<>();
        for (Verdict verdict : estimate.verdicts()) {
            if (verdict.atRisk()) {
                Optional<String> mix = mixes.of(verdict.row());
                if (mix.isPresent()) {
                    strata.computeIfAbsent(mix.get(), n -> new ArrayList<>()).add(verdict);
                }
            }
        }
        return strata;
    }
}
