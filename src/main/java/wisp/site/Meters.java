package wisp.site;

import io.javalin.http.Context;
import io.javalin.router.Endpoint;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Duration;
import java.util.List;
import java.util.function.IntSupplier;
import java.util.function.LongSupplier;
import wisp.records.Intake;
import wisp.records.Records;

/**
 * What the server counts of itself, in OpenMetrics. The route of a request is the address with its variables unnamed,
 * so that neither keys nor secrets get into it.
 */
final class Meters {
    private static final String OPEN_METRICS = "application/openmetrics-text; version=1.0.0; charset=utf-8";
    private static final Duration[] BUCKETS = {
        Duration.ofMillis(5),
        Duration.ofMillis(10),
        Duration.ofMillis(25),
        Duration.ofMillis(50),
        Duration.ofMillis(100),
        Duration.ofMillis(250),
        Duration.ofSeconds(1),
        Duration.ofSeconds(5)
    };

    private final PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    private final Counter accepted = events("accepted");
    private final Counter duplicate = events("duplicate");
    private final Counter refused = events("refused");

    Meters(Records records, IntSupplier listeners, LongSupplier underWay) {
        Gauge.builder("wisp.log.sequence", records, held -> held.log().last())
                .description("The newest event's sequence")
                .register(registry);
        // Held weakly, as is usual, a method reference would soon be gone and the figure NaN.
        Gauge.builder("wisp.live.clients", listeners, IntSupplier::getAsInt)
                .strongReference(true)
                .description("Clients that follow live events")
                .register(registry);
        Gauge.builder("wisp.http.under.way", underWay, LongSupplier::getAsLong)
                .strongReference(true)
                .description("Requests being answered")
                .register(registry);
        new JvmMemoryMetrics().bindTo(registry);
        new JvmThreadMetrics().bindTo(registry);
        new ProcessorMetrics().bindTo(registry);
        new UptimeMetrics().bindTo(registry);
    }

    /** {@code GET /metrics}, for this machine alone: whoever comes through a proxy is a stranger, too. */
    void show(Context ctx) {
        if (ctx.header("X-Forwarded-For") != null || ctx.header("Forwarded") != null || !here(ctx.ip())) {
            throw new Problem(403, "Metrics are for this machine alone", "Ask from the machine itself.", List.of());
        }
        ctx.contentType(OPEN_METRICS).result(registry.scrape(OPEN_METRICS));
    }

    /** Counts a request that was answered. */
    void answered(Context ctx, float milliseconds) {
        Timer.builder("wisp.http.requests")
                .description("Requests answered")
                .tag("method", ctx.method().name())
                .tag("route", route(ctx))
                .tag("status", Integer.toString(ctx.statusCode()))
                .serviceLevelObjectives(BUCKETS)
                .register(registry)
                .record(Duration.ofNanos((long) (milliseconds * 1e6)));
    }

    /** Counts what became of the events that were offered. */
    void offered(Intake intake) {
        accepted.increment(intake.accepted());
        duplicate.increment(intake.duplicate());
        refused.increment(
                intake.refused().stream().map(Intake.Refused::index).distinct().count());
    }

    /** The address that a request matched, without its variables' values. */
    static String route(Context ctx) {
        Endpoint matched = ctx.endpoints().matchedHttpEndpoint();
        return matched == null ? "none" : matched.path;
    }

    private Counter events(String outcome) {
        return Counter.builder("wisp.events")
                .description("Events offered, by what became of them")
                .tag("outcome", outcome)
                .register(registry);
    }

    private static boolean here(String address) {
        try {
            return InetAddress.getByName(address).isLoopbackAddress();
        } catch (UnknownHostException unknown) {
            return false;
        }
    }
}
