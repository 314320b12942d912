package wisp.site;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.due.Due;
import wisp.due.DueItem;
import wisp.due.DueState;
import wisp.history.Life;
import wisp.records.Records;
import wisp.report.DueWords;

/**
 * Something that is due with one calf, on its page.
 *
 * @param title what is to be done
 * @param state how it stands
 * @param end when it ends, in words
 * @param limit what the rule says
 * @param href its place in the list of what is due, empty where that does not show it yet
 */
public record CalfDue(String title, String state, String end, String limit, String href) {

    /** What is due and what comes later with a set end, in order of time. */
    static List<CalfDue> of(Life life, int row, Asked asked, Records records) {
        Instant asOf = asked.selection().asOf();
        Instant at = asOf == null ? records.clock().instant() : asOf;
        Map<String, String> kept = new LinkedHashMap<>(asked.parameters());
        kept.keySet().removeIf(name -> !name.equals("as-of"));
        Links links = new Links(kept);
        return new Due(records.definitions())
                .of(life, row, at).stream()
                        .filter(item -> item.listed()
                                || (item.state() == DueState.LATER
                                        && item.span().closes() != null))
                        .sorted(Comparator.comparing(
                                item -> item.span().closes(), Comparator.nullsLast(Comparator.naturalOrder())))
                        .map(item -> line(item, at, links))
                        .toList();
    }

    private static CalfDue line(DueItem item, Instant at, Links links) {
        String anchor = DueRow.anchor(item);
        String href = links.to("/due", Map.of(DueAsked.OPEN, anchor)) + "#" + anchor;
        return new CalfDue(
                item.title(),
                item.state().word(),
                DueWords.end(item, at).line(),
                item.rule().limit(),
                item.listed() ? href : "");
    }
}
