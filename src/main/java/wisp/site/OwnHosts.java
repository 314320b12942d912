package wisp.site;

import io.javalin.http.Context;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The names under which a server can be called: those of this machine where only it may use the server, the address
 * that it listens on, and the names that its starter gave. Any other name in the Host header is refused: a foreign page
 * could otherwise give its own name this machine's address and read the records from there. A server that others may
 * use and that has no names given goes by any.
 */
final class OwnHosts {
    private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

    private final String bound;
    private final Set<String> given;
    private final boolean any;

    OwnHosts(String bound, Set<String> names) {
        this.bound = bound.toLowerCase(Locale.ROOT);
        this.given = names.stream().map(name -> name.toLowerCase(Locale.ROOT)).collect(Collectors.toUnmodifiableSet());
        this.any = names.isEmpty() && !loopback(bound);
    }

    /** Lets a request through, or throws. */
    void check(Context ctx) {
        String host = ctx.host();
        if (!any && host != null && !own(name(host))) {
            throw new Problem(
                    421,
                    "This server does not go by that name",
                    "On this machine it is http://localhost:" + ctx.req().getLocalPort()
                            + "/. For others, start it with --bind and their address for it, or behind a proxy with"
                            + " --name and the proxy's name.",
                    List.of());
        }
    }

    private boolean own(String name) {
        return LOOPBACK.contains(name) || name.equals(bound) || name.equals("[" + bound + "]") || given.contains(name);
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
