package wisp.site;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import wisp.question.navels.NavelsAnswer;
import wisp.question.navels.NavelsQuestion;
import wisp.records.Records;

/** The addresses of the navels question: the page, its pictures as PNG, its table as CSV. */
final class NavelsPages {
    private final Records records;
    private final NavelsQuestion question;

    NavelsPages(Records records) {
        this.records = records;
        this.question = new NavelsQuestion(records.definitions());
    }

    void addTo(JavalinConfig config) {
        config.routes.get("/navels", this::page);
        config.routes.get("/navels.csv", this::csv);
        config.routes.get("/navels.png", ctx -> Pages.png(ctx, pictures(ctx).classes()));
        config.routes.get(
                "/navels-late.png", ctx -> Pages.png(ctx, pictures(ctx).forest()));
        config.routes.get(
                "/navels-dose.png", ctx -> Pages.png(ctx, pictures(ctx).dose()));
    }

    private void page(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        Pages.show(ctx, "navels.jte", NavelsPage.of(asked, answer(asked)));
    }

    private void csv(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        NavelsTable.of(answer(asked)).write().csv(text);
        ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"navels.csv\"")
                .result(text.toString(StandardCharsets.UTF_8));
    }

    private NavelsPictures pictures(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        return new NavelsPictures(answer(asked), new NavelLinks(new Links(asked.parameters())));
    }

    private NavelsAnswer answer(Asked asked) {
        return question.of(asked.cohort(), asked.selection());
    }
}
