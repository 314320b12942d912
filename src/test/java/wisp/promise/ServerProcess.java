package wisp.promise;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program's {@code serve} as a process of its own, over a data folder, on a free port of this machine. */
final class ServerProcess implements AutoCloseable {
    private static final Pattern SERVES = Pattern.compile("Wisp serves .* at http://127\\.0\\.0\\.1:(\\d+)/ .*");
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final Process process;
    private final HttpClient client =
            HttpClient.newBuilder().connectTimeout(PATIENCE).build();
    private final List<String> said = new ArrayList<>();
    private int port;

    private ServerProcess(Process process) {
        this.process = process;
    }

    /** Starts it and does not wait until it serves. */
    static ServerProcess launch(Path data) throws IOException {
        return launch(data, List.of());
    }

    /** Starts it under another program, such as {@code sh -c 'ulimit -f 100; exec "$@"' sh}. */
    static ServerProcess launch(Path data, List<String> under) throws IOException {
        // a process that is killed cannot remove what SQLite's driver unpacks there
        Path temporary = Files.createDirectories(data.resolveSibling(data.getFileName() + "-temporary"));
        List<String> command = new ArrayList<>(under);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-Djava.io.tmpdir=" + temporary,
                // on the tests' class path another one would be found first
                "-Dlogback.configurationFile=" + ServerProcess.class.getResource("/logback.xml"),
                "-cp",
                System.getProperty("java.class.path"),
                "wisp.cli.Wisp",
                "serve",
                "--port",
                "0",
                "--data",
                data.toString()));
        return new ServerProcess(
                new ProcessBuilder(command).redirectErrorStream(true).start());
    }

    /**
     * Starts it with a log of JSON that tells of every request, written to a file, and waits until it serves. The shell
     * becomes the program, so that a signal reaches it.
     */
    static ServerProcess logging(Path data, Path log) throws IOException {
        String shell = "export WISP_LOG_FORMAT=json WISP_LOG_LEVEL=DEBUG; exec \"$@\" 2> \"$0\"";
        return launch(data, List.of("sh", "-c", shell, log.toString())).serving();
    }

    /** Starts it and waits until it serves. */
    static ServerProcess start(Path data) throws IOException {
        return launch(data).serving();
    }

    /** Waits until it serves. */
    ServerProcess serving() throws IOException {
        BufferedReader out = process.inputReader();
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            said.add(line);
            Matcher serves = SERVES.matcher(line);
            if (serves.matches()) {
                port = Integer.parseInt(serves.group(1));
                drain(out);
                return this;
            }
        }
        throw new AssertionError("the server ended without serving: " + said);
    }

    /** Reads on, so that a server that says much is not held up. */
    private static void drain(BufferedReader out) {
        Thread reading = new Thread(() -> {
            try {
                while (out.readLine() != null) {
                    // What it says after it has begun to serve is not asked for.
                }
            } catch (IOException ended) {
                // It was killed.
            }
        });
        reading.setDaemon(true);
        reading.start();
    }

    /** Waits until it ends by itself: all it said, and its exit code at the end. */
    String fate() throws IOException, InterruptedException {
        BufferedReader out = process.inputReader();
        for (String line = out.readLine(); line != null && !SERVES.matcher(line).matches(); line = out.readLine()) {
            said.add(line);
        }
        assertTrue(process.waitFor(1, TimeUnit.MINUTES), "it serves");
        return String.join("\n", said) + "\nexit code " + process.exitValue();
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(request(path).build(), BodyHandlers.ofString());
    }

    /** Sends events, one a line. */
    HttpResponse<String> post(String lines) throws IOException, InterruptedException {
        HttpRequest request = request("/api/v1/events")
                .header("Content-Type", "application/x-ndjson")
                .POST(BodyPublishers.ofString(lines))
                .build();
        return client.send(request, BodyHandlers.ofString());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .timeout(PATIENCE);
    }

    /** The port that it serves on. */
    int port() {
        return port;
    }

    /** Asks it to stop, as a service manager does (SIGTERM), and does not wait. */
    void askToStop() {
        assertTrue(process.supportsNormalTermination(), "this system has SIGTERM");
        process.destroy();
    }

    /** The exit code once it has ended. */
    int exitCode() throws InterruptedException {
        assertTrue(process.waitFor(1, TimeUnit.MINUTES), "it goes on");
        return process.exitValue();
    }

    /** The process's number. */
    long pid() {
        return process.pid();
    }

    /** Kills it as the kernel does, in the middle of whatever it does. */
    void kill() throws InterruptedException {
        assertNotNull(process.toHandle());
        process.destroyForcibly();
        assertTrue(process.waitFor(1, TimeUnit.MINUTES));
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
