package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.net.ConnectException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import wisp.indicator.Definitions;
import wisp.log.MemoryLog;
import wisp.records.Records;

/** Stopping finishes what was begun: a request that has arrived is answered, and no new one is taken. */
class GracefulStopTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);
    private static final String NOTE = "{\"specversion\":\"1.0\",\"id\":\"n1\",\"source\":\"phone\",\"type\":\"noted\","
            + "\"subject\":\"c1\",\"time\":\"2026-11-01T06:00:00Z\",\"data\":{\"text\":\"wet\"}}";

    @Test
    void aRequestThatHasBegunIsAnsweredBeforeTheServerStops() throws Exception {
        Records records = new Records(new MemoryLog(CLOCK), Definitions.load(null), CLOCK);
        Site site = Site.start(records, "127.0.0.1", 0);
        int port = site.port();
        try (Socket phone = new Socket("127.0.0.1", port)) {
            phone.setSoTimeout(20_000);
            OutputStream out = phone.getOutputStream();
            out.write(("POST /api/v1/events HTTP/1.1\r\nHost: localhost:" + port
                            + "\r\nContent-Type: application/cloudevents+json\r\nContent-Length: " + NOTE.length()
                            + "\r\nConnection: close\r\n\r\n" + NOTE.substring(0, 40))
                    .getBytes(StandardCharsets.UTF_8));
            out.flush();
            awaitTaken(site);
            Thread stopping = new Thread(site::close);
            stopping.start();
            awaitClosed(port);
            out.write(NOTE.substring(40).getBytes(StandardCharsets.UTF_8));
            out.flush();
            String answer = new String(phone.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(answer.startsWith("HTTP/1.1 201 "), answer);
            stopping.join(Duration.ofSeconds(20).toMillis());
            assertEquals(1, records.log().last());
        }
        assertThrows(ConnectException.class, () -> new Socket("127.0.0.1", port).close());
    }

    private static void awaitTaken(Site site) throws InterruptedException {
        while (site.underWay() == 0) {
            Thread.sleep(5);
        }
    }

    private static void awaitClosed(int port) throws InterruptedException {
        for (int i = 0; i < 2_000; i++) {
            try {
                new Socket("127.0.0.1", port).close();
            } catch (IOException closed) {
                return;
            }
            Thread.sleep(5);
        }
        throw new IllegalStateException("the server still takes connections");
    }
}
