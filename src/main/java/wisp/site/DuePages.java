package wisp.site;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.due.Due;
import wisp.event.Fault;
import wisp.records.Records;
import wisp.report.DueSheet;

/**
 * The addresses of what is due: page, ticks, CSV and the sheet to take round. A tick is answered by sending the browser
 * back to the list, so that a reload records nothing.
 */
final class DuePages {
    private static final String PATH = "/due";

    private final Records records;
    private final Due due;
    private final OwnForms forms = new OwnForms();

    DuePages(Records records) {
        this.records = records;
        this.due = new Due(records.definitions());
    }

    void addTo(JavalinConfig config) {
        config.routes.get(PATH, this::page);
        config.routes.post(PATH, this::tick);
        config.routes.get("/due.csv", this::csv);
        config.routes.get("/due.pdf", this::pdf);
    }

    private void page(Context ctx) {
        DueAsked asked = DueAsked.of(ctx, records, due);
        String recorded = DueAsked.given(ctx, DueAsked.RECORDED);
        DuePage.Recorded last = recorded.isEmpty()
                ? null
                : DueRecorded.of(asked, recorded, DueAsked.given(ctx, DueAsked.BEFORE))
                        .orElse(null);
        show(ctx, 200, asked, new DuePage.Last(Optional.empty(), last, DueAsked.given(ctx, DueAsked.OPEN), ""));
    }

    private void tick(Context ctx) {
        forms.sameOrigin(ctx);
        DueAsked asked = DueAsked.of(ctx, records, due);
        if (!asked.ticks()) {
            throw new Problem(
                    409,
                    "Nothing was recorded",
                    "A past day shows what was known then, and nothing can be ticked off there. Take as-of out of the"
                            + " address.",
                    List.of());
        }
        DueForm form = DueForm.sent(ctx);
        DueTicking.Outcome outcome =
                new DueTicking(records, due).of(form, asked.worker(), asked.now(), forms.tokenFits(ctx));
        if (outcome.recorded().isEmpty()) {
            back(ctx, asked, form, outcome);
            return;
        }
        List<String> before = DueSections.anchors(asked);
        DueAsked after = DueAsked.of(ctx, records, due);
        String next = next(before, DueSections.anchors(after), outcome.anchor());
        String ids = String.join(".", outcome.recorded());
        ctx.status(303);
        Map<String, String> told = new LinkedHashMap<>();
        told.put(DueAsked.RECORDED, ids);
        told.put(DueAsked.BEFORE, next);
        ctx.header("Location", asked.to(told) + "#recorded");
    }

    /** The first item from a place on that is still there; empty where none is. */
    private static String next(List<String> before, List<String> after, String anchor) {
        int place = Math.max(0, before.indexOf(anchor));
        return before.subList(Math.min(place, before.size()), before.size()).stream()
                .filter(after::contains)
                .findFirst()
                .orElse("");
    }

    private void back(Context ctx, DueAsked asked, DueForm form, DueTicking.Outcome outcome) {
        List<Fault> faults = outcome.faults();
        boolean shown = DueSections.anchors(asked).contains(outcome.anchor())
                && !outcome.anchor().isEmpty();
        String alert = faults.stream()
                .filter(fault -> fault.field().isEmpty() || !shown)
                .map(fault -> (fault.problem() + " " + fault.mend()).strip())
                .reduce((one, other) -> one + " " + other)
                .orElse("What is wrong stands at its field; everything typed is kept.");
        Optional<DueRow.Returned> returned = Optional.of(new DueRow.Returned(
                form.again(outcome.turn()),
                faults.stream().filter(fault -> !fault.field().isEmpty()).toList()));
        show(ctx, outcome.status(), asked, new DuePage.Last(returned, null, "", alert));
    }

    private void show(Context ctx, int status, DueAsked asked, DuePage.Last last) {
        ctx.status(status);
        ctx.header("Cache-Control", "no-store");
        Pages.show(ctx, "due.jte", DuePage.of(asked, records.definitions(), forms.token(), last));
    }

    private void csv(Context ctx) {
        DueAsked asked = DueAsked.of(ctx, records, due);
        StringWriter text = new StringWriter();
        DueCsv.of(asked.list()).write().csv(text);
        ctx.contentType("text/csv; charset=utf-8");
        ctx.header("Content-Disposition", "attachment; filename=\"due-" + asked.today() + ".csv\"");
        ctx.result(text.toString());
    }

    private void pdf(Context ctx) {
        DueAsked asked = DueAsked.of(ctx, records, due);
        Frame frame = Frame.of(asked.asked(), "Due", PATH, Map.of());
        String asOf = asked.ticks() ? "" : frame.asOfWords();
        ctx.contentType("application/pdf");
        ctx.header("Content-Disposition", "inline; filename=\"due-" + asked.today() + ".pdf\"");
        ctx.result(DueSheet.of(asked.list(), asked.asked().cohort(), asOf).pdf(records.dayHeads()));
    }
}
