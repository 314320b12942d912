package wisp.interchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.Set;
import wisp.event.Fault;

/** One JSON value found in a file: a CloudEvent, or an ICAR resource, or a collection of such. */
final class JsonRecord {
    /** Reads one value and nothing after it. */
    static final JsonMapper STRICT = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /** The same for a value among others. */
    static final JsonMapper STREAM = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private JsonRecord() {}

    /** The row that this value makes. */
    static Row row(long line, int index, JsonNode node, Set<String> leftOut) {
        if (node.isObject() && node.has("resourceType") && !node.has("specversion")) {
            return IcarReader.row(line, index, node, leftOut);
        }
        return Row.sound(line, index, List.of(node));
    }

    static Fault notJson(JsonProcessingException wrong) {
        String column = wrong.getLocation() == null
                ? ""
                : " at column " + wrong.getLocation().getColumnNr();
        if (wrong.getOriginalMessage().startsWith("Trailing token")) {
            return new Fault("", "More than one JSON value stands in the line.", "Write one a line.");
        }
        String message = wrong.getOriginalMessage().replaceAll("\\s*\\R.*", "").replaceFirst("\\.$", "");
        return new Fault("", "It is not JSON" + column + ": " + message + ".", "Write one JSON object.");
    }
}
