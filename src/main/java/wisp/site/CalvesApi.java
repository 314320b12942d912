package wisp.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.Locale;
import java.util.Set;
import wisp.cohort.Cohort;
import wisp.history.Life;
import wisp.indicator.MarkedEvent;
import wisp.indicator.Verdict;
import wisp.records.Records;

/** Calves as JSON: all that are asked for, those behind a figure, and one whole life. */
final class CalvesApi {
    private final Records records;

    CalvesApi(Records records) {
        this.records = records;
    }

    /** {@code GET /api/v1/calves}. */
    void list(Context ctx) {
        Asked asked = Asked.of(ctx, records, CalvesBehind.PARAMETERS);
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("season", asked.season());
        json.put("as_of", asked.cohort().cut().toString());
        if (ctx.queryParam("figure") == null) {
            ArrayNode calves = JsonNodeFactory.instance.arrayNode();
            for (int row : asked.selection().calves(asked.cohort())) {
                calves.add(CalfJson.brief(asked.cohort().lives().get(row)));
            }
            json.put("count", calves.size());
            json.set("calves", calves);
        } else {
            CalvesBehind behind = CalvesBehind.of(ctx, records, asked);
            json.put("figure", behind.estimate().indicator().id());
            json.put("part", behind.part().word());
            json.put("count", behind.count());
            ArrayNode calves = json.putArray("calves");
            behind.verdicts().forEach(verdict -> calves.add(behind(asked.cohort(), verdict)));
            behind.marked().forEach(marked -> calves.add(behind(marked)));
        }
        ctx.json(json);
    }

    /** {@code GET /api/v1/calves/{key}}. */
    void one(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        String key = ctx.pathParam("key");
        int row = asked.cohort().rowOf(key);
        if (row < 0) {
            throw Problem.notFound("No animal has the key " + key + ".");
        }
        Life life = asked.cohort().lives().get(row);
        ObjectNode json = CalfJson.whole(life);
        json.set("samples", SampleJson.of(life, SamplesPage.moment(asked)));
        ctx.json(json);
    }

    private static ObjectNode behind(MarkedEvent marked) {
        ObjectNode json = CalfJson.brief(marked.life());
        json.put("part", "excluded");
        json.put("reason", marked.mark().kind().word());
        json.put("pending", false);
        json.put("count", 0);
        json.put("days", 0.0);
        json.set(
                "because",
                CalfJson.event(marked.mark().event(), marked.life().farm().zone()));
        return json;
    }

    private static ObjectNode behind(Cohort cohort, Verdict verdict) {
        Life life = cohort.lives().get(verdict.row());
        ObjectNode json = CalfJson.brief(life);
        json.put("part", verdict.part().name().toLowerCase(Locale.ROOT));
        json.put("reason", verdict.reason().isEmpty() ? null : verdict.reason());
        json.put("pending", verdict.pending());
        json.put("count", verdict.count());
        json.put("days", verdict.days());
        json.set(
                "because",
                verdict.because() == null
                        ? null
                        : CalfJson.event(verdict.because(), life.farm().zone()));
        return json;
    }
}
