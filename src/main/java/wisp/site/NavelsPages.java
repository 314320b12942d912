package wisp.site;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tech.tablesaw.api.Table;
import wisp.event.Fault;
import wisp.indicator.Selection;
import wisp.question.navels.NavelStrata;
import wisp.question.navels.NavelsAnswer;
import wisp.question.navels.NavelsQuestion;
import wisp.records.Records;

/** The addresses of the navels question: the page, its pictures as PNG, its table as CSV. */
final class NavelsPages {
    private final Records records;
    private final NavelsQuestion question;
    private final Remembered<Selection, NavelsAnswer> answers = new Remembered<>();

    NavelsPages(Records records) {
        this.records = records;
        this.question = new NavelsQuestion(records.definitions(), records.figures());
    }

    void addTo(JavalinConfig config) {
        config.routes.get("/navels/calves", this::calves);
        config.routes.get("/navels.csv", ctx -> csv(ctx, "navels.csv", NavelsTable.of(answer(asked(ctx)))));
        config.routes.get(
                "/navels-parts.csv",
                ctx -> csv(
                        ctx,
                        "navels-parts.csv",
                        NavelPartsTable.of(answer(asked(ctx)).strata())));
        config.routes.get("/navels-parts.png", this::partsPng);
        config.routes.get("/navels.png", ctx -> Pages.png(ctx, pictures(ctx).classes()));
        config.routes.get(
                "/navels-late.png", ctx -> Pages.png(ctx, pictures(ctx).forest()));
        config.routes.get(
                "/navels-dose.png", ctx -> Pages.png(ctx, pictures(ctx).dose()));
    }

    private void partsPng(Context ctx) {
        Asked asked = asked(ctx);
        NavelLinks links = new NavelLinks(new Links(asked.parameters()));
        NavelStrata strata = answer(asked).strata();
        if (strata.why() != null) {
            throw Problem.parameters(List.of(new Fault("by", strata.why(), "Add by=pen or another stratum.")));
        }
        Pages.png(ctx, NavelPartsPicture.of(strata, links));
    }

    /** {@code GET /navels}. */
    String page(Address address) {
        Asked asked = Asked.of(address, records, Set.of(Leaf.PARAMETER));
        String leaf = address.parameter(Leaf.PARAMETER);
        return Pages.rendered("navels.jte", NavelsPage.of(asked, answer(asked), leaf));
    }

    private void calves(Context ctx) {
        Set<String> others = new HashSet<>(NavelCalvesAsked.PARAMETERS);
        others.add(Leaf.PARAMETER);
        Asked asked = Asked.of(ctx, records, others);
        String leaf = ctx.queryParam(Leaf.PARAMETER);
        Pages.show(ctx, "navel-calves.jte", NavelCalvesPage.of(asked, NavelCalvesAsked.of(ctx), answer(asked), leaf));
    }

    private Asked asked(Context ctx) {
        return Asked.of(ctx, records, Set.of());
    }

    private static void csv(Context ctx, String name, Table table) {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        table.write().csv(text);
        ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .result(text.toString(StandardCharsets.UTF_8));
    }

    private NavelsPictures pictures(Context ctx) {
        Asked asked = asked(ctx);
        return new NavelsPictures(answer(asked), new NavelLinks(new Links(asked.parameters())));
    }

    private NavelsAnswer answer(Asked asked) {
        return answers.of(asked.selection(), asked.cohort(), () -> question.of(asked.cohort(), asked.selection()));
    }
}
