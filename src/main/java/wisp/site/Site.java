package wisp.site;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.staticfiles.Location;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.event.Level;
import wisp.calendar.CalendarAddresses;
import wisp.log.LogFailure;
import wisp.records.Intake;
import wisp.records.Records;

/** The server: every address that there is, and what each error looks like. */
public final class Site implements AutoCloseable {
    private static final long LARGEST_BODY = 64L * 1024 * 1024;
    private static final int MISDIRECTED = 421;
    private static final long STOP_WITHIN_MS = 15_000;
    private static final Logger LOGGER = LoggerFactory.getLogger(Site.class);

    private final Records records;
    private final OwnHosts hosts;
    private final CalendarAddresses calendars;
    private final Shelf shelf;
    private final LiveFeed live;
    private final Meters meters;
    private final GracefulHandler graceful = new GracefulHandler();
    private final JustPosted justPosted = new JustPosted();
    private final Beforehand beforehand;
    private final Pages pages;
    private final Javalin app;
    private final String host;
    private Rehearsal rehearsal;

    private Site(Records records, SiteSettings settings) {
        this.records = records;
        this.host = settings.host();
        this.hosts = new OwnHosts(settings.host(), settings.names());
        this.calendars = settings.calendars();
        this.live = new LiveFeed(records);
        this.meters = new Meters(records, live::clients, this::underWay);
        this.shelf = new Shelf(records.log(), justPosted);
        this.pages = new Pages(records, shelf, this::post);
        this.beforehand = new Beforehand(records, shelf);
        this.app = Javalin.create(this::configure);
    }

    /**
     * Starts serving.
     *
     * @param port 0 takes any free port
     */
    public static Site start(Records records, String host, int port) {
        return start(records, new SiteSettings(host, port, Set.of(), new CalendarAddresses(null)));
    }

    /** Starts serving. */
    public static Site start(Records records, SiteSettings settings) {
        Site site = new Site(records, settings);
        site.app.start(settings.host(), settings.port());
        LOGGER.atInfo()
                .addKeyValue("address", settings.host())
                .addKeyValue("port", site.port())
                .addKeyValue("sequence", records.log().last())
                .log("serving");
        site.beforehand.start(site.pages.front());
        return site;
    }

    /** The port in use. */
    public int port() {
        return app.port();
    }

    /** Has each kind of page made a few times, so that the first visitor waits no longer than the next. */
    public void rehearse() {
        rehearsal = new Rehearsal(beforehand, host, port(), pages.kinds());
        rehearsal.start();
    }

    /** How many requests are being answered. */
    long underWay() {
        return graceful.getCurrentRequestCount();
    }

    /** Takes no new requests, finishes those that it has, and stops. */
    @Override
    public void close() {
        LOGGER.info("stopping");
        if (rehearsal != null) {
            rehearsal.stop();
        }
        live.stop();
        app.stop();
        beforehand.stop();
        LOGGER.info("stopped");
    }

    private void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.jetty.modifyServer(server -> {
            server.setStopTimeout(STOP_WITHIN_MS);
            server.insertHandler(graceful);
        });
        config.http.maxRequestSize = LARGEST_BODY;
        config.http.prefer405over404 = true;
        config.jsonMapper(new JacksonText());
        config.staticFiles.add(files -> {
            files.hostedPath = "/static";
            files.directory = "/web";
            files.location = Location.CLASSPATH;
            files.headers.put("Cache-Control", "max-age=3600");
        });
        config.requestLogger.http(this::answered);
        config.routes.before(hosts::check);
        config.routes.before(Site::guard);
        api(config);
        pages.addTo(config);
        new MedicinesPages(records).addTo(config);
        new CalendarPages(records, calendars).addTo(config);
        new ProofPages(records, shelf).addTo(config);
        new DuePages(records).addTo(config);
        errors(config);
    }

    private void answered(Context ctx, Float milliseconds) {
        meters.answered(ctx, milliseconds);
        int status = ctx.statusCode();
        LOGGER.atLevel(status >= 500 ? Level.WARN : status >= 400 ? Level.INFO : Level.DEBUG)
                .addKeyValue("method", ctx.method())
                .addKeyValue("route", Meters.route(ctx))
                .addKeyValue("status", status)
                .addKeyValue("ms", Math.round(milliseconds))
                .log("answered");
    }

    private static void guard(Context ctx) {
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "no-referrer");
    }

    /** What is shown afterwards may not lack it in the poster's eyes, and everybody is told. */
    private Intake post(Context ctx, Supplier<Intake> taking) {
        Intake intake = justPosted.through(JustPosted.who(ctx), taking);
        live.wake();
        beforehand.wake();
        return intake;
    }

    private void api(JavalinConfig config) {
        EventsApi events = new EventsApi(records, this::post, meters);
        FiguresApi figures = new FiguresApi(records);
        CalvesApi calves = new CalvesApi(records);
        Health health = new Health(records);
        config.routes.post("/api/v1/events", events::take);
        config.routes.get("/api/v1/events", events::give);
        config.routes.beforeMatched("/api/v1/events/live", LiveFeed::ask);
        config.routes.sse("/api/v1/events/live", live::join);
        config.routes.get("/api/v1/figures", figures::all);
        config.routes.get("/api/v1/figures/{id}", figures::one);
        config.routes.get("/api/v1/calves", calves::list);
        config.routes.get("/api/v1/calves/{key}", calves::one);
        config.routes.get("/api/v1/pens", new PensApi(records)::list);
        DueApi due = new DueApi(records);
        config.routes.get("/api/v1/due", due::list);
        config.routes.get("/api/v1/proof/{limit}", due::proof);
        config.routes.get("/api/v1/questions/{name}", new QuestionsApi(records)::answer);
        config.routes.get("/api/v1/log/heads", new HeadsApi(records)::list);
        config.routes.get("/api/v1/health", health::ready);
        config.routes.get("/health", health::ready);
        config.routes.get("/health/ready", health::ready);
        config.routes.get("/health/live", health::live);
        config.routes.get("/metrics", meters::show);
        config.routes.get("/api/v1/openapi.json", OpenApi::show);
    }

    private void errors(JavalinConfig config) {
        config.routes.exception(Problem.class, this::show);
        config.routes.exception(HttpResponseException.class, (e, ctx) -> show(answer(e, ctx), ctx));
        config.routes.exception(LogFailure.class, (e, ctx) -> {
            LOGGER.error("The log failed: {}", e.getMessage());
            show(new Problem(503, "The log cannot be used", e.getMessage(), List.of()), ctx);
        });
        config.routes.exception(Exception.class, (e, ctx) -> {
            LOGGER.error("{} {} failed", ctx.method(), Meters.route(ctx), e);
            show(new Problem(500, "Wisp made a mistake", "The server's log has the details.", List.of()), ctx);
        });
    }

    private static Problem answer(HttpResponseException refused, Context ctx) {
        return refused.getStatus() == 404
                ? Problem.notFound("There is nothing at " + ctx.path() + ".")
                : new Problem(
                        refused.getStatus(), "The request cannot be answered", refused.getMessage() + ".", List.of());
    }

    private void show(Problem problem, Context ctx) {
        ctx.status(problem.status());
        if (ctx.path().startsWith("/api/")
                || ctx.path().startsWith("/health")
                || ctx.path().equals("/metrics")) {
            ctx.contentType("application/problem+json").result(problem.json().toString());
        } else {
            Pages.problem(ctx, problem, alert(problem));
        }
    }

    /** The standing alert, where the records can be read and whoever asks may know of them. */
    private String alert(Problem problem) {
        if (problem.status() == MISDIRECTED) {
            return "";
        }
        try {
            List<SampleAlert> alerts = SampleAlert.of(records.cohort(), new Links(Map.of()));
            return alerts.isEmpty() ? "" : SampleAlert.head(alerts);
        } catch (LogFailure unreadable) {
            return "";
        }
    }
}
