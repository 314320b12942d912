package wisp.site;

import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wisp.records.Records;

/**
 * Time to the first byte of every page on the demo seasons, in milliseconds, and in parts of the 50 ms that are aimed
 * at: asked for the first time after the start, again, as the very next thing after an event was posted, and two
 * seconds after one. An argument is a number of seconds to wait after the start before the first request.
 */
public final class FirstByte {
    private static final double AIM_MS = 50;
    private static final int ROUNDS = 5;
    private static final int QUIET_MS = 2_000;

    private int posted;

    private FirstByte() {}

    /** Prints the table. */
    public static void main(String[] args) throws IOException, InterruptedException {
        int wait = args.length > 0 ? Integer.parseInt(args[0]) : 0;
        Path folder = Files.createTempDirectory("wisp-first-byte");
        try (Records records = Records.open(folder.toString(), Clock.systemUTC())) {
            records.take(RunningSite.demoReadings(records), false);
        }
        try (RunningSite site = RunningSite.over(folder)) {
            site.rehearse();
            Thread.sleep(wait * 1_000L);
            new FirstByte().measure(site);
        }
    }

    private void measure(RunningSite site) throws IOException, InterruptedException {
        List<String> paths = pages(site);
        Map<String, double[]> times = new LinkedHashMap<>();
        for (String path : paths) {
            times.put(path, new double[] {firstByte(site, path), 0, 0, 0});
        }
        for (String path : paths) {
            times.get(path)[1] = median(ROUNDS, () -> firstByte(site, path));
        }
        for (String path : paths) {
            times.get(path)[2] = median(ROUNDS, () -> {
                post(site);
                return firstByte(site, path);
            });
        }
        for (int round = 0; round < ROUNDS; round++) {
            post(site);
            Thread.sleep(QUIET_MS);
            for (String path : paths) {
                times.get(path)[3] = Math.max(times.get(path)[3], firstByte(site, path));
            }
        }
        System.out.printf(
                Locale.ROOT, "%-44s %18s %18s %18s %18s%n", "page", "first", "again", "just posted", "posted 2 s ago");
        times.forEach((path, of) -> System.out.printf(
                Locale.ROOT, "%-44s %s %s %s %s%n", path, shown(of[0]), shown(of[1]), shown(of[2]), shown(of[3])));
    }

    private static List<String> pages(RunningSite site) {
        String calf = site.records().cohort().lives().stream()
                .filter(life -> life.born() != null)
                .reduce((one, other) -> other)
                .orElseThrow()
                .key();
        String season = site.records().cohort().seasonsWithCalves().get(0);
        return new ArrayList<>(List.of(
                "/",
                "/season/weeks",
                "/season/calves?list=births",
                "/navels",
                "/pens",
                "/calves",
                "/calves/" + calf,
                "/calves/" + site.records().cohort().lives().get(40).key(),
                "/records",
                "/figures/preweaning-mortality",
                "/figures/preweaning-mortality?by=pen",
                "/figures/diarrhoea-risk-60d?part=numerator",
                "/season?season=" + season,
                "/navels?season=" + season,
                "/pens?season=" + season,
                "/season?season=all",
                "/season?as-of=2026-02-01",
                "/season?sex=male",
                "/navels?pen=north+boxes",
                "/due",
                "/medicines",
                "/samples",
                "/proof",
                "/nothing"));
    }

    private void post(RunningSite site) {
        String calf = site.records().cohort().lives().get(0).key();
        String event = "{\"specversion\":\"1.0\",\"id\":\"bench-" + ++posted
                + "\",\"source\":\"bench\",\"type\":\"noted\","
                + "\"subject\":\"" + calf + "\",\"time\":\"" + Instant.now().minusSeconds(1)
                + "\",\"data\":{\"text\":\"seen\"}}";
        if (site.post("/api/v1/events", "application/json", event).statusCode() != 201) {
            throw new IllegalStateException("the event was refused");
        }
    }

    private static double firstByte(RunningSite site, String path) throws IOException {
        long start = System.nanoTime();
        HttpResponse<InputStream> answer = site.send(site.request(path), BodyHandlers.ofInputStream());
        double time = (System.nanoTime() - start) / 1e6;
        try (InputStream body = answer.body()) {
            body.readAllBytes();
        }
        return time;
    }

    private interface Timed {
        double once() throws IOException;
    }

    private static double median(int rounds, Timed timed) throws IOException {
        double[] times = new double[rounds];
        for (int i = 0; i < rounds; i++) {
            times[i] = timed.once();
        }
        Arrays.sort(times);
        return times[rounds / 2];
    }

    private static String shown(double time) {
        return String.format(Locale.ROOT, "%8.1f ms %5.2f ×", time, time / AIM_MS);
    }
}
