package wisp.site;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.Set;
import wisp.indicator.Selection;
import wisp.question.PensAnswer;
import wisp.question.PensQuestion;
import wisp.records.Records;

/** The addresses of the pens' page, its picture and its table. */
final class PensPages {
    private final Records records;
    private final PensQuestion question;
    private final Remembered<Selection, PensAnswer> answers = new Remembered<>();

    PensPages(Records records) {
        this.records = records;
        this.question = new PensQuestion(records.definitions(), records.figures());
    }

    void addTo(JavalinConfig config) {
        config.routes.get(PensLinks.CALVES, this::calves);
        config.routes.get("/pens.png", this::png);
        config.routes.get("/pens.csv", this::csv);
    }

    /** {@code GET /pens}. */
    String page(Address address) {
        Asked asked = Asked.of(address, records, Set.of());
        return Pages.rendered("pens.jte", PensPage.of(asked, answer(asked)));
    }

    private void calves(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of(PensLinks.LIST, Leaf.PARAMETER));
        String list = ctx.queryParam(PensLinks.LIST);
        String leaf = ctx.queryParam(Leaf.PARAMETER);
        Pages.show(ctx, "pens-calves.jte", PensCalvesPage.of(asked, answer(asked), list, leaf));
    }

    private void png(Context ctx) {
        Asked asked = asked(ctx);
        Pages.png(ctx, PensPictures.funnel(answer(asked), PensPage.links(asked)));
    }

    private void csv(Context ctx) {
        ctx.contentType("text/csv; charset=utf-8");
        ctx.header("Content-Disposition", "inline; filename=\"pens.csv\"");
        ctx.result(PensCsv.of(answer(asked(ctx))));
    }

    private Asked asked(Context ctx) {
        return Asked.of(ctx, records, Set.of());
    }

    private PensAnswer answer(Asked asked) {
        return answers.of(
                asked.selection().by(null), asked.cohort(), () -> question.of(asked.cohort(), asked.selection()));
    }
}
