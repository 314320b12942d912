package wisp.site;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Reads answers, for tests. */
final class Json {
    private static final JsonMapper MAPPER = new JsonMapper();

    private Json() {}

    static JsonNode read(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException wrong) {
            throw new IllegalArgumentException(text, wrong);
        }
    }

    /** Place and field of every fault, in order. */
    static List<String> refused(String body) {
        List<String> refused = new ArrayList<>();
        read(body)
                .get("refused")
                .forEach(one -> refused.add(
                        one.get("index").asInt() + " " + one.get("field").asText()));
        return refused;
    }

    /** Field and whole sentence of every fault of a problem. */
    static List<String> faults(String body) {
        List<String> faults = new ArrayList<>();
        read(body)
                .get("faults")
                .forEach(one -> faults.add(one.get("field").asText() + ": "
                        + one.get("problem").asText() + " " + one.get("mend").asText()));
        return faults;
    }

    /** An object's fields in a given order; a field that is not named, or not there, fails. */
    static String ordered(String body, String names) {
        JsonNode node = read(body);
        ObjectNode ordered = MAPPER.createObjectNode();
        for (String name : names.split(",")) {
            ordered.set(name, node.required(name));
        }
        if (ordered.size() != node.size()) {
            throw new IllegalArgumentException("other fields than " + names + ": " + body);
        }
        return ordered.toString();
    }
}
