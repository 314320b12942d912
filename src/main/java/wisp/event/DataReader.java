package wisp.event;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reads the fields of one event's data and notes every fault it meets, so that a sender hears of all of them at once.
 * A field that no reader asked for is a fault too: a misspelt field, or one in another unit, is never silently dropped.
 */
final class DataReader {
    /** Stands in every event's data: false where only the date is known. */
    static final String TIME_KNOWN = "time_known";

    private final JsonNode object;
    private final String prefix;
    private final Set<String> conditions;
    private final Set<String> asked = new LinkedHashSet<>();
    private final List<Fault> faults = new ArrayList<>();

    /**
     * @param object a JSON object
     * @param prefix what stands before a field's name in a fault, such as {@code data.}
     * @param conditions the known illnesses; empty takes any
     */
    DataReader(JsonNode object, String prefix, Set<String> conditions) {
        this.object = object;
        this.prefix = prefix;
        this.conditions = conditions;
    }

    void fault(String field, String problem, String mend) {
        String name = field.isEmpty() ? prefix.replaceAll("\\.$", "") : prefix + field;
        faults.add(new Fault(name, problem, mend));
    }

    boolean sound() {
        return faults.isEmpty();
    }

    /** All faults, with those of fields that nobody asked for. */
    List<Fault> faults() {
        for (Iterator<String> names = object.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!asked.contains(name)) {
                fault(name, "There is no such field for this type of event.", FieldMend.forUnknown(name, asked));
            }
        }
        return faults;
    }

    String text(String field) {
        JsonNode node = ask(field);
        if (node == null) {
            return null;
        }
        if (!node.isTextual() || node.textValue().isBlank()) {
            fault(field, "It must be text, not " + shown(node) + ".", "Write it in quotation marks, or leave it out.");
            return null;
        }
        return node.textValue().strip();
    }

    Boolean flag(String field) {
        JsonNode node = ask(field);
        if (node == null) {
            return null;
        }
        if (!node.isBoolean()) {
            fault(field, "It must be true or false, not " + shown(node) + ".", "Write true or false.");
            return null;
        }
        return node.booleanValue();
    }

    Double number(String field, double least, double most) {
        JsonNode node = ask(field);
        if (node == null) {
            return null;
        }
        if (!node.isNumber()) {
            fault(field, "It must be a number, not " + shown(node) + ".", "Write a number" + unitOf(field) + ".");
            return null;
        }
        double value = node.doubleValue();
        if (!(value >= least && value <= most)) {
            fault(
                    field,
                    shown(node) + " cannot be: it must lie between " + plain(least) + " and " + plain(most) + ".",
                    "Check the figure and its unit" + unitOf(field) + ".");
            return null;
        }
        return value;
    }

    Integer whole(String field, int least, int most) {
        JsonNode node = object.get(field);
        if (node != null && node.isNumber() && node.doubleValue() != Math.rint(node.doubleValue())) {
            asked.add(field);
            fault(field, "It must be a whole number, not " + shown(node) + ".", "Write it without decimals.");
            return null;
        }
        Double value = number(field, least, most);
        return value == null ? null : value.intValue();
    }

    <E extends Enum<E> & Named> E choice(String field, Class<E> choices) {
        String word = text(field);
        if (word == null) {
            return null;
        }
        for (E choice : choices.getEnumConstants()) {
            if (choice.word().equals(word)) {
                return choice;
            }
        }
        String all = Arrays.stream(choices.getEnumConstants()).map(Named::word).collect(Collectors.joining(", "));
        fault(field, "\"" + word + "\" is none of the words that stand here.", "Write one of: " + all + ".");
        return null;
    }

    String condition(String field) {
        String key = text(field);
        if (key == null || conditions.isEmpty() || conditions.contains(key)) {
            return key;
        }
        fault(
                field,
                "\"" + key + "\" is not a known condition.",
                "Write one of: " + String.join(", ", conditions) + "; or add it to the conditions file.");
        return null;
    }

    Relief relief(String field) {
        JsonNode node = ask(field);
        if (node == null) {
            return null;
        }
        if (node.isBoolean()) {
            return new Relief(node.booleanValue(), null);
        }
        if (node.isTextual() && !node.textValue().isBlank()) {
            return new Relief(true, node.textValue().strip());
        }
        fault(field, "It must be true, false or the product's name, not " + shown(node) + ".", "Write true or false.");
        return null;
    }

    ZoneId zone(String field) {
        String name = text(field);
        if (name == null) {
            return null;
        }
        try {
            return ZoneId.of(name);
        } catch (DateTimeException unknown) {
            fault(field, "\"" + name + "\" is not a time zone.", "Write an IANA name such as Europe/London.");
            return null;
        }
    }

    List<FarmDescribed.Season> seasons(String field) {
        JsonNode node = ask(field);
        if (node == null) {
            return null;
        }
        if (!node.isArray()) {
            fault(field, "It must be a list.", "Write [{\"name\", \"from\", \"to\"}, …].");
            return null;
        }
        List<FarmDescribed.Season> seasons = new ArrayList<>();
        for (int i = 0; i < node.size(); i++) {
            String at = field + "[" + i + "]";
            DataReader in = new DataReader(node.get(i), prefix + at + ".", conditions);
            if (!node.get(i).isObject()) {
                fault(at, "It must be an object.", "Write {\"name\", \"from\", \"to\"}.");
                continue;
            }
            FarmDescribed.Season season =
                    new FarmDescribed.Season(in.requiredText("name"), in.requiredDate("from"), in.requiredDate("to"));
            if (in.sound() && !season.from().isBefore(season.to())) {
                in.fault("to", "The season ends before it begins.", "Write the first day after the season.");
            }
            faults.addAll(in.faults());
            seasons.add(season);
        }
        return List.copyOf(seasons);
    }

    boolean requiredFlag(String field) {
        Boolean value = flag(field);
        return required(field, value) ? value : false;
    }

    String requiredText(String field) {
        String value = text(field);
        return required(field, value) ? value : "";
    }

    int requiredWhole(String field, int least, int most) {
        Integer value = whole(field, least, most);
        return required(field, value) ? value : least;
    }

    double requiredNumber(String field, double least, double most) {
        Double value = number(field, least, most);
        return required(field, value) ? value : least;
    }

    <E extends Enum<E> & Named> E requiredChoice(String field, Class<E> choices) {
        E value = choice(field, choices);
        if (object.get(field) == null || object.get(field).isNull()) {
            String all =
                    Arrays.stream(choices.getEnumConstants()).map(Named::word).collect(Collectors.joining(", "));
            fault(field, "It is missing.", "Write one of: " + all + ".");
        }
        return value;
    }

    String requiredCondition(String field) {
        String value = condition(field);
        return required(field, value) ? value : "";
    }

    OffsetDateTime requiredTime(String field) {
        String value = requiredText(field);
        return value.isEmpty() ? null : Rfc3339.read(value, (p, m) -> fault(field, p, m));
    }

    LocalDate requiredDate(String field) {
        String value = requiredText(field);
        if (value.isEmpty()) {
            return LocalDate.EPOCH;
        }
        try {
            return LocalDate.parse(value);
        } catch (DateTimeException wrong) {
            fault(field, "\"" + value + "\" is not a date.", "Write it as 2026-03-31.");
            return LocalDate.EPOCH;
        }
    }

    String requiredObject(String field) {
        JsonNode node = ask(field);
        if (node == null || !node.isObject()) {
            fault(field, "It is missing or not an object.", "Write the whole data of the event as it should be.");
            return "{}";
        }
        return node.toString();
    }

    private boolean required(String field, Object value) {
        boolean absent = object.get(field) == null || object.get(field).isNull();
        if (value == null && absent) {
            fault(field, "It is missing.", "Give it" + unitOf(field) + "; this type of event says nothing without it.");
        }
        return value != null;
    }

    private JsonNode ask(String field) {
        asked.add(field);
        JsonNode node = object.get(field);
        return node == null || node.isNull() ? null : node;
    }

    private static String unitOf(String field) {
        return FieldMend.unitOf(field).map(unit -> " in " + unit).orElse("");
    }

    private static String plain(double bound) {
        return bound == Math.rint(bound) ? Long.toString((long) bound) : Double.toString(bound);
    }

    private static String shown(JsonNode node) {
        String text = node.toString();
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }
}
