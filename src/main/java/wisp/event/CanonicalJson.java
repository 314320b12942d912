package wisp.event;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.erdtman.jcs.JsonCanonicalizer;

/** JSON in the one form of RFC 8785 (JSON Canonicalization Scheme), by the library of the RFC's own authors. */
public final class CanonicalJson {
    private CanonicalJson() {}

    /**
     * The canonical text of a JSON object or array.
     *
     * @throws UncheckedIOException where the text is not JSON
     */
    public static String of(String json) {
        try {
            return new JsonCanonicalizer(json).getEncodedString();
        } catch (IOException notJson) {
            throw new UncheckedIOException(notJson);
        }
    }
}
