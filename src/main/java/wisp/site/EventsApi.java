package wisp.site;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import wisp.event.EventReader;
import wisp.event.EventReader.Reading;
import wisp.event.Fault;
import wisp.log.StoredEvent;
import wisp.records.Intake;
import wisp.records.Records;

/** Takes events in over HTTP and gives them out again. */
final class EventsApi {
    private static final int LIMIT = 1_000;
    private static final int LIMIT_MOST = 10_000;
    private static final long SEQUENCE_MOST = 999_999_999_999_999_999L;
    private static final Set<String> LINES = Set.of("application/x-ndjson", "application/ndjson", "application/jsonl");
    private static final Set<String> DOCUMENTS =
            Set.of("application/cloudevents-batch+json", "application/cloudevents+json", "application/json");
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final Records records;
    private final Posting posting;
    private final Meters meters;

    EventsApi(Records records, Posting posting, Meters meters) {
        this.records = records;
        this.posting = posting;
        this.meters = meters;
    }

    /** {@code POST /api/v1/events}. */
    void take(Context ctx) {
        known(ctx, Set.of("partial"));
        boolean partial = partial(ctx);
        List<Reading> readings = readings(ctx);
        Intake intake = posting.of(ctx, () -> records.take(readings, partial));
        meters.offered(intake);
        boolean nothing = !intake.refused().isEmpty() && (!partial || intake.accepted() + intake.duplicate() == 0);
        ObjectNode json = json(intake);
        if (nothing) {
            json.put("type", "about:blank");
            json.put("title", "Nothing was recorded");
            json.put("status", 422);
            json.put("detail", "The faults stand under refused; mend them and send the whole again.");
        }
        ctx.status(nothing ? 422 : 201);
        ctx.contentType(nothing ? "application/problem+json" : "application/json")
                .result(json.toString());
    }

    /** {@code GET /api/v1/events?after=N&limit=M}: one event a line, with its sequence and hash. */
    void give(Context ctx) {
        known(ctx, Set.of("after", "limit"));
        long after = number(ctx, "after", 0, 0, SEQUENCE_MOST);
        int limit = (int) number(ctx, "limit", LIMIT, 1, LIMIT_MOST);
        StringBuilder lines = new StringBuilder();
        for (StoredEvent stored : records.log().read(after, limit)) {
            lines.append(line(stored)).append('\n');
        }
        ctx.contentType("application/x-ndjson").result(lines.toString());
    }

    /** An event as one line of JSON, with what the log adds. */
    static String line(StoredEvent stored) {
        try {
            ObjectNode json = (ObjectNode) JSON.readTree(stored.event().json());
            json.put("sequence", stored.sequence());
            json.put("hash", stored.hash());
            return json.toString();
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("the log holds an event that is not JSON", impossible);
        }
    }

    private List<Reading> readings(Context ctx) {
        String type = mediaType(ctx);
        EventReader reader = records.reader();
        if (!LINES.contains(type) && !DOCUMENTS.contains(type)) {
            throw new Problem(
                    415,
                    "Events come as JSON",
                    "Send application/cloudevents-batch+json, application/cloudevents+json or application/x-ndjson.",
                    List.of());
        }
        String body;
        try {
            // JSON is exchanged in UTF-8 alone (RFC 8259, section 8.1); anything else would be recorded garbled
            body = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(ctx.bodyAsBytes()))
                    .toString();
        } catch (CharacterCodingException garbled) {
            return List.of(new Reading(null, List.of(new Fault("", "It is not UTF-8.", "Send UTF-8."))));
        }
        if (LINES.contains(type)) {
            return body.lines()
                    .filter(line -> !line.isBlank())
                    .map(reader::read)
                    .toList();
        }
        List<Reading> readings = new ArrayList<>();
        try {
            JsonNode node = JSON.readTree(body);
            if (node != null && node.isArray()) {
                node.forEach(one -> readings.add(reader.read(one)));
                return readings;
            }
        } catch (JsonProcessingException wrong) {
            String problem = "It is not JSON: " + wrong.getOriginalMessage() + ".";
            Fault fault = new Fault("", problem, "Send an array of CloudEvents, or one.");
            return List.of(new Reading(null, List.of(fault)));
        }
        readings.add(reader.read(body));
        return readings;
    }

    /** The type without its parameters: a browser may send text/plain from any page, whatever stands behind it. */
    private static String mediaType(Context ctx) {
        String type = ctx.header("Content-Type") == null ? "" : ctx.header("Content-Type");
        return type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
    }

    private static boolean partial(Context ctx) {
        String text = ctx.queryParam("partial");
        if (text == null || text.isBlank() || text.equals("false")) {
            return false;
        }
        if (text.equals("true")) {
            return true;
        }
        throw Problem.parameters(
                List.of(new Fault("partial", "\"" + text + "\" is neither true nor false.", "Write true or false.")));
    }

    private static void known(Context ctx, Set<String> names) {
        List<Fault> faults = ctx.queryParamMap().keySet().stream()
                .filter(name -> !names.contains(name))
                .map(name -> Asked.unknown(name, names))
                .toList();
        if (!faults.isEmpty()) {
            throw Problem.parameters(faults);
        }
    }

    private static ObjectNode json(Intake intake) {
        ObjectNode json = JSON.createObjectNode();
        json.put("accepted", intake.accepted());
        json.put("duplicate", intake.duplicate());
        ArrayNode marked = json.putArray("marked");
        for (Intake.Marked one : intake.marked()) {
            marked.addObject()
                    .put("index", one.index())
                    .put("subject", one.subject())
                    .put("id", one.mark().event().id())
                    .put("mark", one.mark().kind().word())
                    .put(
                            "problem",
                            (one.mark().kind().problem() + " " + one.mark().detail()).strip())
                    .put("mend", one.mark().kind().mend());
        }
        ArrayNode refused = json.putArray("refused");
        for (Intake.Refused one : intake.refused()) {
            refused.addObject()
                    .put("index", one.index())
                    .put("field", one.fault().field())
                    .put("problem", one.fault().problem())
                    .put("mend", one.fault().mend());
        }
        json.put("sequence", intake.sequence());
        return json;
    }

    static long number(Context ctx, String name, long otherwise, long least, long most) {
        String text = ctx.queryParam(name);
        if (text == null || text.isBlank()) {
            return otherwise;
        }
        if (text.matches("\\d{1,18}") && Long.parseLong(text) >= least && Long.parseLong(text) <= most) {
            return Long.parseLong(text);
        }
        String problem = "\"" + text + "\" is not a whole number from " + least + " to " + most + ".";
        throw Problem.parameters(List.of(new Fault(name, problem, "Write such a number, or leave it out.")));
    }
}
