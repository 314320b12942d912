package wisp.site;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import io.javalin.http.Context;
import wisp.records.Records;

/** Says whether the server lives and can answer. */
final class Health {
    private final Records records;

    Health(Records records) {
        this.records = records;
    }

    /** {@code GET /health}: 200 when the log can be read. */
    void show(Context ctx) {
        long last = records.log().last();
        ctx.json(JsonNodeFactory.instance
                .objectNode()
                .put("status", "ok")
                .put("live", true)
                .put("ready", true)
                .put("sequence", last));
    }
}
