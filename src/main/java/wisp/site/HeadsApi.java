package wisp.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import wisp.log.DayHead;
import wisp.log.DayHeads;
import wisp.records.Records;

/** The log's head now and at the end of each day of recording, so that it can be noted outside. */
final class HeadsApi {
    private final Records records;

    HeadsApi(Records records) {
        this.records = records;
    }

    /** {@code GET /api/v1/log/heads}. */
    void list(Context ctx) {
        DayHeads heads = records.dayHeads();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("zone", heads.zone().getId());
        json.put("sequence", heads.head().sequence());
        json.put("hash", heads.head().hash());
        ArrayNode days = json.putArray("days");
        for (DayHead day : heads.days()) {
            days.addObject()
                    .put("day", day.day().toString())
                    .put("sequence", day.head().sequence())
                    .put("hash", day.head().hash());
        }
        ctx.json(json);
    }
}
