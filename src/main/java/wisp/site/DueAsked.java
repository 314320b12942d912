package wisp.site;

import io.javalin.http.Context;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import wisp.due.Due;
import wisp.due.DueItem;
import wisp.due.DueList;
import wisp.event.Fault;
import wisp.indicator.Selection;
import wisp.records.Records;

/**
 * What a request asks of the list of what is due.
 *
 * @param asked the calves and the day of knowledge
 * @param list what is due in the pens asked for
 * @param pens every pen with something due
 * @param kept parameters of this page beside the filters, in use
 * @param now the moment by the clock
 */
record DueAsked(Asked asked, DueList list, List<String> pens, Map<String, String> kept, Instant now) {
    static final String ON = "on";
    static final String ORDER = "order";
    static final String WORKER = "worker";
    static final String OPEN = "open";
    static final String RECORDED = "recorded";
    static final String BEFORE = "before";
    static final String PEN = "pen";

    private static final Set<String> PARAMETERS = Set.of(ON, ORDER, WORKER, OPEN, RECORDED, BEFORE);
    private static final int LONGEST_NAME = 80;

    static DueAsked of(Context ctx, Records records, Due due) {
        Asked asked = Asked.of(ctx, records, PARAMETERS);
        String order = given(ctx, ORDER);
        if (!order.isEmpty() && !order.equals(PEN) && !order.equals("time")) {
            throw Problem.parameters(List.of(new Fault(
                    ORDER, "There is no such order.", "Those that there are: time, pen. Leave it for time.")));
        }
        Instant at = DueApi.at(ctx, records, asked);
        Selection selection = asked.selection();
        DueList all = DueList.of(due, asked.cohort(), anyPen(selection), at);
        Set<String> pens = new TreeSet<>();
        all.items().stream().map(DueItem::pen).filter(pen -> pen != null).forEach(pens::add);
        List<DueItem> items = all.items().stream()
                .filter(item -> selection.pen() == null || selection.pen().equals(item.pen()))
                .toList();
        Map<String, String> kept = new LinkedHashMap<>();
        keep(kept, ON, given(ctx, ON));
        keep(kept, ORDER, order.equals(PEN) ? PEN : "");
        String worker = given(ctx, WORKER);
        keep(kept, WORKER, worker.substring(0, Math.min(LONGEST_NAME, worker.length())));
        DueList list = new DueList(all.at(), all.zone(), items, all.notices());
        return new DueAsked(
                asked, list, List.copyOf(pens), kept, records.clock().instant());
    }

    private static Selection anyPen(Selection one) {
        return new Selection(
                one.season(), one.from(), one.to(), one.asOf(), null, null, one.sex(), one.parity(), one.breed());
    }

    private static void keep(Map<String, String> kept, String name, String value) {
        if (!value.isEmpty()) {
            kept.put(name, value);
        }
    }

    static String given(Context ctx, String name) {
        String text = ctx.queryParam(name);
        return text == null ? "" : text.strip();
    }

    /** Whether anything may be recorded: nobody can tick off what was known on a past day. */
    boolean ticks() {
        return asked.selection().asOf() == null;
    }

    boolean byPen() {
        return kept.containsKey(ORDER);
    }

    String worker() {
        return kept.getOrDefault(WORKER, "");
    }

    LocalDate today() {
        return list.at().atZone(list.zone()).toLocalDate();
    }

    /** Address of this list with other parameters of the page. */
    String to(Map<String, String> changes) {
        return to("/due", changes);
    }

    String to(String path, Map<String, String> changes) {
        Map<String, String> all = new LinkedHashMap<>(kept);
        all.putAll(changes);
        return new Links(asked.parameters()).to(path, all);
    }
}
