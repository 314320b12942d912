package wisp.backup;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import wisp.log.ChainHead;

/**
 * What a backup says of itself, its first entry.
 *
 * @param format the number of its form; this Wisp writes 1
 * @param head the newest event in it
 * @param made when it was made, RFC 3339
 */
record BackupHead(int format, ChainHead head, String made) {
    static final int FORMAT = 1;
    private static final JsonMapper JSON = new JsonMapper();

    String json() {
        return JSON.createObjectNode()
                        .put("format", format)
                        .put("events", head.sequence())
                        .put("head", head.hash())
                        .put("made", made)
                        .toPrettyString()
                + "\n";
    }

    /** Reads it; null where the text is something else. */
    static BackupHead read(String text) {
        try {
            JsonNode json = JSON.readTree(text);
            if (!json.path("format").isInt() || !json.path("events").canConvertToLong()) {
                return null;
            }
            ChainHead head = new ChainHead(
                    json.get("events").longValue(), json.path("head").asText());
            return new BackupHead(
                    json.get("format").intValue(), head, json.path("made").asText());
        } catch (JsonProcessingException notJson) {
            return null;
        }
    }
}
