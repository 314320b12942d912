package wisp.site;

import java.util.LinkedHashMap;
import java.util.Map;
import wisp.indicator.Stratum;
import wisp.question.Counted;
import wisp.question.DirtyShare;
import wisp.question.PensQuestion;
import wisp.question.ScoredCalves;

/** Addresses of the calves behind the counts of the pens' page; the filters in use stay in every one of them. */
final class PensLinks {
    static final String LIST = "list";
    static final String CALVES = "/pens/calves";

    private static final String FIGURE = "/figures/" + PensQuestion.FIGURE;

    private final Links links;

    PensLinks(Links links) {
        this.links = links;
    }

    /** A count with the address of its calves. */
    Count count(ScoredCalves calves) {
        boolean none = calves.count() == 0;
        return new Count(calves.count(), none ? "" : links.to(CALVES, Map.of(LIST, calves.id(), "by", "")));
    }

    /** A sentence whose counts open their calves. */
    Sentence said(Counted sentence) {
        return Sentence.of(sentence, links, CALVES);
    }

    /** Dirty calves of a season, or of a pen in a season. */
    Count dirty(DirtyShare share, String season, String pen) {
        return figure(share.dirty(), season, pen, CalvesBehind.Part.NUMERATOR);
    }

    /** Scored calves of a season, or of a pen in a season. */
    Count scored(DirtyShare share, String season, String pen) {
        return figure(share.n(), season, pen, CalvesBehind.Part.DENOMINATOR);
    }

    /** Scored calves whose pen nobody wrote down. */
    Count noPen(int calves) {
        return figure(calves, "", Stratum.NOT_RECORDED, CalvesBehind.Part.DENOMINATOR);
    }

    private Count figure(int count, String season, String pen, CalvesBehind.Part part) {
        if (count == 0) {
            return new Count(0, "");
        }
        Map<String, String> changes = new LinkedHashMap<>();
        if (!season.isEmpty()) {
            changes.put("season", season);
        }
        changes.put("by", pen.isEmpty() ? "" : Stratum.PEN.word());
        changes.put("stratum", pen);
        changes.put("part", part.word());
        return new Count(count, links.to(FIGURE, changes) + "#calves");
    }
}
