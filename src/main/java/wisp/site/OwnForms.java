package wisp.site;

import io.javalin.http.Context;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;

/**
 * Lets only forms of this server's own pages record anything, so that a foreign page open in the same browser cannot.
 * A form must come from the same origin, as the browser tells ({@code Sec-Fetch-Site}, Fetch Metadata; else
 * {@code Origin}, RFC 6454), and carry a token that only this server's pages hold.
 */
final class OwnForms {
    /** The field of the token. */
    static final String FIELD = "token";

    private static final int BYTES = 16;
    private final String token;

    OwnForms() {
        byte[] random = new byte[BYTES];
        new SecureRandom().nextBytes(random);
        token = HexFormat.of().formatHex(random);
    }

    /** What every form must send along. */
    String token() {
        return token;
    }

    /**
     * Refuses a form of another origin.
     *
     * @throws Problem where the browser says that it comes from elsewhere
     */
    void sameOrigin(Context ctx) {
        String site = ctx.header("Sec-Fetch-Site");
        String origin = ctx.header("Origin");
        boolean own =
                site == null ? origin == null || authority(origin).equals(ctx.host()) : site.equals("same-origin");
        if (!own) {
            throw new Problem(
                    403,
                    "This form comes from elsewhere",
                    "Only Wisp's own pages may record anything: open the page here and send its form from there.",
                    List.of());
        }
    }

    /** Whether a form carries this server's token. */
    boolean tokenFits(Context ctx) {
        String sent = ctx.formParam(FIELD);
        return sent != null
                && MessageDigest.isEqual(sent.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    }

    private static String authority(String origin) {
        try {
            String authority = new URI(origin).getRawAuthority();
            return authority == null ? "" : authority;
        } catch (URISyntaxException opaque) {
            return "";
        }
    }
}
