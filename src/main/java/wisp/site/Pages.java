package wisp.site;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Set;
import wisp.chart.Picture;
import wisp.chart.XChartPainter;
import wisp.event.Fault;
import wisp.indicator.Estimate;
import wisp.records.Records;

/** The pages' addresses. Every page works without JavaScript. */
final class Pages {
    private static final int PNG_WIDTH = 720;
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(ContentType.Html);

    private final Records records;

    Pages(Records records) {
        this.records = records;
    }

    void addTo(JavalinConfig config) {
        CsvLists lists = new CsvLists(records);
        SeasonPages season = new SeasonPages(records);
        config.routes.get("/", season::page);
        config.routes.get("/season", season::page);
        config.routes.get("/season.png", season::png);
        config.routes.get("/season.csv", season::csv);
        config.routes.get("/season/calves", season::calves);
        config.routes.get("/season/weeks", season::weeks);
        config.routes.get("/figures/{id}.png", this::figurePng);
        config.routes.get("/figures/{id}", this::figure);
        config.routes.get("/calves", this::calves);
        config.routes.get("/calves/{key}", this::calf);
        config.routes.get("/calves.csv", lists::calves);
        config.routes.get("/records", this::records);
        config.routes.get("/records.csv", lists::marks);
        config.routes.get("/records/heads.csv", lists::heads);
        new Mending(records).addTo(config);
        new NavelsPages(records).addTo(config);
        new SamplesPages(records).addTo(config);
    }

    private void figure(Context ctx) {
        Asked asked = Asked.of(ctx, records, CalvesBehind.PARAMETERS);
        show(ctx, "figure.jte", FigurePage.of(ctx, records, asked));
    }

    private void figurePng(Context ctx) {
        Asked asked = Asked.of(ctx, records, CalvesBehind.PARAMETERS);
        Estimate whole = records.figures()
                .of(FiguresApi.indicator(records, ctx.pathParam("id")), asked.cohort(), asked.selection());
        if (asked.selection().by() == null) {
            throw Problem.parameters(List.of(
                    new Fault("by", "A figure that is not divided has no picture.", "Add by=pen or another stratum.")));
        }
        png(ctx, StrataPicture.of(whole, asked.selection().by(), new Links(asked.parameters())));
    }

    private void calves(Context ctx) {
        show(ctx, "calves.jte", CalvesPage.of(Asked.of(ctx, records, Set.of("find")), ctx.queryParam("find")));
    }

    private void calf(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        int row = asked.cohort().rowOf(ctx.pathParam("key"));
        if (row < 0) {
            boolean later = asked.selection().asOf() != null && records.cohort().rowOf(ctx.pathParam("key")) >= 0;
            throw Problem.notFound(
                    later
                            ? "On the day asked for, nothing was on record of " + ctx.pathParam("key")
                                    + " yet. Take as-of out of the address to see it as it is known now."
                            : "No animal has the key " + ctx.pathParam("key") + ".");
        }
        show(ctx, "calf.jte", CalfPage.of(asked, records, row));
    }

    private void records(Context ctx) {
        show(ctx, "records.jte", RecordsPage.of(Asked.of(ctx, records, Set.of()), records));
    }

    static void png(Context ctx, Picture picture) {
        int height = XChartPainter.naturalHeight(picture, PNG_WIDTH);
        ctx.contentType("image/png").result(new XChartPainter(PNG_WIDTH, height, 2).paint(picture));
    }

    static void problem(Context ctx, Problem problem) {
        show(
                ctx,
                "error.jte",
                new ErrorPage(problem.status(), problem.title(), problem.getMessage(), problem.faults()));
    }

    static void show(Context ctx, String template, Object page) {
        html(ctx, rendered(template, page));
    }

    static String rendered(String template, Object page) {
        StringOutput html = new StringOutput();
        TEMPLATES.render(template, page, html);
        return html.toString();
    }

    static void html(Context ctx, String html) {
        ctx.header(
                "Content-Security-Policy",
                "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:;"
                        + " form-action 'self'; frame-ancestors 'none'; base-uri 'none'");
        ctx.html(html);
    }
}
