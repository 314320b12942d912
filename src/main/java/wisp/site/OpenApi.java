package wisp.site;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Gives out the description of the HTTP interface: its paths, and the schemas of its answers. */
final class OpenApi {
    private static final ObjectMapper JSON = new ObjectMapper();

    private OpenApi() {}

    /** {@code GET /api/v1/openapi.json}. */
    static void show(Context ctx) {
        ctx.contentType("application/json").result(whole().toString());
    }

    private static ObjectNode whole() {
        ObjectNode whole = read("openapi.json");
        ObjectNode answers = read("openapi-answers.json");
        ((ObjectNode) whole.at("/components/schemas")).setAll((ObjectNode) answers.at("/components/schemas"));
        return whole;
    }

    private static ObjectNode read(String name) {
        try (InputStream file = OpenApi.class.getResourceAsStream(name)) {
            return (ObjectNode) JSON.readTree(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
