package wisp.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wisp.event.EventReader.Reading;
import wisp.indicator.Definitions;
import wisp.log.MemoryLog;
import wisp.records.Records;

/** A server over a few events in memory, and a browser that fills in its forms. */
final class SmallSite implements AutoCloseable {
    static final Instant NOW = Instant.parse("2026-11-25T10:00:00Z");
    private static final Pattern FIELD =
            Pattern.compile("<input(?=[^>]*\\bname=\"([^\"]*)\")(?=[^>]*\\bvalue=\"([^\"]*)\")[^>]*>");
    private static final Pattern CHOSEN =
            Pattern.compile("<select[^>]*name=\"([^\"]*)\"[^>]*>(.*?)</select>", Pattern.DOTALL);
    private static final Pattern SELECTED = Pattern.compile("value=\"([^\"]*)\" selected");

    private final Records records;
    private final Site site;
    private final HttpClient client = HttpClient.newHttpClient();
    private int next = 1;

    SmallSite() {
        Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
        records = new Records(new MemoryLog(clock), Definitions.load(null), clock);
        site = Site.start(records, "127.0.0.1", 0);
    }

    Records records() {
        return records;
    }

    int port() {
        return site.port();
    }

    void rehearse() {
        site.rehearse();
    }

    /** Records an event of source {@code test}, whose id is {@code e} and a number; it must be accepted. */
    String event(String type, String subject, String time, String data) {
        return recordedLater(type, subject, time, time, data);
    }

    /** The same, recorded at another time than it happened. */
    String recordedLater(String type, String subject, String time, String recorded, String data) {
        String id = "e" + next++;
        Reading reading = records.reader()
                .read("{\"specversion\":\"1.0\",\"id\":\"" + id
                        + "\",\"source\":\"test\",\"type\":\"" + type + "\",\"subject\":\"" + subject + "\",\"time\":\""
                        + time
                        + "\",\"recordedtime\":\"" + recorded + "\",\"data\":" + data + "}");
        if (records.take(List.of(reading), false).accepted() != 1) {
            throw new IllegalStateException(reading.faults().toString());
        }
        return id;
    }

    HttpResponse<String> get(String path) {
        return send(request(path));
    }

    /** The fields of a page's form as a browser would send them untouched. */
    Map<String, String> form(String page) {
        String form = page.substring(page.indexOf("<form class=\"mending\""));
        form = form.substring(0, form.indexOf("</form>"));
        Map<String, String> fields = new LinkedHashMap<>();
        for (Matcher input = FIELD.matcher(form); input.find(); ) {
            fields.put(input.group(1), input.group(2));
        }
        for (Matcher select = CHOSEN.matcher(form); select.find(); ) {
            Matcher selected = SELECTED.matcher(select.group(2));
            fields.put(select.group(1), selected.find() ? selected.group(1) : "");
        }
        return fields;
    }

    /** Sends a form as this server's own page does. */
    HttpResponse<String> send(String path, Map<String, String> form) {
        return send(post(path, form)
                .header("Origin", "http://127.0.0.1:" + port())
                .header("Sec-Fetch-Site", "same-origin"));
    }

    HttpRequest.Builder post(String path, Map<String, String> form) {
        String body = form.entrySet().stream()
                .map(field -> encode(field.getKey()) + "=" + encode(field.getValue()))
                .collect(Collectors.joining("&"));
        return request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body));
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port() + path));
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(ended);
        }
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        site.close();
        records.close();
    }
}
