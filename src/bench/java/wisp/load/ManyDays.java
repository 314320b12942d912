package wisp.load;

import java.io.IOException;
import java.net.http.HttpClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import wisp.backup.Backup;
import wisp.log.EventLog;
import wisp.log.Logs;

/**
 * Days of work on a farm done as fast as the server answers, under {@code -Xmx256m}: each of them posts, reads every
 * page, looks at past days, filters, follows the live events for a while and goes away, and ends with a backup. Prints
 * the heap in use after a full collection by time; it must level off.
 */
final class ManyDays {
    private static final int CALVES = 1_500;
    private static final int EVENTS_A_DAY = 100;
    private static final int READINGS_A_DAY = 40;
    private static final int FOLLOWERS_A_DAY = 10;
    private static final List<String> PAGES = List.of(
            "/",
            "/season/weeks",
            "/navels",
            "/pens",
            "/calves",
            "/records",
            "/season?season=all",
            "/medicines",
            "/samples");

    private ManyDays() {}

    static void run(int seconds) throws IOException, InterruptedException {
        try (ServedHerd herd = ServedHerd.start(CALVES, "-Xmx256m")) {
            HttpClient client =
                    HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
            Tally tally = new Tally();
            Random random = new Random(1);
            long start = System.nanoTime();
            System.out.printf(
                    Locale.ROOT,
                    "%d calves, %d events%n%8s %6s %8s %10s%n",
                    herd.calves().size(),
                    herd.events(),
                    "seconds",
                    "days",
                    "events",
                    "heap MB");
            int day = 0;
            for (double at = 0; at < seconds; at = (System.nanoTime() - start) / 1e9) {
                System.out.printf(
                        Locale.ROOT,
                        "%8.0f %6d %8d %10.1f%n",
                        at,
                        day,
                        herd.events() + (long) day * EVENTS_A_DAY,
                        herd.heapAfterCollection());
                day(herd, client, tally, random, day++);
            }
            System.out.printf(
                    Locale.ROOT,
                    "%8s %6d %8d %10.1f; %d errors%n",
                    "end",
                    day,
                    herd.events() + (long) day * EVENTS_A_DAY,
                    herd.heapAfterCollection(),
                    tally.errors());
            tally.print(java.util.Map.of());
        }
    }

    private static void day(ServedHerd herd, HttpClient client, Tally tally, Random random, int day)
            throws IOException, InterruptedException {
        List<Thread> followers = new ArrayList<>();
        for (int i = 0; i < FOLLOWERS_A_DAY; i++) {
            Visitor follower = new Visitor(herd, client, tally, 10_000 + FOLLOWERS_A_DAY * day + i);
            int[] left = {EVENTS_A_DAY / 2};
            Thread thread = new Thread(() -> {
                try {
                    follower.follow(
                            herd.events() + (long) day * EVENTS_A_DAY, sequence -> left[0]--, () -> left[0] <= 0);
                } catch (InterruptedException ended) {
                    Thread.currentThread().interrupt();
                }
            });
            followers.add(thread);
            thread.setDaemon(true);
            thread.start();
        }
        Visitor phone = new Visitor(herd, client, tally, 20_000 + day);
        Visitor person = new Visitor(herd, client, tally, 40_000 + day);
        for (int i = 0; i < EVENTS_A_DAY; i++) {
            phone.post();
            if (i % (EVENTS_A_DAY / READINGS_A_DAY) == 0) {
                person.read("page", path(herd, random), 0);
            }
        }
        for (Thread follower : followers) {
            follower.join(10_000);
        }
        try (EventLog log = Logs.open(herd.folder().toString(), Clock.systemUTC())) {
            Path file = herd.folder().resolveSibling("backup-" + day + ".zip");
            new Backup(log, null, Clock.systemUTC()).write(file);
            Files.delete(file);
            Files.deleteIfExists(Backup.headFile(file));
        }
    }

    private static String path(ServedHerd herd, Random random) {
        String page = PAGES.get(random.nextInt(PAGES.size()));
        return switch (random.nextInt(4)) {
            case 0 ->
                "/calves/" + herd.calves().get(random.nextInt(herd.calves().size()));
            case 1 -> "/season?as-of=" + LocalDate.of(2024, 10, 1).plusDays(random.nextInt(300));
            case 2 -> "/season?parity=" + (1 + random.nextInt(5)) + "&sex=female";
            default -> page;
        };
    }
}
