package wisp.site;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.io.StringWriter;
import java.util.List;
import java.util.Set;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import wisp.due.Breach;
import wisp.due.Due;
import wisp.due.Proof;
import wisp.due.ProofCalf;
import wisp.records.Records;

/** The addresses of what can be shown of each limit: the list of limits, one limit, its picture and its calves. */
final class ProofPages {
    private final Records records;
    private final Shelf shelf;
    private final Due due;

    ProofPages(Records records, Shelf shelf) {
        this.records = records;
        this.shelf = shelf;
        this.due = new Due(records.definitions());
    }

    void addTo(JavalinConfig config) {
        config.routes.get("/proof", ctx -> Pages.html(ctx, shelf.page(ctx, this::all)));
        config.routes.get("/proof/{limit}.png", this::png);
        config.routes.get("/proof/{limit}.csv", this::csv);
        config.routes.get("/proof/{limit}", ctx -> Pages.html(ctx, shelf.page(ctx, this::one)));
    }

    private String all(Address address) {
        return Pages.rendered("proofs.jte", ProofsPage.of(Asked.of(address, records, Set.of()), records, due));
    }

    private String one(Address address) {
        Asked asked = Asked.of(address, records, Set.of(ProofList.PARAMETER, Leaf.PARAMETER));
        Proof proof = proof(address.name(), asked);
        String part = address.parameter(ProofList.PARAMETER);
        return Pages.rendered("proof.jte", ProofPage.of(asked, proof, part, address.parameter(Leaf.PARAMETER)));
    }

    private void png(Context ctx) {
        Proof proof = proof(ctx.pathParam("limit"), Asked.of(ctx, records, Set.of()));
        if (proof.curve() == null) {
            throw Problem.notFound("There is no picture: no calf's time is known.");
        }
        Pages.png(ctx, ProofPicture.of(proof));
    }

    /** One line a calf, with both clocks. */
    private void csv(Context ctx) {
        Proof proof = proof(ctx.pathParam("limit"), Asked.of(ctx, records, Set.of()));
        List<String> names = List.of("calf", "counts_as", "limit_ended", "done", "recorded", "note");
        Table table = Table.create(proof.id());
        names.forEach(name -> table.addColumns(StringColumn.create(name)));
        for (ProofCalf calf : proof.calves()) {
            var zone = calf.life().farm().zone();
            table.stringColumn("calf").append(calf.life().key());
            table.stringColumn("counts_as").append(ProofList.of(calf.part()).title());
            table.stringColumn("limit_ended")
                    .append(
                            calf.span().closes() == null
                                    ? ""
                                    : CalfJson.time(calf.span().closes(), zone));
            table.stringColumn("done")
                    .append(calf.done() == null ? "" : CalfJson.time(calf.done().time(), zone));
            table.stringColumn("recorded")
                    .append(calf.done() == null ? "" : CalfJson.time(calf.done().recorded(), zone));
            table.stringColumn("note").append(note(proof, calf));
        }
        StringWriter text = new StringWriter();
        table.write().csv(text);
        ctx.contentType("text/csv; charset=utf-8");
        ctx.header("Content-Disposition", "attachment; filename=\"" + proof.id() + ".csv\"");
        ctx.result(text.toString());
    }

    private static String note(Proof proof, ProofCalf calf) {
        return proof.outside().stream()
                .filter(breach -> breach.row() == calf.row())
                .map(Breach::words)
                .findFirst()
                .orElse(calf.enteredLate() ? "Recorded after the limit had passed." : "");
    }

    private Proof proof(String id, Asked asked) {
        return Proof.of(due, records.definitions(), asked.cohort(), asked.selection(), id)
                .orElseThrow(() -> Problem.notFound(
                        "There is no limit called " + id + ". See /proof for those that" + " there are."));
    }
}
