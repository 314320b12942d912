package wisp.site;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wisp.cohort.Cohort;
import wisp.event.Fault;
import wisp.records.Intake;
import wisp.records.Records;

/**
 * The page that mends an event by writing its correction. It is offered for what is known now alone: nobody can correct
 * what was known on a past day.
 */
final class Mending {
    private static final String PATH = "/records/mend";
    private static final Set<String> PARAMETERS = Set.of("source", "id");

    private final Records records;
    private final Posting posting;
    private final OwnForms forms = new OwnForms();

    Mending(Records records, Posting posting) {
        this.records = records;
        this.posting = posting;
    }

    void addTo(JavalinConfig config) {
        config.routes.get(PATH, this::open);
        config.routes.post(PATH, this::record);
    }

    private void open(Context ctx) {
        Asked asked = asked(ctx);
        MendTarget target = target(asked.cohort(), ctx.queryParam("source"), ctx.queryParam("id"));
        MendForm form = MendForm.fresh(target, records.clock().instant());
        show(ctx, 200, asked, target, form, List.of());
    }

    private void record(Context ctx) {
        forms.sameOrigin(ctx);
        Asked asked = asked(ctx);
        MendTarget target = target(asked.cohort(), ctx.queryParam("source"), ctx.queryParam("id"));
        MendForm form = MendForm.sent(sent(ctx), target);
        if (!forms.tokenFits(ctx)) {
            String problem = "This form was opened before the server last started, or not here.";
            Fault fault = new Fault("", problem, "Nothing is recorded yet: check it and send it again.");
            show(ctx, 403, asked, target, form, List.of(fault));
            return;
        }
        boolean sentBefore = MendTarget.of(asked.cohort(), Correction.SOURCE, form.correction())
                .isPresent();
        List<Fault> faults = new ArrayList<>(sentBefore ? List.of() : stale(form, target));
        Correction correction = Correction.of(form, target, records.reader());
        faults.addAll(correction.faults());
        if (faults.isEmpty()) {
            Intake intake = posting.of(ctx, () -> records.take(List.of(correction.event()), false));
            if (intake.refused().isEmpty()) {
                done(ctx, asked.cohort(), target, form, intake.accepted() == 0);
                return;
            }
            faults.add(new Fault(
                    "",
                    "This form was sent before, with other words; that correction is recorded.",
                    "To correct the event once more, look at it again and send this form anew."));
            form = form.again(target, records.clock().instant());
        }
        show(ctx, 422, asked, target, form, faults);
    }

    private void done(Context ctx, Cohort before, MendTarget target, MendForm form, boolean already) {
        MendedPage page = MendedPage.of(asked(ctx), before, records.definitions(), target, form.correction(), already);
        ctx.header("Cache-Control", "no-store");
        Pages.show(ctx, "mended.jte", page);
    }

    private void show(Context ctx, int status, Asked asked, MendTarget target, MendForm form, List<Fault> faults) {
        ctx.status(status);
        ctx.header("Cache-Control", "no-store");
        Pages.show(
                ctx,
                "mend.jte",
                MendPage.of(
                        asked,
                        target,
                        form,
                        forms.token(),
                        faults,
                        records.definitions().conditions()));
    }

    private Asked asked(Context ctx) {
        Asked asked = Asked.of(ctx, records, PARAMETERS);
        if (asked.selection().asOf() != null) {
            String what = ctx.method() == HandlerType.POST ? "Nothing was recorded" : "Only what is known now";
            throw new Problem(
                    409,
                    what,
                    "A past day shows what was known then, and that cannot be mended. Take as-of out of the address to"
                            + " mend what is known now.",
                    List.of());
        }
        return asked;
    }

    private static MendTarget target(Cohort cohort, String source, String id) {
        Optional<MendTarget> target =
                source == null || id == null ? Optional.empty() : MendTarget.of(cohort, source, id);
        return target.orElseThrow(() -> Problem.notFound(
                "No animal and no pen has an event of this source and id. Open one from its calf or from the marked"
                        + " events on the records page."));
    }

    /** What has happened to the event since the form was opened. */
    private List<Fault> stale(MendForm form, MendTarget target) {
        if (target.fallenBy() != null) {
            return List.of(new Fault(
                    "", "The event was withdrawn already.", "To have it back, withdraw the correction that did it."));
        }
        boolean same = form.seen().equals(target.event().recorded().toString());
        boolean untouched = form.action().equals(MendForm.CORRECT)
                && form.says(MendForm.fresh(target, records.clock().instant()));
        if (same && untouched) {
            return List.of(new Fault("", "Nothing is changed.", "Change what is wrong, or withdraw the event."));
        }
        return same
                ? List.of()
                : List.of(new Fault(
                        "",
                        "Somebody corrected this event after you had opened it; how it stands now is said above.",
                        "Open it again if it is still wrong."));
    }

    private static Map<String, String> sent(Context ctx) {
        Map<String, String> sent = new LinkedHashMap<>();
        ctx.formParamMap().forEach((name, values) -> sent.put(name, values.get(0)));
        return sent;
    }
}
