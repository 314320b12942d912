package wisp.cli;

import java.io.PrintWriter;
import java.util.Locale;
import wisp.cohort.Cohort;
import wisp.indicator.Definitions;
import wisp.indicator.Estimate;
import wisp.indicator.Measure;
import wisp.indicator.Target;

/** Prints figures as a table for people. */
final class FiguresTable {
    private static final String ROW = "%-44s %9s %-17s %11s %8s %8s%n";

    private FiguresTable() {}

    static void print(
            Iterable<Estimate> estimates, String season, Cohort cohort, Definitions definitions, PrintWriter out) {
        out.println("Season " + season + ", followed to "
                + cohort.cut().atZone(cohort.farm().latest().zone()));
        out.printf(ROW, "figure", "value", "95 % interval", "counts", "pending", "left out");
        for (Estimate estimate : estimates) {
            row(estimate, estimate.indicator().title(), out);
            target("target", estimate.indicator().target(), estimate, out);
            target(
                    "own target",
                    definitions.ownTarget(estimate.indicator().id()).orElse(null),
                    estimate,
                    out);
            for (Estimate stratum : estimate.strata()) {
                row(stratum, "  " + stratum.name(), out);
            }
        }
        out.println("Shares in percent, rates per 1000 calf-days. A figure's rule and calves: wisp serve.");
    }

    private static void row(Estimate estimate, String title, PrintWriter out) {
        String name = title.length() > 44 ? title.substring(0, 43) + "…" : title;
        int left = estimate.excluded().values().stream()
                .mapToInt(Integer::intValue)
                .sum();
        String counts = estimate.numerator() + "/" + Math.round(estimate.denominator());
        if (estimate.interval() == null) {
            out.printf(ROW, name, "–", "", counts, estimate.pending(), left);
            out.println("    " + estimate.why());
        } else {
            double scale = estimate.indicator().measure() == Measure.RATE ? 1 : 100;
            String value = number(estimate.interval().value() * scale);
            String interval = number(estimate.interval().low() * scale) + " to "
                    + number(estimate.interval().high() * scale);
            out.printf(ROW, name, value, interval, counts, estimate.pending(), left);
        }
    }

    private static void target(String whose, Target target, Estimate estimate, PrintWriter out) {
        if (target != null) {
            double scale = estimate.indicator().measure() == Measure.RATE ? 1 : 100;
            String standing = estimate.interval() == null
                    ? ""
                    : switch (estimate.standing(target)) {
                        case MET -> ": met";
                        case MISSED -> ": missed";
                        case UNSURE -> estimate.few() ? ": too few to say" : ": interval spans the target";
                    };
            out.println("    " + whose + " " + (target.below() ? "below " : "at least ")
                    + number(target.value() * scale) + standing);
        }
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.2f" : "%.1f", value);
    }
}
