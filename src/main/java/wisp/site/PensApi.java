package wisp.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import wisp.cohort.Cohort;
import wisp.event.EventType;
import wisp.history.LifeEvent;
import wisp.records.Records;

/** Pens as JSON: how many calves were born in each, and when each was last bedded and cleaned. */
final class PensApi {
    private final Records records;

    PensApi(Records records) {
        this.records = records;
    }

    /** {@code GET /api/v1/pens}. */
    void list(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        Cohort cohort = asked.cohort();
        Map<String, Integer> births = new TreeMap<>();
        cohort.pens().keySet().forEach(pen -> births.put(pen, 0));
        for (int row : asked.selection().calves(cohort)) {
            String pen = cohort.lives().get(row).birth().pen();
            if (pen != null) {
                births.merge(pen, 1, Integer::sum);
            }
        }
        ZoneId zone = cohort.farm().latest().zone();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("season", asked.season());
        json.put("as_of", cohort.cut().toString());
        ArrayNode pens = json.putArray("pens");
        births.forEach((pen, count) -> {
            List<LifeEvent> events = cohort.pens().getOrDefault(pen, List.of());
            ObjectNode one = pens.addObject();
            one.put("pen", pen);
            one.put("births", count);
            one.put("last_bedded", last(events, EventType.PEN_BEDDED, zone));
            one.put("last_cleaned", last(events, EventType.PEN_CLEANED, zone));
        });
        ctx.json(json);
    }

    private static String last(List<LifeEvent> events, EventType type, ZoneId zone) {
        return events.stream()
                .filter(event -> event.type() == type)
                .reduce((earlier, later) -> later)
                .map(event -> CalfJson.time(event.time(), zone))
                .orElse(null);
    }
}
