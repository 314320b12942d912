package wisp.log;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** A line between the driver and PostgreSQL that can be cut just as a batch is being kept. */
final class CuttingProxy implements AutoCloseable {
    /** When the line is cut. */
    enum Cut {
        NEVER,
        /** The server never hears of the commit. */
        BEFORE_THE_COMMIT,
        /** The server commits, and nobody hears of it. */
        AFTER_THE_COMMIT
    }

    private final ServerSocket ear;
    private final int to;
    private volatile Cut cut = Cut.NEVER;

    CuttingProxy(int to) throws IOException {
        this.to = to;
        this.ear = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        daemon(this::accept);
    }

    int port() {
        return ear.getLocalPort();
    }

    /** Cuts the line at the next commit, once. */
    void cutAtTheNext(Cut when) {
        cut = when;
    }

    private void accept() {
        while (!ear.isClosed()) {
            try {
                Socket client = ear.accept();
                Socket server = new Socket(InetAddress.getLoopbackAddress(), to);
                daemon(() -> forward(client, server, true));
                daemon(() -> forward(server, client, false));
            } catch (IOException closed) {
                return;
            }
        }
    }

    private void forward(Socket from, Socket to, boolean fromClient) {
        try (from;
                to) {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            byte[] bytes = new byte[65_536];
            for (int many = in.read(bytes); many >= 0; many = in.read(bytes)) {
                boolean commit = fromClient
                        && cut != Cut.NEVER
                        && new String(bytes, 0, many, StandardCharsets.ISO_8859_1).contains("COMMIT");
                if (commit && cut == Cut.BEFORE_THE_COMMIT) {
                    cut = Cut.NEVER;
                    return;
                }
                if (commit) {
                    // no answer goes back any more
                    from.shutdownOutput();
                    cut = Cut.NEVER;
                }
                out.write(bytes, 0, many);
            }
        } catch (IOException broken) {
            // The other direction ends with it.
        }
    }

    private static void daemon(Runnable work) {
        Thread thread = new Thread(work, "proxy");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() {
        try {
            ear.close();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
