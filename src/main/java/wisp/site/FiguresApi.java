package wisp.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.Collection;
import java.util.Set;
import wisp.indicator.EstimateJson;
import wisp.indicator.Indicator;
import wisp.records.Records;

/** Figures as JSON. */
final class FiguresApi {
    private final Records records;

    FiguresApi(Records records) {
        this.records = records;
    }

    /** {@code GET /api/v1/figures}. */
    void all(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        ctx.json(json(records, asked, records.definitions().indicators()));
    }

    /** {@code GET /api/v1/figures/{id}}. */
    void one(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        Indicator indicator = indicator(records, ctx.pathParam("id"));
        ctx.json(EstimateJson.of(
                records.figures().of(indicator, asked.cohort(), asked.selection()),
                asked.selection(),
                records.definitions()));
    }

    static ObjectNode json(Records records, Asked asked, Collection<Indicator> indicators) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("season", asked.season());
        json.put("as_of", asked.cohort().cut().toString());
        ArrayNode figures = json.putArray("figures");
        for (Indicator indicator : indicators) {
            figures.add(EstimateJson.of(
                    records.figures().of(indicator, asked.cohort(), asked.selection()),
                    asked.selection(),
                    records.definitions()));
        }
        return json;
    }

    static Indicator indicator(Records records, String id) {
        return records.definitions()
                .indicator(id)
                .orElseThrow(() -> Problem.notFound("There is no figure " + id + "; /api/v1/figures lists them."));
    }
}
