package wisp.log;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The chain that binds every event to all before it.
 *
 * <pre>
 * hash(0) = "0000…0000"                                        64 zeros
 * hash(n) = hex(SHA-256(UTF-8(hash(n-1) + canonical(n))))      64 small hex digits
 * </pre>
 *
 * <p>{@code canonical(n)} is the event's JSON in the form of RFC 8785, {@code recordedtime} included, {@code sequence}
 * and {@code hash} not. The previous hash goes in as its 64 characters of text, so that the chain can be checked by
 * hand: {@code printf '%s%s' "$previous" "$json" | sha256sum}.
 */
public final class HashChain {
    /** What stands for the hash before the first event. */
    public static final String BEGINNING = "0".repeat(64);

    private HashChain() {}

    /** The hash of an event that follows the one with the previous hash. */
    public static String next(String previous, String canonicalJson) {
        MessageDigest digest = sha256();
        digest.update(previous.getBytes(StandardCharsets.US_ASCII));
        return HexFormat.of().formatHex(digest.digest(canonicalJson.getBytes(StandardCharsets.UTF_8)));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("Every Java has SHA-256", never);
        }
    }
}
