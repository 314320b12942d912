package wisp.question;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import wisp.statistics.Interval;

/** Writes estimates of answers as JSON; what is not finite or not there is null, with the reason in {@code why}. */
final class MeasuresJson {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private MeasuresJson() {}

    /** {@code {value, low, high, method}}, or nulls and {@code why}. */
    static ObjectNode of(Measured measured) {
        ObjectNode json = JSON.objectNode();
        if (!measured.known()) {
            return json.putNull("value").putNull("low").putNull("high").put("why", measured.why());
        }
        Interval interval = measured.interval();
        put(json, "value", interval.value());
        put(json, "low", interval.low());
        put(json, "high", interval.high());
        json.put("method", interval.method());
        if (!measured.finite()) {
            json.put("why", "A group has no case, so that the ratio has no upper limit.");
        }
        return json;
    }

    /** {@code {statistic, p, method}}, the statistic under a name of its own; or nulls and {@code why}. */
    static ObjectNode of(Tested tested, String statistic) {
        ObjectNode json = JSON.objectNode();
        put(json, statistic, tested.statistic());
        put(json, "p", tested.p());
        json.put(tested.known() ? "method" : "why", tested.known() ? tested.method() : tested.why());
        return json;
    }

    /** Puts a number, or null where it is not finite. */
    static void put(ObjectNode json, String name, double value) {
        if (Double.isFinite(value)) {
            json.put(name, value);
        } else {
            json.putNull(name);
        }
    }
}
