package wisp.indicator;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import wisp.statistics.Interval;

/** Writes intervals and numbers as JSON, which has no number for what is not finite. */
public final class IntervalJson {
    private IntervalJson() {}

    /** Value, limits and method; null where there is no interval. */
    public static ObjectNode of(Interval interval) {
        if (interval == null) {
            return null;
        }
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        put(json, "value", interval.value());
        put(json, "low", interval.low());
        put(json, "high", interval.high());
        json.put("method", interval.method());
        return json;
    }

    /** Puts a number, or null where it is not finite. */
    public static void put(ObjectNode json, String name, double value) {
        if (Double.isFinite(value)) {
            json.put(name, value);
        } else {
            json.putNull(name);
        }
    }
}
