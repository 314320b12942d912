package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class RehearsalTest {
    private final SmallSite site = new SmallSite();

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void everyKindOfPageIsMadeAndNothingIsRecorded() throws InterruptedException {
        site.event("birth", "a/b c", "2026-11-01T06:00:00Z", "{\"alive\":true}");
        site.rehearse();
        String last = "wisp_http_requests_seconds_count{method=\"GET\",route=\"/calves/{key}\",status=\"200\"} 4";
        List<String> lines = metrics();
        for (int i = 0; i < 600 && lines.stream().noneMatch(line -> line.startsWith(last)); i++) {
            Thread.sleep(100);
            lines = metrics();
        }
        assertTrue(lines.stream().anyMatch(line -> line.startsWith(last)), lines::toString);
        assertFalse(lines.toString().contains("status=\"4"), lines::toString);
        assertFalse(lines.toString().contains("status=\"5"), lines::toString);
        assertEquals(1, site.records().log().last());
    }

    @Test
    void aServerThatStopsEndsIt() {
        site.rehearse();
        site.close();
        assertTrue(Thread.getAllStackTraces().keySet().stream()
                .noneMatch(thread -> thread.getName().equals("rehearsal")));
    }

    private List<String> metrics() {
        return site.get("/metrics").body().lines().toList();
    }
}
