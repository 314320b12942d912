package wisp.site;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wisp.calendar.CalendarAddresses;
import wisp.indicator.Definitions;
import wisp.log.MemoryLog;
import wisp.records.Records;

/** A server that is told its names goes by them and by no others, wherever it listens. */
class NamedSiteTest {

    @Test
    void behindAProxyItGoesByTheNamesGiven() throws IOException {
        answers("127.0.0.1");
    }

    @Test
    void onEveryAddressItStillGoesByTheNamesGivenAlone() throws IOException {
        answers("0.0.0.0");
    }

    private static void answers(String bind) throws IOException {
        try (Records records =
                        new Records(new MemoryLog(Clock.systemUTC()), Definitions.load(null), Clock.systemUTC());
                Site site = Site.start(
                        records, new SiteSettings(bind, 0, Set.of("Calves.Example"), new CalendarAddresses(null)))) {
            assertTrue(asHost(site, "calves.example").startsWith("HTTP/1.1 200"));
            assertTrue(asHost(site, "CALVES.example:443").startsWith("HTTP/1.1 200"));
            assertTrue(asHost(site, "localhost").startsWith("HTTP/1.1 200"));
            String refused = asHost(site, "evil.example");
            assertTrue(refused.startsWith("HTTP/1.1 421"), refused);
            assertTrue(refused.contains("--name"), refused);
        }
    }

    private static String asHost(Site site, String host) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", site.port())) {
            OutputStream out = socket.getOutputStream();
            out.write(("GET /health HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
