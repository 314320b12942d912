package wisp.event;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.OffsetDateTime;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads the attributes of a CloudEvents 1.0 envelope (specification sections "Required" and "Optional Attributes"). */
final class Envelope {
    private static final Pattern ATTRIBUTE = Pattern.compile("[a-z0-9]+|data_base64");

    private static final Set<String> KNOWN = Set.of(
            "specversion",
            "id",
            "source",
            "type",
            "subject",
            "time",
            "data",
            "data_base64",
            "datacontenttype",
            "dataschema",
            "recordedtime",
            "recordedby");

    private final ObjectNode object;
    private final List<Fault> faults;

    Envelope(ObjectNode object, List<Fault> faults) {
        this.object = object;
        this.faults = faults;
        for (Iterator<String> names = object.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!ATTRIBUTE.matcher(name).matches()) {
                fault(
                        name,
                        "An attribute's name may hold only small letters and digits.",
                        "Rename it or put it in data.");
            } else if (!KNOWN.contains(name)) {
                extension(name, object.get(name));
            }
        }
    }

    /** CloudEvents knows text, true or false, and whole numbers of 32 bits; canonical JSON keeps no larger ones. */
    private void extension(String name, JsonNode value) {
        boolean whole = value.isIntegralNumber() && value.canConvertToInt();
        if (!value.isTextual() && !value.isBoolean() && !value.isNull() && !whole) {
            fault(
                    name,
                    "An attribute of the envelope may be text, true, false or a whole number of 32 bits.",
                    "Write it in quotation marks, or put it in data.");
        }
    }

    void exactly(String field, String wanted) {
        JsonNode node = object.get(field);
        if (node == null || !wanted.equals(node.textValue())) {
            fault(field, "It is missing or not \"" + wanted + "\".", "Write \"" + wanted + "\".");
        }
    }

    /** A required name: not empty, not too long, no control characters. */
    String name(String field, int longest) {
        String value = text(field);
        if (value == null) {
            if (object.get(field) == null || object.get(field).isNull()) {
                fault(field, "It is missing.", "Give it as text; every event needs one.");
            }
            return null;
        }
        if (value.length() > longest || value.chars().anyMatch(Character::isISOControl)) {
            fault(
                    field,
                    "It is too long or holds control characters.",
                    "Keep it under " + longest + " plain characters.");
            return null;
        }
        return value;
    }

    String text(String field) {
        JsonNode node = object.get(field);
        if (node == null || node.isNull()) {
            return null;
        }
        if (!node.isTextual() || node.textValue().isBlank()) {
            fault(field, "It must be text that is not empty.", "Write it in quotation marks.");
            return null;
        }
        return node.textValue();
    }

    OffsetDateTime time(String field, boolean required) {
        String value = required ? name(field, 64) : text(field);
        return value == null ? null : Rfc3339.read(value, (problem, mend) -> fault(field, problem, mend));
    }

    void jsonData() {
        String media = text("datacontenttype");
        if (media != null && !media.matches("(?i)application/(.+\\+)?json(\\s*;.*)?")) {
            fault("datacontenttype", "Data must be JSON, not " + media + ".", "Send application/json.");
        }
        if (object.has("data_base64")) {
            fault("data_base64", "Data must be JSON, not bytes.", "Send the fields in data.");
        }
    }

    Optional<EventType> type() {
        String name = name("type", 64);
        if (name == null) {
            return Optional.empty();
        }
        Optional<EventType> type = EventType.named(name);
        if (type.isEmpty()) {
            fault("type", "There is no event \"" + name + "\".", "Use one of: " + EventType.allNames() + ".");
        }
        return type;
    }

    /** The data object; an event without data has an empty one. */
    JsonNode data() {
        JsonNode data = object.get("data");
        if (data == null || data.isNull()) {
            return JsonNodeFactory.instance.objectNode();
        }
        if (!data.isObject()) {
            fault("data", "It must be a JSON object.", "Write {\"field\": value, …}.");
            return null;
        }
        return data;
    }

    private void fault(String field, String problem, String mend) {
        faults.add(new Fault(field, problem, mend));
    }
}
