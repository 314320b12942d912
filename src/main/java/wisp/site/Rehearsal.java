package wisp.site;

import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.InetAddress;
import java.net.URI;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Asks a server that has just started for each kind of page a few times, so that the first visitor does not wait for
 * code to be loaded and compiled. What comes is thrown away, and nothing is kept of it.
 */
final class Rehearsal {
    private static final int ROUNDS = 4;
    private static final int TIMEOUT_MS = 30_000;
    private static final int END_MS_MOST = 2_000;
    private static final Logger LOGGER = LoggerFactory.getLogger(Rehearsal.class);

    private final Beforehand beforehand;
    private final String host;
    private final int port;
    private final List<String> addresses;
    private final Thread thread = new Thread(this::run, "rehearsal");
    private volatile boolean stopped;

    /**
     * A rehearsal of these addresses, each with its parameters.
     *
     * @param beforehand makes the front pages, which come first
     * @param host the address that the server listens on
     */
    Rehearsal(Beforehand beforehand, String host, int port, List<String> addresses) {
        this.beforehand = beforehand;
        this.host = host;
        this.port = port;
        this.addresses = addresses;
    }

    void start() {
        thread.setDaemon(true);
        thread.start();
    }

    /** Ends it; the page that it waits for is let go. */
    void stop() {
        stopped = true;
        thread.interrupt();
        try {
            thread.join(END_MS_MOST);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        try {
            beforehand.awaitFront();
            String reached = InetAddress.getByName(host).isAnyLocalAddress()
                    ? InetAddress.getLoopbackAddress().getHostAddress()
                    : host;
            for (int round = 0; round < ROUNDS; round++) {
                for (String address : addresses) {
                    ask(reached, address);
                }
            }
            LOGGER.debug("Each kind of page was made {} times.", ROUNDS);
        } catch (IOException broken) {
            LOGGER.debug("The rehearsal ended early: {}", broken.getMessage());
        } catch (InterruptedException ended) {
            LOGGER.debug("The rehearsal ended early: the server stops.");
        }
    }

    private void ask(String reached, String address) throws IOException, InterruptedException {
        if (stopped) {
            throw new InterruptedException();
        }
        String name = reached.contains(":") ? "[" + reached + "]" : reached;
        URI uri = URI.create("http://" + name + ":" + port + address);
        HttpURLConnection connection = (HttpURLConnection) uri.toURL().openConnection();
        connection.setConnectTimeout(TIMEOUT_MS);
        connection.setReadTimeout(TIMEOUT_MS);
        connection.setRequestProperty("Cache-Control", Shelf.NO_STORE);
        try (InputStream body =
                connection.getResponseCode() < 400 ? connection.getInputStream() : connection.getErrorStream()) {
            if (body != null) {
                body.readAllBytes();
            }
        }
    }
}
