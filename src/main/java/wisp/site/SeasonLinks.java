package wisp.site;

import java.util.Map;
import wisp.question.season.CalfList;
import wisp.question.season.Finding;
import wisp.question.season.StrataTable;

/** Addresses of what the season page opens onto. */
final class SeasonLinks {
    static final String LIST = "list";
    static final String FIGURE = "figure";
    static final String CALVES = "/season/calves";

    private final Links links;

    SeasonLinks(Links links) {
        this.links = links;
    }

    /** The calves of a list, empty where there is none. */
    String calves(CalfList list) {
        return list.count() == 0 ? "" : links.to(CALVES, Map.of(LIST, list.id(), "by", ""));
    }

    /** The calves of the list of this name in another season. */
    String before(CalfList list, String season) {
        return links.to(CALVES, Map.of(LIST, list.id(), "by", "", "season", season));
    }

    /** A group's cases, or all its calves that are counted. */
    String group(StrataTable.Line line, CalvesBehind.Part part) {
        String id = line.group().indicator().id();
        Map<String, String> of =
                Map.of("by", line.by().word(), "stratum", line.group().name(), "part", part.word());
        return links.to("/figures/" + id, of) + "#calves";
    }

    /** What a finding is about. */
    String finding(Finding finding) {
        String path = "/figures/" + finding.figure();
        return finding.by() == null
                ? links.to(path, Map.of("by", ""))
                : links.to(path, Map.of("by", finding.by().word(), "stratum", finding.group(), "part", "numerator"))
                        + "#calves";
    }

    /** A table of the page as CSV. */
    String csv(String table) {
        return links.to("/season.csv", Map.of("table", table, "by", ""));
    }

    /** The groups of a figure as CSV. */
    String groups(String figure) {
        return links.to("/season.csv", Map.of("table", "groups", FIGURE, figure, "by", ""));
    }

    /** A picture of the page as PNG. */
    String png(String picture) {
        return links.to("/season.png", Map.of("picture", picture, "by", ""));
    }
}
