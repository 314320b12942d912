package wisp.load;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;

/** Somebody with a phone or a browser: an address of its own, as a proxy would name it. */
final class Visitor {
    private static final int NEW_CALF_ONE_IN = 4;

    private final ServedHerd herd;
    private final HttpClient client;
    private final Tally tally;
    private final String name;
    private final Random random;
    private int posted;

    Visitor(ServedHerd herd, HttpClient client, Tally tally, int number) {
        this.herd = herd;
        this.client = client;
        this.tally = tally;
        this.name = "10.0." + number / 250 + "." + (1 + number % 250);
        this.random = new Random(number);
    }

    /** Waits between two times. */
    void pause(int least, int most) throws InterruptedException {
        Thread.sleep(least + random.nextInt(Math.max(1, most - least)));
    }

    /** Posts one event; its id where the server acknowledged it, else null. */
    String post() throws InterruptedException {
        String id = name + "-" + ++posted;
        String calf = herd.calves().get(random.nextInt(herd.calves().size()));
        boolean birth = random.nextInt(NEW_CALF_ONE_IN) == 0;
        String event = "{\"specversion\":\"1.0\",\"source\":\"load\",\"id\":\"" + id + "\","
                + (birth
                        ? "\"type\":\"birth\",\"subject\":\"new-" + id + "\",\"time\":\"2025-07-"
                                + (10 + random.nextInt(20)) + "T08:00:00+01:00\",\"data\":{\"sex\":\"female\","
                                + "\"alive\":true,\"dam\":\"dam-" + id + "\"}}"
                        : "\"type\":\"noted\",\"subject\":\"" + calf + "\",\"time\":\""
                                + Instant.now().minusSeconds(1) + "\",\"data\":{\"text\":\"seen\"}}");
        HttpRequest request = request("/api/v1/events")
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(event))
                .build();
        long start = System.nanoTime();
        try {
            HttpResponse<String> answer = client.send(request, BodyHandlers.ofString());
            tally.took("write", (System.nanoTime() - start) / 1e6);
            if (answer.statusCode() == 201) {
                return id;
            }
            tally.failed("a post was answered " + answer.statusCode() + ": " + answer.body());
        } catch (IOException broken) {
            tally.failed("a post failed: " + broken);
        }
        return null;
    }

    /**
     * Reads a page; the time that counts ends with the first byte.
     *
     * @param atLeast the event that the page must show, 0 for any
     */
    void read(String what, String path, long atLeast) throws InterruptedException {
        HttpRequest.Builder request = request(path);
        if (atLeast > 0) {
            request.header("Wisp-At-Least", Long.toString(atLeast));
        }
        long start = System.nanoTime();
        try {
            HttpResponse<InputStream> answer = client.send(request.build(), BodyHandlers.ofInputStream());
            tally.took(what, (System.nanoTime() - start) / 1e6);
            try (InputStream body = answer.body()) {
                body.readAllBytes();
            }
            if (answer.statusCode() != 200) {
                tally.failed(path + " was answered " + answer.statusCode());
            }
        } catch (IOException broken) {
            tally.failed(path + " failed: " + broken);
        }
    }

    /** Reads one of the pages that people read, half the time the season. */
    void readSomething() throws InterruptedException {
        List<String> others = List.of("/navels", "/pens", "/calves", "/records", "/figures/preweaning-mortality");
        int one = random.nextInt(2 * others.size() + 2);
        if (one < others.size()) {
            read("other page", others.get(one), 0);
        } else if (one < others.size() + 2) {
            String calf = herd.calves().get(random.nextInt(herd.calves().size()));
            read("calf page", "/calves/" + calf, 0);
        } else {
            read("season page", "/", 0);
        }
    }

    /** Follows the live events until the stream ends or the thread is interrupted; gives each event's number. */
    void follow(long after, LongConsumer seen, BooleanSupplier enough) throws InterruptedException {
        HttpRequest request = request("/api/v1/events/live?after=" + after)
                .header("Accept", "text/event-stream")
                .build();
        try (InputStream body =
                        client.send(request, BodyHandlers.ofInputStream()).body();
                BufferedReader lines = new BufferedReader(new InputStreamReader(body, StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null && !enough.getAsBoolean(); line = lines.readLine()) {
                if (line.startsWith("id:")) {
                    seen.accept(Long.parseLong(line.substring(3).strip()));
                }
            }
        } catch (IOException broken) {
            if (!enough.getAsBoolean()) {
                tally.failed("a live stream broke: " + broken);
            }
        }
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(herd.at(path)).header("X-Forwarded-For", name);
    }
}
