package wisp.site;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import tech.tablesaw.api.LongColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import wisp.event.Fault;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.records.Intake;
import wisp.records.Records;
import wisp.sample.SampleChain;
import wisp.sample.TagIndex;
import wisp.sample.TissueSample;
import wisp.sample.UnmatchedSample;

/** The addresses of the samples: page, CSV, and the form that says whose an unmatched result is. */
final class SamplesPages {
    private static final Set<String> PARAMETERS = Set.of("matched", Leaf.PARAMETER);

    private final Records records;
    private final OwnForms forms = new OwnForms();

    SamplesPages(Records records) {
        this.records = records;
    }

    void addTo(JavalinConfig config) {
        config.routes.get("/samples", this::page);
        config.routes.get("/samples.csv", this::csv);
        config.routes.post("/samples/match", this::match);
    }

    private void page(Context ctx) {
        show(ctx, 200, asked(ctx), List.of());
    }

    private void show(Context ctx, int status, Asked asked, List<Fault> faults) {
        ctx.status(status);
        ctx.header("Cache-Control", "no-store");
        String leaf = ctx.queryParam(Leaf.PARAMETER);
        Pages.show(
                ctx,
                "samples.jte",
                SamplesPage.of(asked, records, ctx.queryParam("matched"), leaf, forms.token(), faults));
    }

    private Asked asked(Context ctx) {
        return Asked.of(ctx, records, PARAMETERS);
    }

    /** One at a time, so that of two people who match one result the second is told. */
    private synchronized void match(Context ctx) {
        forms.sameOrigin(ctx);
        Asked asked = asked(ctx);
        if (asked.selection().asOf() != null) {
            throw new Problem(409, "Nothing was recorded", "Only what is known now can be matched.", List.of());
        }
        if (!forms.tokenFits(ctx)) {
            String problem = "This form was opened before the server last started, or not here.";
            show(ctx, 403, asked, List.of(new Fault("", problem, "Nothing is recorded: send it again.")));
            return;
        }
        String form = sent(ctx, "form");
        // two forms, so that the Enter key in the field never presses the button of another calf
        String calf = sent(ctx, "other").isEmpty() ? sent(ctx, "calf") : sent(ctx, "other");
        String sentBefore = calfOf(asked, form + ".sample");
        if (sentBefore != null) {
            done(ctx, asked, sentBefore);
            return;
        }
        SampleMatch match = SampleMatch.of(
                asked.cohort(),
                records.reader(),
                form,
                sent(ctx, "opened"),
                sent(ctx, "source"),
                sent(ctx, "id"),
                calf);
        if (!match.faults().isEmpty()) {
            show(ctx, 422, asked, match.faults());
            return;
        }
        Intake intake = records.take(match.events(), false);
        if (!intake.refused().isEmpty()) {
            show(
                    ctx,
                    422,
                    asked,
                    intake.refused().stream().map(Intake.Refused::fault).toList());
            return;
        }
        done(ctx, asked, match.calf());
    }

    private static void done(Context ctx, Asked asked, String calf) {
        ctx.redirect(new Links(asked.parameters()).to("/samples", Map.of("matched", calf)), HttpStatus.SEE_OTHER);
    }

    /** The calf that this very form was sent for already; null where it was not. */
    private static String calfOf(Asked asked, String id) {
        return MendTarget.of(asked.cohort(), Correction.SOURCE, id)
                .map(MendTarget::subject)
                .orElse(null);
    }

    private static String sent(Context ctx, String field) {
        String value = ctx.formParam(field);
        return value == null ? "" : value.strip();
    }

    /** {@code GET /samples.csv}: every sample of the calves asked for, and what matches no calf. */
    private void csv(Context ctx) {
        Asked asked = asked(ctx);
        StringColumn[] texts = Stream.of(
                        "calf",
                        "tag",
                        "tag_number",
                        "taken",
                        "sent",
                        "result_time",
                        "result",
                        "laboratory",
                        "test",
                        "state")
                .map(StringColumn::create)
                .toArray(StringColumn[]::new);
        LongColumn days = LongColumn.create("days_waiting");
        for (int row : asked.selection().calves(asked.cohort())) {
            Life life = asked.cohort().lives().get(row);
            for (TissueSample sample : SampleChain.of(life).samples()) {
                line(texts, line(life, sample));
                days.append(sample.daysWaiting(
                        SamplesPage.moment(asked), life.farm().zone()));
            }
        }
        for (UnmatchedSample one : UnmatchedSample.of(asked.cohort(), new TagIndex(asked.cohort()))) {
            line(texts, unmatched(one, asked));
            days.appendMissing();
        }
        CsvLists.give(ctx, "samples", Table.create("samples").addColumns(texts).addColumns(days));
    }

    private static void line(StringColumn[] columns, String... cells) {
        for (int i = 0; i < cells.length; i++) {
            columns[i].append(cells[i]);
        }
    }

    private static String[] line(Life life, TissueSample sample) {
        return new String[] {
            life.key(),
            CalfName.of(life).tagged() ? CalfName.of(life).shown() : "",
            sample.tagNumber(),
            time(sample.taken(), life),
            time(sample.sent(), life),
            time(sample.result(), life),
            sample.result() == null ? "" : sample.state().word(),
            sample.laboratory(),
            sample.test(),
            sample.state().word()
        };
    }

    private static String[] unmatched(UnmatchedSample one, Asked asked) {
        TissueSample alone = TissueSample.of(one.event());
        String time =
                CalfJson.time(one.event().time(), asked.cohort().farm().latest().zone());
        return new String[] {
            "",
            "",
            one.number(),
            alone.taken() == null ? "" : time,
            alone.sent() == null ? "" : time,
            alone.result() == null ? "" : time,
            alone.result() == null ? "" : alone.state().word(),
            alone.laboratory(),
            alone.test(),
            "unmatched"
        };
    }

    private static String time(LifeEvent event, Life life) {
        return event == null ? "" : CalfJson.time(event.time(), life.farm().zone());
    }
}
