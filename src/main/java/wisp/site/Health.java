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

    /** {@code GET /health} and {@code /health/ready}: 200 when the log can be read; else its failure, 503. */
    void ready(Context ctx) {
        long last = records.log().last();
        ctx.json(JsonNodeFactory.instance
                .objectNode()
                .put("status", "ok")
                .put("live", true)
                .put("ready", true)
                .put("sequence", last));
    }

    /** {@code GET /health/live}: 200 as long as the process answers, whatever the log's state. */
    void live(Context ctx) {
        ctx.json(JsonNodeFactory.instance.objectNode().put("status", "ok").put("live", true));
    }
}
