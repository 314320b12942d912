package wisp.event;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads CloudEvents 1.0 JSON into events and says everything that is wrong with one that cannot be true by itself.
 * Attributes that CloudEvents allows and Wisp does not know are kept in the event's JSON.
 */
public final class EventReader {
    /** A phone's clock may run this much ahead of the log's. */
    public static final Duration CLOCK_TOLERANCE = Duration.ofMinutes(2);

    private static final int LONGEST_NAME = 256;
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final Set<String> conditions;
    private final Clock clock;

    private EventReader(Set<String> conditions, Clock clock) {
        this.conditions = Collections.unmodifiableSet(new TreeSet<>(conditions));
        this.clock = clock;
    }

    /**
     * A reader of events that somebody offers.
     *
     * @param conditions the illnesses that may be named
     * @param clock tells what is still the future
     */
    public static EventReader offered(Set<String> conditions, Clock clock) {
        return new EventReader(conditions, clock);
    }

    /** A reader of events that the log took once: neither the clock nor today's list of conditions is asked again. */
    public static EventReader recorded() {
        return new EventReader(Set.of(), null);
    }

    /** What came of reading: the event, or its faults. */
    public record Reading(Event event, List<Fault> faults) {
        /** True when the event may be recorded. */
        public boolean sound() {
            return faults.isEmpty();
        }
    }

    /** Reads one event from JSON text. */
    public Reading read(String text) {
        try {
            return read(JSON.readTree(text));
        } catch (JsonProcessingException wrong) {
            String where = wrong.getLocation() == null
                    ? ""
                    : " at column " + wrong.getLocation().getColumnNr();
            String problem = "It is not JSON" + where + ": " + wrong.getOriginalMessage() + ".";
            return new Reading(null, List.of(new Fault("", problem, "Send one CloudEvents object.")));
        }
    }

    /** Reads one event from parsed JSON. */
    public Reading read(JsonNode node) {
        if (node == null || !node.isObject()) {
            Fault fault = new Fault("", "It is not a JSON object.", "Send one CloudEvents object for each event.");
            return new Reading(null, List.of(fault));
        }
        ObjectNode object = ((ObjectNode) node).deepCopy();
        object.remove(List.of("sequence", "hash"));
        List<Fault> faults = new ArrayList<>();
        Envelope envelope = new Envelope(object, faults);
        envelope.exactly("specversion", "1.0");
        String id = envelope.name("id", LONGEST_NAME);
        String source = envelope.name("source", LONGEST_NAME);
        String subject = envelope.name("subject", LONGEST_NAME);
        OffsetDateTime time = envelope.time("time", true);
        OffsetDateTime recorded = envelope.time("recordedtime", false);
        String recordedBy = envelope.text("recordedby");
        envelope.jsonData();
        Optional<EventType> type = envelope.type();
        JsonNode data = envelope.data();
        Boolean timeKnown = true;
        EventData read = null;
        if (type.isPresent() && data != null) {
            DataReader in = new DataReader(data, "data.", conditions);
            timeKnown = in.flag(DataReader.TIME_KNOWN);
            read = type.get().read(in);
            faults.addAll(in.faults());
            farmsOwnSubject(type.get(), subject, faults);
        }
        clocks(time, recorded, read, faults);
        if (!faults.isEmpty()) {
            return new Reading(null, List.copyOf(faults));
        }
        boolean known = timeKnown == null || timeKnown;
        String json = object.toString();
        if (!StandardCharsets.UTF_8.newEncoder().canEncode(json)) {
            Fault fault = new Fault("", "It holds half of a character (a lone surrogate).", "Send whole characters.");
            return new Reading(null, List.of(fault));
        }
        return new Reading(new Event(source, id, subject, time, known, recorded, recordedBy, read, json), List.of());
    }

    /**
     * Reads the data that an amendment puts in an event's place.
     *
     * @param type the type of the amended event
     * @param dataJson the new data, a JSON object as text
     * @return the event data, or faults; {@code timeKnown} as the new data says
     */
    public static AmendedReading readData(EventType type, String dataJson) {
        try {
            JsonNode data = JSON.readTree(dataJson);
            DataReader in = new DataReader(data, "data.data.", Set.of());
            Boolean timeKnown = in.flag(DataReader.TIME_KNOWN);
            EventData read = type.read(in);
            return new AmendedReading(read, timeKnown == null || timeKnown, List.copyOf(in.faults()));
        } catch (JsonProcessingException wrong) {
            throw new IllegalArgumentException("an amendment's data is not JSON", wrong);
        }
    }

    /** New data for an amended event, sound when there are no faults. */
    public record AmendedReading(EventData data, boolean timeKnown, List<Fault> faults) {}

    private static void farmsOwnSubject(EventType type, String subject, List<Fault> faults) {
        if (type == EventType.FARM_DESCRIBED && subject != null && !subject.equals("farm")) {
            faults.add(new Fault("subject", "The farm is described under another subject.", "Write farm."));
        }
    }

    private void clocks(OffsetDateTime time, OffsetDateTime recorded, EventData data, List<Fault> faults) {
        if (clock == null) {
            return;
        }
        Instant latest = clock.instant().plus(CLOCK_TOLERANCE);
        notAfter("time", time, latest, "It lies in the future.", faults);
        notAfter("recordedtime", recorded, latest, "It lies in the future.", faults);
        if (data instanceof Amended amended) {
            notAfter("data.time", amended.time(), latest, "It lies in the future.", faults);
        }
        if (recorded != null) {
            Instant written = recorded.toInstant().plus(CLOCK_TOLERANCE);
            notAfter("time", time, written, "It was recorded before it happened.", faults);
        }
    }

    private static void notAfter(
            String field, OffsetDateTime time, Instant latest, String problem, List<Fault> faults) {
        if (time != null && time.toInstant().isAfter(latest)) {
            faults.add(new Fault(field, problem + " (" + time + ")", "Check the date, the hour and the offset."));
        }
    }
}
