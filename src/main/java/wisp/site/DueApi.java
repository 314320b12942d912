package wisp.site;

import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import wisp.due.Due;
import wisp.due.DueJson;
import wisp.due.DueList;
import wisp.due.Proof;
import wisp.due.ProofJson;
import wisp.event.Fault;
import wisp.records.Records;

/** What is due, as JSON. */
final class DueApi {
    private final Records records;
    private final Due due;

    DueApi(Records records) {
        this.records = records;
        this.due = new Due(records.definitions());
    }

    /** {@code GET /api/v1/due}. */
    void list(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of("on"));
        DueList list = DueList.of(due, asked.cohort(), asked.selection(), at(ctx, records, asked));
        ctx.json(DueJson.of(list));
    }

    /** {@code GET /api/v1/proof/{limit}}: a figure inside a limit, or a step that is due, by its id. */
    void proof(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        String id = ctx.pathParam("limit");
        Proof proof = Proof.of(due, records.definitions(), asked.cohort(), asked.selection(), id)
                .orElseThrow(() -> Problem.notFound("There is no limit " + id + " to prove; those that there are: "
                        + String.join(", ", Proof.ids(due, records.definitions(), asked.cohort())) + "."));
        ctx.json(ProofJson.of(proof));
    }

    /**
     * The moment that is asked for: the start of the day {@code on} by the farm's clocks, else that of {@code as-of},
     * else this one.
     */
    static Instant at(Context ctx, Records records, Asked asked) {
        String on = ctx.queryParam("on");
        if (on == null || on.isBlank()) {
            Instant asOf = asked.selection().asOf();
            return asOf == null ? records.clock().instant() : asOf;
        }
        try {
            return DueList.morning(LocalDate.parse(on.strip()), asked.cohort());
        } catch (DateTimeException wrong) {
            throw Problem.parameters(
                    List.of(new Fault("on", "\"" + on + "\" is not a date.", "Write it as 2026-03-31.")));
        }
    }
}
