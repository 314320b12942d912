package wisp.site;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.question.Counted;

/**
 * A sentence of a page, each of its counts opening the calves that it counts.
 *
 * @param parts its words in their order
 */
public record Sentence(List<Part> parts) {

    /**
     * Some words of it.
     *
     * @param href the list of the calves that they count, empty where they count none
     */
    public record Part(String text, String href) {}

    /**
     * A sentence with addresses.
     *
     * @param links addresses that keep the filters
     * @param lists where the lists of the page's own answer are opened, such as {@code /season/calves} or {@code
     *     /proof/first-tag#calves}
     */
    static Sentence of(Counted said, Links links, String lists) {
        return new Sentence(said.pieces().stream()
                .map(piece ->
                        new Part(piece.text(), piece.calves().isEmpty() ? "" : href(piece.calves(), links, lists)))
                .toList());
    }

    private static String href(Map<String, String> calves, Links links, String lists) {
        Map<String, String> changes = new LinkedHashMap<>(calves);
        changes.putIfAbsent("by", "");
        String figure = changes.remove(Counted.FIGURE);
        if (figure != null) {
            return links.to("/figures/" + figure, changes) + "#calves";
        }
        if (changes.remove(Counted.ASKED) != null) {
            return links.to("/calves", changes);
        }
        int hash = lists.indexOf('#');
        return hash < 0
                ? links.to(lists, changes)
                : links.to(lists.substring(0, hash), changes) + lists.substring(hash);
    }

    static List<Sentence> all(List<Counted> said, Links links, String lists) {
        return said.stream().map(one -> of(one, links, lists)).toList();
    }
}
