package wisp.site;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.Set;
import wisp.question.PensAnswer;
import wisp.records.Records;

/** The addresses of the pens' page, its picture and its table. */
final class PensPages {
    private final Records records;

    PensPages(Records records) {
        this.records = records;
    }

    void addTo(JavalinConfig config) {
        config.routes.get("/pens", this::page);
        config.routes.get("/pens.png", this::png);
        config.routes.get("/pens.csv", this::csv);
    }

    private void page(Context ctx) {
        Pages.show(ctx, "pens.jte", PensPage.of(records, Asked.of(ctx, records, Set.of())));
    }

    private void png(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        Pages.png(ctx, PensPictures.funnel(PensPage.answer(records, asked), PensPage.links(asked)));
    }

    private void csv(Context ctx) {
        PensAnswer answer = PensPage.answer(records, Asked.of(ctx, records, Set.of()));
        ctx.contentType("text/csv; charset=utf-8").result(PensCsv.of(answer));
    }
}
