package wisp.interchange;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.Charset;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import wisp.event.EventReader;
import wisp.event.EventType;
import wisp.event.Fault;

/** Reads a mapping file and notes everything that is wrong in it, also what the rows would only show later. */
final class MappingReader {
    private static final List<String> TOP = List.of(
            "source",
            "zone",
            "encoding",
            "delimiter",
            "decimal",
            "dates",
            "ambiguous_hour",
            "ignore",
            "repeat",
            "events");
    private static final List<String> EVENT =
            List.of("when", "type", "subject", "time", "id", "recordedtime", "recordedby", "data");

    private final Yaml top;
    private final Map<String, Yaml> group;

    private MappingReader(Yaml top) {
        this.top = top;
        this.group = top.map(TOP);
    }

    static Mapping read(Yaml top) {
        return new MappingReader(top).mapping();
    }

    private Mapping mapping() {
        List<EventTemplate> events = new ArrayList<>();
        if (group.containsKey("events")) {
            group.get("events").list().forEach(event -> events.add(event(event)));
        } else {
            top.fault("The events are missing.", "Write events: and under it what a row stands for.");
        }
        sourceForTags(events);
        return new Mapping(
                new CsvFormat(encoding(), delimiter()),
                text("source"),
                zone(),
                decimalComma(),
                dates(),
                ambiguousHour(),
                ignored(),
                repeat(),
                List.copyOf(events));
    }

    private String text(String name) {
        return group.containsKey(name) ? group.get(name).text() : null;
    }

    private ZoneId zone() {
        String name = text("zone");
        try {
            return name == null ? null : ZoneId.of(name);
        } catch (DateTimeException unknown) {
            group.get("zone")
                    .fault("\"" + name + "\" is not a time zone.", "Write an IANA name such as Europe/London.");
            return null;
        }
    }

    private Charset encoding() {
        String name = text("encoding");
        try {
            return name == null ? null : Charset.forName(name);
        } catch (IllegalArgumentException unknown) {
            group.get("encoding").fault("\"" + name + "\" is not an encoding.", "Write UTF-8, windows-1252 or UTF-16.");
            return null;
        }
    }

    private Character delimiter() {
        String name = text("delimiter");
        if (name == null || name.length() == 1) {
            return name == null ? null : Character.valueOf(name.charAt(0));
        }
        if (name.equals("tab")) {
            return '\t';
        }
        group.get("delimiter").fault("\"" + name + "\" is not one sign.", "Write \",\", \";\", \"|\" or tab.");
        return null;
    }

    private Boolean decimalComma() {
        String sign = text("decimal");
        if (sign != null && !sign.equals(",") && !sign.equals(".")) {
            group.get("decimal").fault("\"" + sign + "\" is no decimal sign.", "Write \",\" or \".\".");
        }
        return sign == null ? null : Boolean.valueOf(sign.equals(","));
    }

    private List<String> dates() {
        List<String> patterns = new ArrayList<>();
        if (group.containsKey("dates")) {
            for (Yaml yaml : group.get("dates").list()) {
                try {
                    Times.formatter(yaml.text());
                    patterns.add(yaml.text());
                } catch (IllegalArgumentException wrong) {
                    yaml.fault(
                            "\"" + yaml.text() + "\" is no date pattern.",
                            "Write one such as dd/MM/yyyy HH:mm, with dd, MM, yyyy or yy, HH and mm.");
                }
            }
        }
        return patterns;
    }

    private Times.AmbiguousHour ambiguousHour() {
        String word = text("ambiguous_hour");
        if (word == null || List.of("earlier", "later", "refuse").contains(word)) {
            return word == null
                    ? Times.AmbiguousHour.REFUSE
                    : Times.AmbiguousHour.valueOf(word.toUpperCase(Locale.ROOT));
        }
        group.get("ambiguous_hour")
                .fault("\"" + word + "\" is none of the words that stand here.", "Write earlier, later or refuse.");
        return Times.AmbiguousHour.REFUSE;
    }

    private Set<String> ignored() {
        Set<String> ignored = new LinkedHashSet<>();
        if (group.containsKey("ignore")) {
            group.get("ignore").list().forEach(column -> ignored.add(column.text()));
        }
        return ignored;
    }

    private Repeat repeat() {
        if (!group.containsKey("repeat")) {
            return null;
        }
        Map<String, Yaml> parts = group.get("repeat").map(List.of("count", "as"));
        if (parts.size() < 2) {
            group.get("repeat").fault("It needs a count and a name for the counter.", "Write {count: COLUMN, as: n}.");
            return null;
        }
        return new Repeat(parts.get("count").text(), parts.get("as").text());
    }

    private static EventTemplate event(Yaml yaml) {
        Map<String, Yaml> parts = yaml.map(EVENT);
        for (String required : List.of("type", "subject", "time")) {
            if (yaml.isMap() && !parts.containsKey(required)) {
                yaml.fault(
                        "The event has no " + required + ".", "Write " + required + ": and the column that holds it.");
            }
        }
        List<Condition> when = new ArrayList<>();
        Map<Column, Filling> attributes = new LinkedHashMap<>();
        Map<Column, Filling> data = new LinkedHashMap<>();
        parts.forEach((name, part) -> {
            switch (name) {
                case "when" ->
                    part.list().stream()
                            .map(Condition::of)
                            .filter(condition -> condition != null)
                            .forEach(when::add);
                case "data" -> part.map().forEach((field, filling) -> data(field, filling, data));
                case "type" -> attributes.put(Column.BY_NAME.get(name), type(part));
                case "subject" -> attributes.put(Column.BY_NAME.get(name), subject(part));
                default -> attributes.put(Column.BY_NAME.get(name), Filling.of(part));
            }
        });
        known(parts.get("type"), parts.get("data"), attributes.get(Column.BY_NAME.get("type")));
        return new EventTemplate(List.copyOf(when), attributes, data, tag(parts.get("subject")) != null);
    }

    private static Filling subject(Yaml part) {
        Yaml tag = tag(part);
        return tag == null ? Filling.of(part) : Filling.of(tag);
    }

    /** What fills the tag number by which the animal is found; null where the subject is its key. */
    private static Yaml tag(Yaml subject) {
        boolean group = subject != null && subject.isMap();
        return group && subject.map().containsKey("tag")
                ? subject.map(List.of("tag")).get("tag")
                : null;
    }

    /** A longer file comes under another name, and must still be known again. */
    private void sourceForTags(List<EventTemplate> events) {
        if (events.stream().anyMatch(EventTemplate::byTag) && text("source") == null) {
            top.fault(
                    "The mapping finds animals by tag number and names no source.",
                    "Write source: and a name for the laboratory that never changes, so that no row goes in twice.");
        }
    }

    private static Filling type(Yaml part) {
        Filling type = part.isScalar() ? Filling.fixed(part.text()) : Filling.of(part);
        List<String> names = new ArrayList<>(type.values().values());
        if (names.isEmpty() && type.isFixed()) {
            names.add(type.text(Map.of(), (p, m) -> {}));
        }
        for (String name : names) {
            if (EventType.named(name).isEmpty()) {
                part.fault("There is no event \"" + name + "\".", "Use one of: " + EventType.allNames() + ".");
            }
        }
        return type;
    }

    private static void data(String field, Yaml part, Map<Column, Filling> data) {
        Column column = Column.BY_NAME.get(field);
        Filling filling = Filling.of(part);
        if (column == null || !column.data()) {
            String near =
                    Nearest.of(field, Column.DATA.stream().map(Column::name).toList());
            part.fault(
                    "No event has a field \"" + field + "\".",
                    near.isEmpty()
                            ? "Take it out, or say it in the text of a noted event."
                            : "Did you mean " + near + "?");
            return;
        }
        List<String> fixed = new ArrayList<>(filling.values().values());
        if (fixed.isEmpty() && filling.isFixed()) {
            fixed.add(filling.text(Map.of(), (p, m) -> {}));
        }
        for (String text : fixed) {
            if (!text.isEmpty()) {
                Cell.value(column.kind(), text, false, part::fault);
            }
        }
        data.put(column, filling);
    }

    /** Asks the event's own reader whether a fixed type has the fields that the mapping fills. */
    private static void known(Yaml typeAt, Yaml dataAt, Filling type) {
        if (dataAt == null || type == null || !type.isFixed() || !dataAt.isMap()) {
            return;
        }
        String name = type.text(Map.of(), (p, m) -> {});
        ObjectNode trial = JsonNodeFactory.instance.objectNode().put("type", name);
        ObjectNode data = trial.putObject("data");
        if (name == null || EventType.named(name).isEmpty()) {
            return;
        }
        Map<String, Yaml> fields = dataAt.map();
        fields.keySet().stream()
                .filter(Column.BY_NAME::containsKey)
                .forEach(field -> data.putNull(Column.BY_NAME.get(field).field()));
        for (Fault fault : EventReader.recorded().read(trial).faults()) {
            String field = Column.ofField(fault.field());
            if (fields.containsKey(field) && fault.problem().startsWith("There is no such field")) {
                fields.get(field).fault("A " + name + " event has no field \"" + field + "\".", fault.mend());
            } else if (fault.field().startsWith("data.")
                    && fault.problem().equals("It is missing.")
                    && !fields.containsKey(field)) {
                typeAt.fault("A " + name + " event needs " + field + ".", "Fill it under data.");
            }
        }
    }
}
