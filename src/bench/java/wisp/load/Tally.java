package wisp.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentLinkedQueue;

/** Times by kind of request, in milliseconds, and what went wrong. */
final class Tally {
    private final Map<String, List<Double>> times = new TreeMap<>();
    private final ConcurrentLinkedQueue<String> errors = new ConcurrentLinkedQueue<>();

    synchronized void took(String what, double milliseconds) {
        times.computeIfAbsent(what, w -> new ArrayList<>()).add(milliseconds);
    }

    void failed(String how) {
        errors.add(how);
    }

    int errors() {
        return errors.size();
    }

    /** A line a kind: how many, middle and last hundredth, and the last hundredth in parts of what is aimed at. */
    synchronized void print(Map<String, Double> aims) {
        System.out.printf(
                Locale.ROOT, "%-28s %8s %10s %10s %10s %8s%n", "", "n", "p50 ms", "p99 ms", "most ms", "p99/aim");
        times.forEach((what, all) -> {
            double[] sorted = all.stream().mapToDouble(d -> d).sorted().toArray();
            double p99 = quantile(sorted, 0.99);
            Double aim = aims.get(what);
            System.out.printf(
                    Locale.ROOT,
                    "%-28s %8d %10.1f %10.1f %10.1f %8s%n",
                    what,
                    sorted.length,
                    quantile(sorted, 0.5),
                    p99,
                    sorted[sorted.length - 1],
                    aim == null ? "" : String.format(Locale.ROOT, "%.2f", p99 / aim));
        });
        errors.stream().distinct().limit(10).forEach(System.out::println);
    }

    private static double quantile(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1L, Math.round(Math.ceil(share * sorted.length)) - 1)];
    }
}
