package wisp.site;

import io.javalin.http.Context;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The names under which a server that only this machine may use can be called. Any other name in the Host header is
 * refused: a foreign page could otherwise give its own name this machine's address and read the records from there.
 */
final class OwnHosts {
    private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

    private final String bound;
    private final boolean loopbackAlone;

    OwnHosts(String bound) {
        this.bound = bound.toLowerCase(Locale.ROOT);
        this.loopbackAlone = loopback(bound);
    }

    /** Lets a request through, or throws. */
    void check(Context ctx) {
        String host = ctx.host();
        if (loopbackAlone && host != null && !own(name(host))) {
            throw new Problem(
                    421,
                    "This server does not go by that name",
                    "It answers this machine alone: open it as http://localhost:"
                            + ctx.req().getLocalPort() + "/, or start it with --bind and the address that others use.",
                    List.of());
        }
    }

    private boolean own(String name) {
        return LOOPBACK.contains(name) || name.equals(bound) || name.equals("[" + bound + "]");
    }

    private static String name(String host) {
        return host.replaceFirst(":\\d*$", "").toLowerCase(Locale.ROOT);
    }

    private static boolean loopback(String address) {
        try {
            return InetAddress.getByName(address).isLoopbackAddress();
        } catch (UnknownHostException unknown) {
            return false;
        }
    }
}
