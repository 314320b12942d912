package wisp.load;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.ProcessBuilder.Redirect;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wisp.event.EventReader.Reading;
import wisp.history.Life;
import wisp.records.Records;
import wisp.simulation.SimulateSeason;
import wisp.simulation.StandardModel;

/** The real server in a process of its own, over an invented season. */
final class ServedHerd implements AutoCloseable {
    private static final int SEED = 7;
    private static final int BATCH = 10_000;
    private static final Pattern USED = Pattern.compile("used (\\d+)K");

    private final Process process;
    private final URI address;
    private final Path folder;
    private final long events;
    private final List<String> calves;

    private ServedHerd(Process process, URI address, Path folder, long events, List<String> calves) {
        this.process = process;
        this.address = address;
        this.folder = folder;
        this.events = events;
        this.calves = calves;
    }

    /**
     * Draws a season, records it and starts the server over it; {@code -Dwisp.load.data=FOLDER} takes a copy of records
     * that were drawn before.
     */
    static ServedHerd start(int calves, String heap) throws IOException {
        Path home = Files.createTempDirectory("wisp-load-");
        Path data = home.resolve("data");
        String drawn = System.getProperty("wisp.load.data");
        if (drawn == null) {
            draw(calves, home.resolve("season.jsonl"), data);
        } else {
            Files.createDirectory(data);
            Files.copy(Path.of(drawn).resolve("wisp.db"), data.resolve("wisp.db"));
        }
        List<String> keys;
        long events;
        try (Records records = Records.open(data.toString(), Clock.systemUTC())) {
            keys = records.cohort().lives().stream()
                    .filter(life -> life.born() != null)
                    .map(Life::key)
                    .toList();
            events = records.log().last();
        }
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        heap,
                        "-cp",
                        System.getProperty("java.class.path"),
                        "wisp.cli.Wisp",
                        "serve",
                        "--data",
                        data.toString(),
                        "--port",
                        "0")
                .redirectError(Redirect.to(home.resolve("server.log").toFile()))
                .start();
        BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        String line = said.readLine();
        Matcher at = Pattern.compile("http://\\S+").matcher(line == null ? "" : line);
        if (!at.find()) {
            process.destroy();
            throw new IOException("the server did not start; its words are in " + home.resolve("server.log"));
        }
        return new ServedHerd(process, URI.create(at.group()), data, events, keys);
    }

    private static void draw(int calves, Path file, Path data) throws IOException {
        SimulateSeason.write(StandardModel.model(), calves, SEED, file);
        try (Records records = Records.open(data.toString(), Clock.systemUTC());
                BufferedReader lines = Files.newBufferedReader(file)) {
            List<Reading> readings = new ArrayList<>();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                readings.add(records.reader().read(line));
                if (readings.size() == BATCH) {
                    records.take(readings, false);
                    readings.clear();
                }
            }
            records.take(readings, false);
        }
    }

    URI at(String path) {
        return address.resolve(path);
    }

    Path folder() {
        return folder;
    }

    /** The number of the last event before the server started. */
    long events() {
        return events;
    }

    List<String> calves() {
        return calves;
    }

    boolean alive() {
        return process.isAlive();
    }

    /** Megabytes of heap in use after a full collection. */
    double heapAfterCollection() throws IOException {
        String pid = Long.toString(process.pid());
        said(pid, "GC.run");
        Matcher used = USED.matcher(said(pid, "GC.heap_info").replaceAll("(?s)Metaspace.*", ""));
        double kilobytes = 0;
        while (used.find()) {
            kilobytes += Double.parseDouble(used.group(1));
        }
        return kilobytes / 1024;
    }

    private static String said(String... question) throws IOException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "jcmd").toString()));
        command.addAll(List.of(question));
        Process jcmd = new ProcessBuilder(command).redirectErrorStream(true).start();
        return new String(jcmd.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        process.destroy();
        try {
            process.waitFor();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }
}
