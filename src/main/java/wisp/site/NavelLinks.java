package wisp.site;

import java.util.Map;
import wisp.cohort.NavelDelay;
import wisp.indicator.Stratum;
import wisp.question.Counted;
import wisp.question.navels.NavelGroup;
import wisp.question.navels.NavelsQuestion;

/** Addresses of the calves behind the counts of the navels question; the filters in use stay in every one of them. */
public final class NavelLinks {
    private static final String CALVES = "/navels/calves";
    private static final String FIGURE = "/figures/" + NavelsQuestion.FIGURE;

    private final Links links;

    NavelLinks(Links links) {
        this.links = links;
    }

    /** The figure itself, by class of delay. */
    String figure() {
        return links.to(FIGURE, Map.of("by", Stratum.NAVEL_DELAY.word()));
    }

    /** The calves of one class that are a part of the figure. */
    String calves(NavelDelay delay, CalvesBehind.Part part) {
        Map<String, String> changes =
                Map.of("by", Stratum.NAVEL_DELAY.word(), "stratum", delay.word(), "part", part.word());
        return links.to(FIGURE, changes) + "#calves";
    }

    /** The calves that drop out of the figure for one reason. */
    String lost(String reason) {
        return links.to(FIGURE, Map.of("by", "", "part", CalvesBehind.Part.LOST.word(), "reason", reason)) + "#calves";
    }

    /** The calves that are a part of the figure. */
    String part(CalvesBehind.Part part) {
        return links.to(FIGURE, Map.of("by", "", "part", part.word())) + "#calves";
    }

    /** Every calf asked for. */
    String asked() {
        return links.to("/calves", Map.of("by", ""));
    }

    /** The calves of a group. */
    String calves(NavelGroup group) {
        return to(NavelCalvesAsked.all(group));
    }

    /** A sentence whose counts open their calves. */
    Sentence said(Counted sentence) {
        return Sentence.of(sentence, links, CALVES);
    }

    /** The calves that are asked for. */
    String to(NavelCalvesAsked calves) {
        return links.to(CALVES, calves.parameters());
    }

    /** A number and the list behind it. */
    Count count(int n, NavelCalvesAsked calves) {
        return new Count(n, to(calves));
    }

    /**
     * A count of calves.
     *
     * @param href the list of just these calves
     */
    public record Count(int n, String href) {}
}
