package wisp.indicator;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.event.EventReader;
import wisp.event.EventType;
import wisp.event.Fault;

/** Reads which events and fields a definition names, and holds each name and value against what events can hold. */
final class MatchReader {
    private static final Map<String, EventType> TYPES = types();

    /** Every number that an event can hold takes one of these. */
    private static final List<String> AMOUNTS = List.of("1", "5", "40");

    private MatchReader() {}

    /** {@code event: TYPE} with an optional {@code where:}. */
    static Optional<EventMatch> event(YamlMap in) {
        Optional<EventType> type = in.choice("event", TYPES);
        List<FieldTest> tests = new ArrayList<>();
        Optional<YamlMap> where = in.map("where");
        if (type.isPresent() && where.isPresent()) {
            tests.addAll(tests(where.get(), type.get()));
        }
        return type.map(known -> new EventMatch(known, List.copyOf(tests)));
    }

    /** One test a key: {@code score: {at_least: 2}} or {@code finding: [painful, discharging]}. */
    static List<FieldTest> tests(YamlMap in, EventType type) {
        List<FieldTest> tests = new ArrayList<>();
        for (String field : in.keys()) {
            if (in.isMap(field)) {
                YamlMap bounds = in.map(field).orElseThrow();
                bounds.number("at_least").ifPresent(least -> {
                    tests.add(new FieldTest.AtLeast(field, least));
                    canHold(in, type, field, Plain.number(least));
                });
                bounds.number("below").ifPresent(bound -> {
                    tests.add(new FieldTest.Below(field, bound));
                    canHold(in, type, field, Plain.number(bound));
                });
                bounds.nothingElse();
            } else {
                List<String> values = in.texts(field);
                tests.add(new FieldTest.OneOf(field, values));
                values.forEach(value -> canHold(in, type, field, literal(value)));
            }
        }
        return tests;
    }

    /** An amount can only be summed over a field that holds numbers. */
    static void isAmount(YamlMap in, EventType type, String key, String field) {
        boolean text = accepts(type, field, "\"word\"");
        boolean number = AMOUNTS.stream().anyMatch(amount -> accepts(type, field, amount));
        if (text || !number) {
            in.fault(
                    key,
                    "The field " + field + " of a " + type.wireName() + " event holds no amount.",
                    "Name a field of it that holds a number.");
        }
    }

    /** A definition is wrong when no event can have the field or the value that it names. */
    private static void canHold(YamlMap in, EventType type, String field, String json) {
        List<Fault> faults =
                EventReader.readData(type, "{\"" + field + "\":" + json + "}").faults();
        for (Fault fault : faults) {
            if (fault.field().equals("data.data." + field) && !accepted(type, field, json)) {
                String problem =
                        "No " + type.wireName() + " event can have " + field + " " + json + ": " + fault.problem();
                in.fault(field, problem, fault.mend());
                return;
            }
        }
    }

    /** A number may have been meant as a word, as in an ear tag's number. */
    private static boolean accepted(EventType type, String field, String json) {
        return !json.startsWith("\"") && accepts(type, field, "\"" + json + "\"");
    }

    private static boolean accepts(EventType type, String field, String json) {
        return EventReader.readData(type, "{\"" + field + "\":" + json + "}").faults().stream()
                .noneMatch(fault -> fault.field().equals("data.data." + field));
    }

    private static String literal(String value) {
        boolean bare = value.equals("true") || value.equals("false") || value.matches("-?\\d+(\\.\\d+)?");
        return bare ? value : "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private static Map<String, EventType> types() {
        Map<String, EventType> types = new LinkedHashMap<>();
        for (EventType type : EventType.values()) {
            if (!type.isCorrection() && type != EventType.FARM_DESCRIBED) {
                types.put(type.wireName(), type);
            }
        }
        return types;
    }
}
