package wisp.site;

import java.util.Map;
import wisp.cohort.NavelDelay;
import wisp.indicator.Stratum;
import wisp.question.navels.NavelsQuestion;

/** Addresses of the calves behind the counts of the navels question; the filters in use stay in every one of them. */
final class NavelLinks {
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
}
