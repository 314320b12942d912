package wisp.site;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Gives out the description of the HTTP interface. */
final class OpenApi {
    private OpenApi() {}

    /** {@code GET /api/v1/openapi.json}. */
    static void show(Context ctx) {
        try (InputStream file = OpenApi.class.getResourceAsStream("openapi.json")) {
            ctx.contentType("application/json").result(file.readAllBytes());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
