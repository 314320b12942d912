package wisp.question.season;

import java.util.Map;
import wisp.indicator.Indicator;
import wisp.indicator.Measure;
import wisp.indicator.Rule;

/** A figure as the subject of a sentence that goes on with "was". */
final class Subject {
    /** Titles that name calves or a deed and no number, by what is counted of them. */
    private static final Map<String, String> SHARES = Map.of(
            "Dirty calves", "of dirty calves",
            "Enough colostrum by 6 h", "of calves with enough colostrum by 6 h",
            "Passive transfer fair or better", "of calves with passive transfer fair or better",
            "Both ear tags inside the legal limit", "of calves with both ear tags inside the legal limit",
            "BVD tissue sample inside the limit", "of calves with a BVD tissue sample inside the limit",
            "Registered inside the legal limit", "of calves registered inside the legal limit",
            "Castrated inside the legal limits", "of castrations inside the legal limits",
            "Bull calves ringed while it is lawful", "of bull calves ringed while it is lawful");

    private static final Map<String, String> RISKS =
            Map.of("Navel infection from 24 h to 21 days", "The risk of navel infection from 24 h to 21 days");

    private Subject() {}

    /** Such as {@code The share of dirty calves}; a farm's own share of another title is named by it. */
    static String of(Indicator indicator) {
        String title = indicator.title();
        if (SHARES.containsKey(title)) {
            return "The share " + SHARES.get(title);
        }
        boolean named = indicator.rule() instanceof Rule.CaseFatality;
        boolean share =
                !named && (indicator.measure() == Measure.INSIDE_LIMIT || indicator.measure() == Measure.PROPORTION);
        return share ? "The share of “" + title + "”" : RISKS.getOrDefault(title, title);
    }
}
