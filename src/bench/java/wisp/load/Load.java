package wisp.load;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Fifty phones that post and fifty people who read and follow the live events of one real server with 5,000 calves:
 * errors, lost events, and how long a write and a page take. Ten of the people have the season open as a browser has
 * it, which asks 0.7 s after an event for a page that shows it. {@code burst} lets every phone post without a pause.
 */
public final class Load {
    private static final int CALVES = 5_000;
    private static final int PHONES = 50;
    private static final int PEOPLE = 50;
    private static final int OPEN_SEASONS = 10;
    private static final int LIVE_WAIT_MS = 700;
    private static final int WARM_UP_S = 40;
    private static final int LATE_MS = 10_000;
    private static final int PAGE = 10_000;
    private static final Map<String, Double> AIMS = Map.of("write", 100.0, "season page", 50.0);
    private static final Pattern LINE = Pattern.compile("\"id\":\"([^\"]+)\".*\"sequence\":(\\d+)");

    private final ServedHerd herd;
    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final Queue<String> acknowledged = new ConcurrentLinkedQueue<>();
    private final List<List<Long>> seen = new ArrayList<>();
    private final AtomicLong newest = new AtomicLong();
    private final List<Thread> threads = new ArrayList<>();
    private Tally tally = new Tally();
    private volatile boolean over;
    private volatile boolean enough;

    private Load(ServedHerd herd) {
        this.herd = herd;
    }

    private interface Work {
        void turn() throws InterruptedException;
    }

    /** Arguments: {@code load [seconds] [burst]} or {@code memory [seconds]}. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        boolean memory = arguments.length > 0 && arguments[0].equals("memory");
        int seconds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : memory ? 300 : 60;
        if (memory) {
            ManyDays.run(seconds);
            return;
        }
        try (ServedHerd herd = ServedHerd.start(CALVES, "-Xmx1g")) {
            new Load(herd).run(seconds, arguments.length > 2);
        }
    }

    private void run(int seconds, boolean burst) throws IOException, InterruptedException {
        System.out.printf(
                Locale.ROOT,
                "%d calves, %d events; %d s%s%n",
                herd.calves().size(),
                herd.events(),
                seconds,
                burst ? ", burst" : "");
        Visitor first = new Visitor(herd, client, tally, 0);
        for (long until = after(WARM_UP_S); System.nanoTime() < until; ) {
            first.readSomething();
            acknowledged.add(first.post());
        }
        tally = new Tally();
        for (int i = 1; i <= PHONES; i++) {
            Visitor phone = new Visitor(herd, client, tally, i);
            work(() -> {
                phone.pause(burst ? 0 : 1_000, burst ? 1 : 3_000);
                String id = phone.post();
                if (id != null) {
                    acknowledged.add(id);
                }
            });
        }
        for (int i = 0; i < PEOPLE; i++) {
            person(new Visitor(herd, client, tally, PHONES + 1 + i), i < OPEN_SEASONS);
        }
        Thread.sleep(seconds * 1_000L);
        over = true;
        threads.forEach(Load::join);
        report(seconds);
    }

    private void person(Visitor person, boolean openSeason) {
        work(() -> {
            person.pause(1_000, 4_000);
            person.readSomething();
        });
        List<Long> mine = Collections.synchronizedList(new ArrayList<>());
        seen.add(mine);
        long from = herd.events();
        Thread follower = new Thread(() -> {
            try {
                person.follow(
                        from,
                        sequence -> {
                            mine.add(sequence);
                            newest.accumulateAndGet(sequence, Math::max);
                        },
                        () -> enough);
            } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
            }
        });
        follower.setDaemon(true);
        follower.start();
        if (openSeason) {
            AtomicLong shown = new AtomicLong();
            work(() -> {
                long told = newest.get();
                if (told > shown.getAndSet(told)) {
                    Thread.sleep(LIVE_WAIT_MS);
                    person.read("season page, after an event", "/", told);
                } else {
                    Thread.sleep(10);
                }
            });
        }
    }

    private void work(Work work) {
        Thread thread = new Thread(() -> {
            try {
                while (!over) {
                    work.turn();
                }
            } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
            }
        });
        threads.add(thread);
        thread.start();
    }

    private void report(int seconds) throws IOException, InterruptedException {
        Map<String, Integer> inLog = new HashMap<>();
        long last = herd.events();
        for (long before = -1; before != last; ) {
            before = last;
            HttpRequest request = HttpRequest.newBuilder(herd.at("/api/v1/events?limit=" + PAGE + "&after=" + last))
                    .build();
            Matcher line =
                    LINE.matcher(client.send(request, BodyHandlers.ofString()).body());
            while (line.find()) {
                inLog.merge(line.group(1), 1, Integer::sum);
                last = Long.parseLong(line.group(2));
            }
        }
        long lost = acknowledged.stream()
                .filter(id -> inLog.getOrDefault(id, 0) != 1)
                .count();
        long end = last;
        for (long until = after(LATE_MS / 1_000);
                System.nanoTime() < until && !seen.stream().allMatch(of -> of.contains(end)); ) {
            Thread.sleep(100);
        }
        enough = true;
        long wrong = seen.stream().filter(of -> !eachOnce(of, end)).count();
        tally.print(AIMS);
        System.out.printf(
                Locale.ROOT,
                "%d errors; %d events acknowledged, %.1f a second, of which %d are not in the log just once;%n"
                        + "%d of %d followers did not see each of %d events once and in order; heap after GC %.0f MB%n",
                tally.errors(),
                acknowledged.size(),
                (double) acknowledged.size() / seconds,
                lost,
                wrong,
                seen.size(),
                end - herd.events(),
                herd.heapAfterCollection());
    }

    private boolean eachOnce(List<Long> numbers, long end) {
        synchronized (numbers) {
            for (int i = 0; i < numbers.size(); i++) {
                if (numbers.get(i) != herd.events() + 1 + i) {
                    return false;
                }
            }
            return numbers.size() == end - herd.events();
        }
    }

    private static long after(int seconds) {
        return System.nanoTime() + seconds * 1_000_000_000L;
    }

    private static void join(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }
}
