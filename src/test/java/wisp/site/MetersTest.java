package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class MetersTest {
    private static final String NOTE =
            "{'specversion':'1.0','id':'n1','source':'phone','type':'noted','subject':'c1','time':'2026-11-01T06:00:00Z','data':{'text':'%s'}}";
    private final SmallSite site = new SmallSite();

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void eventsAreCountedByWhatBecameOfThem() {
        assertEquals(201, send("wet").statusCode());
        assertEquals(201, send("wet").statusCode());
        assertEquals(422, send("dry").statusCode());
        List<String> lines = metrics();
        assertTrue(lines.contains("wisp_events_total{outcome=\"accepted\"} 1.0"), lines::toString);
        assertTrue(lines.contains("wisp_events_total{outcome=\"duplicate\"} 1.0"), lines::toString);
        assertTrue(lines.contains("wisp_events_total{outcome=\"refused\"} 1.0"), lines::toString);
        assertTrue(lines.contains("wisp_log_sequence 1.0"), lines::toString);
    }

    @Test
    void aRequestIsCountedByItsRouteAndNeverByItsKey() {
        site.event("birth", "secret-key", "2026-11-01T06:00:00Z", "{\"alive\":true}");
        assertEquals(200, site.get("/calves/secret-key").statusCode());
        List<String> lines = metrics();
        String counted = "wisp_http_requests_seconds_count{method=\"GET\",route=\"/calves/{key}\",status=\"200\"} 1";
        assertTrue(lines.stream().anyMatch(line -> line.startsWith(counted)), lines::toString);
        assertFalse(lines.toString().contains("secret-key"));
    }

    @Test
    void whatIsUnderWayIsStillToldAfterACollectionOfGarbage() {
        System.gc();
        List<String> lines = metrics();
        assertTrue(lines.contains("wisp_live_clients 0.0"), lines::toString);
        assertTrue(lines.contains("wisp_http_under_way 1.0"), lines::toString);
    }

    /** OpenMetrics 1.0: the media type, a type for each family before its samples, and {@code # EOF} at the end. */
    @Test
    void itIsOpenMetrics() {
        HttpResponse<String> answer = site.get("/metrics");
        assertEquals(
                "application/openmetrics-text; version=1.0.0; charset=utf-8",
                answer.headers().firstValue("Content-Type").orElse(""));
        assertTrue(answer.body().endsWith("# EOF\n"));
        String family = "";
        for (String line : answer.body().lines().toList()) {
            if (line.startsWith("# TYPE ")) {
                family = line.split(" ")[2];
            } else if (!line.startsWith("#")) {
                assertTrue(line.startsWith(family), line + " does not belong to " + family);
            }
        }
    }

    @Test
    void whoComesThroughAProxyDoesNotSeeIt() {
        assertEquals(
                403,
                site.send(site.request("/metrics").header("X-Forwarded-For", "192.0.2.1"))
                        .statusCode());
        assertEquals(
                403,
                site.send(site.request("/metrics").header("Forwarded", "for=192.0.2.1"))
                        .statusCode());
    }

    @Test
    void healthTellsLivingFromReady() {
        assertEquals(
                "{\"status\":\"ok\",\"live\":true}", site.get("/health/live").body());
        assertEquals(site.get("/health").body(), site.get("/health/ready").body());
        site.records().close();
        assertEquals(200, site.get("/health/live").statusCode());
    }

    private HttpResponse<String> send(String text) {
        return site.send(site.request("/api/v1/events")
                .header("Content-Type", "application/cloudevents+json")
                .POST(BodyPublishers.ofString(NOTE.formatted(text).replace('\'', '"'))));
    }

    private List<String> metrics() {
        HttpResponse<String> answer = site.get("/metrics");
        assertEquals(200, answer.statusCode(), answer.body());
        return answer.body().lines().toList();
    }
}
