package wisp.site;

import java.util.ArrayList;
import java.util.List;
import wisp.indicator.Comparison;
import wisp.indicator.Estimate;

/** The season in one or two sentences, worked out from its figures; it claims no more than their intervals allow. */
final class SeasonSentence {
    private SeasonSentence() {}

    /**
     * The sentences.
     *
     * @param season the season's name, or {@code all}
     * @param calves calves born in it
     * @param stillbirth the figure of that id
     * @param deaths pre-weaning mortality
     */
    static String of(String season, int calves, Estimate stillbirth, Estimate deaths) {
        String when = season.equals("all") ? "over all seasons" : "in " + season;
        if (calves == 0) {
            return "No calf born " + when + " is recorded.";
        }
        String born = calves == 1 ? "One calf was born " : calves + " calves were born ";
        List<String> parts = new ArrayList<>();
        parts.add(part(stillbirth, "born dead or dead within 24 hours"));
        parts.add(part(deaths, "dead from then to 60 days"));
        String counted = parts.stream()
                .filter(part -> !part.isEmpty())
                .reduce((a, b) -> a + ", and " + b)
                .orElse("");
        String first = counted.isEmpty()
                ? born + when + "; none has been followed long enough for a figure of deaths."
                : born + when + ": " + counted + ".";
        return first + compared(stillbirth, deaths);
    }

    private static String part(Estimate estimate, String what) {
        if (estimate == null || estimate.interval() == null) {
            return "";
        }
        return Shown.value(estimate) + " " + what + " (" + estimate.numerator() + " of " + Shown.denominator(estimate)
                + "; allowing for chance " + Shown.interval(estimate) + " %)";
    }

    private static String compared(Estimate stillbirth, Estimate deaths) {
        List<String> more = new ArrayList<>();
        String with = "";
        for (Estimate estimate : new Estimate[] {stillbirth, deaths}) {
            Comparison comparison = estimate == null ? null : estimate.comparison();
            if (comparison == null || comparison.difference() == null) {
                continue;
            }
            with = comparison.with();
            boolean differs =
                    comparison.difference().low() > 0 || comparison.difference().high() < 0;
            if (differs) {
                String direction = comparison.difference().value() > 0 ? "higher" : "lower";
                String what = estimate == stillbirth ? "Stillbirth" : "Mortality to 60 days";
                more.add(what + " was " + direction + " than in " + with + " by more than chance.");
            }
        }
        if (with.isEmpty()) {
            return "";
        }
        return more.isEmpty() ? " Against " + with + " any difference could be chance." : " " + String.join(" ", more);
    }
}
