package wisp.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import wisp.chart.Along;
import wisp.chart.Axis;
import wisp.chart.Format;
import wisp.chart.Ink;
import wisp.chart.Knot;
import wisp.chart.Layer;
import wisp.chart.Limit;
import wisp.chart.NumbersAtRisk;
import wisp.chart.Picture;
import wisp.chart.Steps;
import wisp.due.Proof;
import wisp.statistics.Interval;

/** How the share done grew with time, with the limit marked and the calves still waiting. */
final class ProofPicture {
    private static final int COUNTS = 6;

    private ProofPicture() {}

    static Picture of(Proof proof) {
        double end = end(proof);
        List<Layer> layers = new ArrayList<>();
        List<Knot> knots = new ArrayList<>();
        knots.add(Knot.at(0, proof.curve().at(0).value()));
        for (double time : proof.curve().times()) {
            if (time <= end) {
                Interval there = proof.curve().at(time);
                knots.add(Knot.at(time, there.value()).between(there.low(), there.high()));
            }
        }
        knots.add(Knot.at(end, proof.curve().at(end).value()));
        layers.add(new Steps("Done", Ink.FIRST, knots));
        Map<Double, String> marks = new LinkedHashMap<>();
        proof.limits().forEach((rule, at) -> {
            if (!at.isNaN()) {
                marks.merge(
                        at,
                        rule.place().isEmpty() ? "limit" : "limit, " + rule.place(),
                        (a, b) -> a.equals(b) ? a : a + ", " + b);
            }
        });
        marks.forEach((at, name) -> layers.add(new Limit(name, Ink.ALARM, Along.X, at)));
        layers.add(new NumbersAtRisk(
                "Not done yet",
                Ink.FIRST,
                times(proof, COUNTS).stream()
                        .map(time -> new NumbersAtRisk.Count(time, proof.curve().atRiskAt(time)))
                        .toList()));
        return new Picture(
                "proof",
                "Share done, by time",
                words(proof, marks),
                Axis.fromZero(ProofWords.scale(proof), Format.COUNT),
                Axis.fromZero("Done (% of calves), with 95 % band", Format.PERCENT),
                layers);
    }

    /** Times to speak of: evenly over the picture, the limits' own among them. */
    static List<Double> times(Proof proof, int about) {
        TreeSet<Double> times = new TreeSet<>();
        double step = Math.max(1, Math.ceil(end(proof) / about));
        for (double time = 0; time <= end(proof); time += step) {
            times.add(time);
        }
        proof.limits().values().stream().filter(at -> !at.isNaN()).forEach(times::add);
        return List.copyOf(times);
    }

    /** Twice the last limit, but no further than anything happened; without a limit, as far as anything happened. */
    private static double end(Proof proof) {
        double[] times = proof.curve().times();
        double last = times.length == 0 ? 1 : times[times.length - 1];
        double limit = proof.limits().values().stream()
                .filter(at -> !at.isNaN())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(last);
        return Math.max(1, Math.max(limit, Math.min(last, 2 * limit)));
    }

    private static String words(Proof proof, Map<Double, String> marks) {
        StringBuilder words = new StringBuilder("A curve that rises from nothing.");
        marks.forEach((at, name) -> words.append(" By the limit (")
                .append(name)
                .append(", ")
                .append(ProofWords.time(proof, at))
                .append(") it was done with ")
                .append(ProofWords.percent(proof.curve().at(at).value()))
                .append(" of the calves."));
        return words.toString();
    }
}
