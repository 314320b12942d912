package wisp.log;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import wisp.event.Event;
import wisp.event.EventReader;
import wisp.testing.PostgresServer;

/**
 * Durable appends a second to a SQLite file and to a PostgreSQL on the same disk, turn by turn in one run, and their
 * ratio: one event a batch, a hundred, a thousand, and one event a batch from eight threads.
 */
public final class AppendThroughput {
    private static final int TURNS = 5;
    private static final long TURN_NANOS = 1_000_000_000;

    private int next;

    private AppendThroughput() {}

    /** Prints a line a kind of append; arguments: none. */
    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("wisp-append-");
        try (PostgresServer server = PostgresServer.create();
                EventLog sqlite = Logs.open(folder.toString(), Clock.systemUTC());
                EventLog postgres = Logs.open(server.newDatabase(), Clock.systemUTC())) {
            AppendThroughput run = new AppendThroughput();
            System.out.println("batch threads  SQLite/s  PostgreSQL/s  SQLite / PostgreSQL   (best of " + TURNS + ")");
            for (int[] kind : new int[][] {{1, 1}, {100, 1}, {1000, 1}, {1, 8}}) {
                double file = 0;
                double database = 0;
                for (int turn = 0; turn < TURNS; turn++) {
                    file = Math.max(file, run.turn(sqlite, kind[0], kind[1]));
                    database = Math.max(database, run.turn(postgres, kind[0], kind[1]));
                }
                System.out.printf(
                        Locale.ROOT,
                        "%5d %7d %9.0f %13.0f %20.2f%n",
                        kind[0],
                        kind[1],
                        file,
                        database,
                        file / database);
            }
        } finally {
            PostgresServer.remove(folder);
        }
    }

    private double turn(EventLog log, int batch, int threads) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            long begin = System.nanoTime();
            List<CompletableFuture<Integer>> senders = IntStream.range(0, threads)
                    .mapToObj(t -> CompletableFuture.supplyAsync(() -> send(log, batch, begin + TURN_NANOS), pool))
                    .toList();
            int events = senders.stream().mapToInt(CompletableFuture::join).sum();
            return events * 1e9 / (System.nanoTime() - begin);
        } finally {
            pool.shutdown();
        }
    }

    private int send(EventLog log, int batch, long until) {
        int sent = 0;
        while (System.nanoTime() < until) {
            sent += log.append(some(batch), true).stored().size();
        }
        return sent;
    }

    private synchronized List<Event> some(int many) {
        List<Event> some = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            String json = "{\"specversion\":\"1.0\",\"id\":\"" + next++ + "\",\"source\":\"bench\",\"type\":\"noted\","
                    + "\"subject\":\"calf-1\",\"time\":\"2026-03-01T07:30:00Z\",\"data\":{\"text\":\"a note\"}}";
            some.add(EventReader.recorded().read(json).event());
        }
        return some;
    }
}
