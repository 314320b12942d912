package wisp.site;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import wisp.event.EventReader.Reading;
import wisp.records.Intake;
import wisp.records.Records;

/** A server for tests on a free port of this machine, over a folder of records, and a client for it. */
final class RunningSite implements AutoCloseable {
    private final Records records;
    private final Site site;
    private final HttpClient client = HttpClient.newHttpClient();

    private RunningSite(Records records, Site site) {
        this.records = records;
        this.site = site;
    }

    /** Serves what a folder holds. */
    static RunningSite over(Path folder) {
        return over(folder, Clock.systemUTC());
    }

    static RunningSite over(Path folder, Clock clock) {
        Records records = Records.open(folder.toString(), clock);
        return new RunningSite(records, Site.start(records, "127.0.0.1", 0));
    }

    /** Serves the demo seasons, recorded into an empty folder. */
    static RunningSite demo(Path folder) {
        RunningSite running = over(folder);
        Intake intake = running.records.take(demoReadings(running.records), false);
        if (!intake.refused().isEmpty()) {
            throw new IllegalStateException(intake.refused().get(0).toString());
        }
        return running;
    }

    static List<Reading> demoReadings(Records records) {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                RunningSite.class.getResourceAsStream("/demo-data/demo.jsonl"), StandardCharsets.UTF_8))) {
            return lines.lines().map(records.reader()::read).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
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

    String address(String path) {
        return "http://127.0.0.1:" + site.port() + path;
    }

    HttpResponse<String> get(String path) {
        return send(request(path));
    }

    HttpResponse<String> post(String path, String type, String body) {
        return send(request(path).header("Content-Type", type).POST(BodyPublishers.ofString(body)));
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(address(path)));
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        return send(request, BodyHandlers.ofString());
    }

    <T> HttpResponse<T> send(HttpRequest.Builder request, HttpResponse.BodyHandler<T> handler) {
        try {
            return client.send(request.build(), handler);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(ended);
        }
    }

    @Override
    public void close() {
        site.close();
        records.close();
    }
}
