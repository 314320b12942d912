package wisp.question.navels;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import wisp.indicator.IntervalJson;

/** Writes estimates of answers as JSON; what is not finite or not there is null, with the reason in {@code why}. */
final class MeasuresJson {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private MeasuresJson() {}

    /** {@code {value, low, high, method}}, or nulls and {@code why}. */
    static ObjectNode of(Measured measured) {
        if (!measured.known()) {
            return JSON.objectNode()
                    .putNull("value")
                    .putNull("low")
                    .putNull("high")
                    .put("why", measured.why());
        }
        ObjectNode json = IntervalJson.of(measured.interval());
        if (!measured.finite()) {
            json.put("why", "A group has no case, so that the ratio has no upper limit.");
        }
        return json;
    }

    /** {@code {statistic, p, method}}, the statistic under a name of its own; or nulls and {@code why}. */
    static ObjectNode of(Tested tested, String statistic) {
        ObjectNode json = JSON.objectNode();
        IntervalJson.put(json, statistic, tested.statistic());
        IntervalJson.put(json, "p", tested.p());
        json.put(tested.known() ? "method" : "why", tested.known() ? tested.method() : tested.why());
        return json;
    }
}
