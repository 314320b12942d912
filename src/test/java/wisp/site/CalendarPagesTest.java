package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.calendar.CalendarAddresses;
import wisp.event.EventReader.Reading;
import wisp.indicator.Definitions;
import wisp.log.MemoryLog;
import wisp.records.Records;

/** Calendars over HTTP; the clock stands at 25 November 2026. */
class CalendarPagesTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-11-25");
    private final HttpClient client = HttpClient.newHttpClient();

    @TempDir
    private Path folder;

    private CalendarAddresses addresses;
    private Records records;
    private Site site;

    @BeforeEach
    void start() {
        Clock clock = Clock.fixed(SmallSite.NOW, ZoneOffset.UTC);
        addresses = new CalendarAddresses(folder.resolve("calendars.json"));
        records = new Records(new MemoryLog(clock), Definitions.load(null), clock);
        site = Site.start(records, new SiteSettings("127.0.0.1", 0, Set.of(), addresses));
        born("c1", "barn");
        born("c2", "field");
    }

    @AfterEach
    void stop() {
        site.close();
        records.close();
    }

    @Test
    void theOpenOneHoldsEveryCalfAndTakesTheFilters() throws Exception {
        String all = calendar("/api/v1/due.ics");
        assertTrue(all.contains("/calves/c1") && all.contains("/calves/c2"), all);
        String barn = calendar("/api/v1/due.ics?pen=barn");
        assertTrue(barn.contains("/calves/c1"), barn);
        assertFalse(barn.contains("/calves/c2"), barn);
        assertEquals(400, get("/api/v1/due.ics?colour=red").statusCode());
    }

    @Test
    void eachPersonHasASecretAddressOfTheirOwn() throws Exception {
        String ann = addresses.add("Ann", "", TODAY);
        String ben = addresses.add("Ben", "field", TODAY);
        assertTrue(calendar("/calendar/" + ann + ".ics").contains("/calves/c1"));
        String field = calendar("/calendar/" + ben + ".ics");
        assertTrue(field.contains("/calves/c2") && !field.contains("/calves/c1"), field);
        addresses.remove("Ann");
        assertEquals(404, get("/calendar/" + ann + ".ics").statusCode());
        assertTrue(calendar("/calendar/" + ben + ".ics").contains("/calves/c2"));
    }

    @Test
    void aWrongAddressTellsNothing() {
        addresses.add("Ann", "", TODAY);
        HttpResponse<String> wrong = get("/calendar/0000000000000000000000000000000000000000.ics");
        assertEquals(404, wrong.statusCode());
        assertFalse(wrong.body().contains("Ann"));
        assertEquals(404, get("/calendar/x").statusCode());
    }

    @Test
    void theSecretIsKeptNowhere() throws IOException {
        String secret = addresses.add("Ann", "", TODAY);
        assertFalse(Files.readString(folder.resolve("calendars.json")).contains(secret));
        assertTrue(secret.length() >= 32); // 128 bits and more
    }

    private void born(String calf, String pen) {
        Reading reading = records.reader()
                .read("{\"specversion\":\"1.0\",\"id\":\"" + calf
                        + "\",\"source\":\"test\",\"type\":\"birth\",\"subject\":\"" + calf
                        + "\",\"time\":\"2026-11-25T06:00:00Z\",\"data\":{\"alive\":true,\"pen\":\"" + pen + "\"}}");
        assertEquals(1, records.take(List.of(reading), false).accepted());
    }

    private String calendar(String path) throws IOException, ParserException {
        HttpResponse<String> answer = get(path);
        assertEquals(200, answer.statusCode(), answer.body());
        assertEquals(
                "text/calendar; charset=utf-8",
                answer.headers().firstValue("Content-Type").orElse("").toLowerCase());
        new CalendarBuilder().build(new StringReader(answer.body()));
        return answer.body();
    }

    private HttpResponse<String> get(String path) {
        try {
            HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + site.port() + path))
                    .build();
            return client.send(request, BodyHandlers.ofString());
        } catch (IOException | InterruptedException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
