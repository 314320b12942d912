package wisp.site;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import wisp.chart.Picture;
import wisp.chart.XChartPainter;
import wisp.cohort.Cohort;
import wisp.event.Fault;
import wisp.indicator.Estimate;
import wisp.indicator.Indicator;
import wisp.records.Records;

/** The pages' addresses. Every page works without JavaScript. */
final class Pages {
    private static final int PNG_WIDTH = 720;
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(ContentType.Html);

    private final Records records;
    private final Shelf shelf;
    private final Posting posting;
    private final Map<String, Function<Address, String>> front = new LinkedHashMap<>();

    Pages(Records records, Shelf shelf, Posting posting) {
        this.records = records;
        this.shelf = shelf;
        this.posting = posting;
    }

    void addTo(JavalinConfig config) {
        CsvLists lists = new CsvLists(records);
        SeasonPages season = new SeasonPages(records);
        NavelsPages navels = new NavelsPages(records);
        PensPages pens = new PensPages(records);
        // before the figures' pages: the first address that fits is taken
        config.routes.get("/figures/{id}.png", this::figurePng);
        front(config, "/", season::page);
        kept(config, "/season", season::page);
        front(config, "/navels", navels::page);
        front(config, "/pens", pens::page);
        front(config, "/calves", this::calves);
        front(config, "/records", this::records);
        kept(config, Completeness.CALVES, this::recorded);
        front(config, "/season/weeks", season::weeks);
        kept(config, "/season/calves", season::calves);
        kept(config, "/figures/{id}", this::figure);
        // what is due and what is under withdrawal hang on the clock
        config.routes.get(
                "/calves/{key}",
                ctx -> html(ctx, shelf.page(ctx, records.clock().instant(), this::calf)));
        config.routes.get("/season.png", season::png);
        config.routes.get("/season.csv", season::csv);
        config.routes.get("/calves.csv", lists::calves);
        config.routes.get("/records.csv", lists::marks);
        config.routes.get("/records/heads.csv", lists::heads);
        new Mending(records, posting).addTo(config);
        navels.addTo(config);
        pens.addTo(config);
        new SamplesPages(records).addTo(config);
    }

    /** Makes each of the pages that many ask for, and the page of each figure. */
    List<Runnable> front() {
        List<Runnable> pages = new ArrayList<>();
        front.forEach((path, maker) -> pages.add(() -> shelf.prepare(Address.of(path, ""), maker)));
        for (Indicator indicator : records.definitions().indicators()) {
            pages.add(() -> shelf.prepare(Address.of("/figures/", indicator.id()), this::figure));
        }
        return pages;
    }

    /** An address of each kind of page, narrowed and divided ones among them. */
    List<String> kinds() {
        Cohort cohort = records.cohort();
        List<String> kinds = new ArrayList<>(front.keySet());
        kinds.addAll(List.of(
                "/due",
                "/medicines",
                "/samples",
                "/proof",
                "/season?by=pen",
                "/season?sex=female",
                "/navels?by=sex",
                "/pens?sex=male",
                "/figures/preweaning-mortality?by=pen",
                "/season?as-of="
                        + LocalDate.ofInstant(
                                        cohort.cut(), cohort.farm().latest().zone())
                                .minusDays(1)));
        if (!cohort.lives().isEmpty()) {
            kinds.add(
                    Links.calfPath(cohort.lives().get(cohort.lives().size() - 1).key()));
        }
        return kinds;
    }

    private void front(JavalinConfig config, String path, Function<Address, String> maker) {
        front.put(path, maker);
        kept(config, path, maker);
    }

    /** A page that hangs on its address and the log alone. */
    private void kept(JavalinConfig config, String path, Function<Address, String> maker) {
        config.routes.get(path, ctx -> html(ctx, shelf.page(ctx, maker)));
    }

    private String figure(Address address) {
        Set<String> others = new HashSet<>(CalvesBehind.PARAMETERS);
        others.add(Leaf.PARAMETER);
        Asked asked = Asked.of(address, records, others);
        return rendered("figure.jte", FigurePage.of(address, records, asked));
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

    private String calves(Address address) {
        Asked asked = Asked.of(address, records, Set.of("find", Leaf.PARAMETER));
        return rendered(
                "calves.jte", CalvesPage.of(asked, address.parameter("find"), address.parameter(Leaf.PARAMETER)));
    }

    private String calf(Address address) {
        Asked asked = Asked.of(address, records, Set.of());
        String key = address.name();
        int row = asked.cohort().rowOf(key);
        if (row < 0) {
            boolean later = asked.selection().asOf() != null && records.cohort().rowOf(key) >= 0;
            throw Problem.notFound(
                    later
                            ? "On the day asked for, nothing was on record of " + key
                                    + " yet. Take as-of out of the address to see it as it is known now."
                            : "No animal has the key " + key + ".");
        }
        return rendered("calf.jte", CalfPage.of(asked, records, row));
    }

    private String recorded(Address address) {
        Set<String> others = Set.of(Completeness.THING, Completeness.RECORDED, Leaf.PARAMETER);
        Asked asked = Asked.of(address, records, others);
        return rendered("calf-list.jte", Completeness.calves(asked, address));
    }

    private String records(Address address) {
        return rendered("records.jte", RecordsPage.of(Asked.of(address, records, Set.of()), records));
    }

    static void png(Context ctx, Picture picture) {
        int height = XChartPainter.naturalHeight(picture, PNG_WIDTH);
        ctx.contentType("image/png").result(new XChartPainter(PNG_WIDTH, height, 2).paint(picture));
    }

    static void problem(Context ctx, Problem problem, String alert) {
        show(
                ctx,
                "error.jte",
                new ErrorPage(problem.status(), problem.title(), problem.getMessage(), problem.faults(), alert));
    }

    static void show(Context ctx, String template, Object page) {
        html(ctx, rendered(template, page).getBytes(StandardCharsets.UTF_8));
    }

    static String rendered(String template, Object page) {
        StringOutput html = new StringOutput();
        TEMPLATES.render(template, page, html);
        return BoundUnits.in(html.toString());
    }

    static void html(Context ctx, byte[] html) {
        ctx.header(
                "Content-Security-Policy",
                "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:;"
                        + " form-action 'self'; frame-ancestors 'none'; base-uri 'none'");
        ctx.header("Cache-Control", "no-cache");
        ctx.contentType("text/html; charset=utf-8").result(html);
    }
}
