package wisp.log;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import wisp.event.Event;

/**
 * A process of its own that appends batches from several threads and prints each batch that was acknowledged as
 * {@code name size first-sequence}; it is killed or runs out.
 */
final class AppendingProcess {
    private static final int THREADS = 4;

    private AppendingProcess() {}

    /** Arguments: the folder or address, a prefix of ids, how many batches each thread appends, a seed. */
    public static void main(String[] args) throws InterruptedException {
        int batches = Integer.parseInt(args[2]);
        try (EventLog log = Logs.open(args[0], Clock.systemUTC())) {
            List<Thread> threads = IntStream.range(0, THREADS)
                    .mapToObj(t -> new Thread(
                            () -> appendAll(log, args[1] + "-" + t, batches, new Random(Long.parseLong(args[3]) + t))))
                    .toList();
            threads.forEach(Thread::start);
            for (Thread thread : threads) {
                thread.join();
            }
            System.out.println("done");
        }
    }

    private static void appendAll(EventLog log, String prefix, int batches, Random random) {
        for (int b = 0; b < batches; b++) {
            String name = prefix + "-" + b;
            List<Event> batch = Notes.notes(name + "/", 1 + random.nextInt(5));
            Appended appended = log.append(batch, true);
            print(name + " " + batch.size() + " " + appended.stored().get(0).sequence());
        }
    }

    private static synchronized void print(String line) {
        System.out.println(line);
        System.out.flush();
    }

    /** Starts this process on the tests' own class path. */
    static Process start(String data, String prefix, int batches, long seed) throws java.io.IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx128m",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        AppendingProcess.class.getName(),
                        data,
                        prefix,
                        Integer.toString(batches),
                        Long.toString(seed))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
