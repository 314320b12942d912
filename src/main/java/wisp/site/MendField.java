package wisp.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wisp.event.EventData;
import wisp.event.FarmDescribed;
import wisp.event.Named;
import wisp.event.Relief;
import wisp.indicator.EventFields;

/**
 * One field of an event's data in a form.
 *
 * @param name its name in events
 * @param label its name and unit in words
 * @param kind how it is asked for
 * @param choices the words to choose from, where there are such
 * @param value what stands in it
 */
public record MendField(String name, String label, Kind kind, List<String> choices, String value) {
    private static final Pattern SEASON = Pattern.compile("(.+?) from (\\S+) to (\\S+)");

    /** How a field is asked for. */
    public enum Kind {
        TEXT,
        NUMBER,
        FLAG,
        CHOICE,
        RELIEF,
        SEASONS
    }

    /** The fields of an event's data with their values, empty ones too. */
    static List<MendField> of(EventData data) {
        List<MendField> fields = new ArrayList<>();
        for (RecordComponent component : data.getClass().getRecordComponents()) {
            Class<?> type = component.getType();
            Object value = EventFields.valueOf(component, data);
            String name = EventFields.fieldName(component.getName());
            Kind kind = kind(type);
            fields.add(new MendField(name, label(name, kind), kind, choices(type), text(value)));
        }
        return fields;
    }

    /** What can be chosen, where the field is a choice. */
    public List<String> options() {
        return kind == Kind.FLAG ? List.of("true", "false") : choices;
    }

    /** These fields holding what somebody typed. */
    static List<MendField> typed(List<MendField> fields, Map<String, String> typed) {
        return fields.stream()
                .map(field -> new MendField(
                        field.name,
                        field.label,
                        field.kind,
                        field.choices,
                        typed.getOrDefault(field.name, "").strip()))
                .toList();
    }

    /** Writes the value as an event has it; what is no number stays text, for the event's reader to refuse. */
    void put(ObjectNode data) {
        if (value.isBlank()) {
            return;
        }
        boolean flag = kind == Kind.FLAG || kind == Kind.RELIEF;
        if (flag && (value.equals("true") || value.equals("false"))) {
            data.put(name, value.equals("true"));
        } else if (kind == Kind.NUMBER && value.matches("-?\\d{1,9}([.,]\\d{1,9})?")) {
            data.put(name, new BigDecimal(value.replace(',', '.')));
        } else if (kind == Kind.SEASONS) {
            seasons(data.putArray(name));
        } else {
            data.put(name, value);
        }
    }

    /** Seasons are typed as {@code 2025-26 from 2025-08-01 to 2026-08-01; …}. */
    private void seasons(ArrayNode seasons) {
        for (String one : value.split(";")) {
            Matcher season = SEASON.matcher(one.strip());
            if (season.matches()) {
                seasons.addObject()
                        .put("name", season.group(1))
                        .put("from", season.group(2))
                        .put("to", season.group(3));
            } else if (!one.isBlank()) {
                // not an object: the event's reader says what is wrong
                seasons.add(one.strip());
            }
        }
    }

    private static String seasons(List<?> seasons) {
        return seasons.stream()
                .map(one -> (FarmDescribed.Season) one)
                .map(season -> season.name() + " from " + season.from() + " to " + season.to())
                .collect(Collectors.joining("; "));
    }

    private static Kind kind(Class<?> type) {
        if (type == boolean.class || type == Boolean.class) {
            return Kind.FLAG;
        }
        if (type == int.class || type == double.class || Number.class.isAssignableFrom(type)) {
            return Kind.NUMBER;
        }
        if (type == Relief.class) {
            return Kind.RELIEF;
        }
        if (type == List.class) {
            return Kind.SEASONS;
        }
        return Named.class.isAssignableFrom(type) ? Kind.CHOICE : Kind.TEXT;
    }

    private static List<String> choices(Class<?> type) {
        return Named.class.isAssignableFrom(type)
                ? Arrays.stream(type.getEnumConstants())
                        .map(one -> ((Named) one).word())
                        .toList()
                : List.of();
    }

    private static String text(Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Relief relief) {
            return relief.product() == null ? Boolean.toString(relief.given()) : relief.product();
        }
        if (value instanceof List<?> list) {
            return seasons(list);
        }
        if (value instanceof Double number) {
            return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
        }
        return value instanceof Named word ? word.word() : value.toString();
    }

    private static String label(String name, Kind kind) {
        String unit = EventWords.unit(name);
        String words = name;
        for (String end : List.of("_percent", "_g_dl", "_g_l", "_kg", "_cm", "_days", "_l", "_c")) {
            if (!unit.isEmpty() && words.endsWith(end)) {
                words = words.substring(0, words.length() - end.length());
            }
        }
        words = words.replace('_', ' ');
        String label = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        String hint = kind == Kind.RELIEF
                ? " (true, false or the product)"
                : kind == Kind.SEASONS ? " (name from day to day; the next)" : "";
        return label + (unit.isEmpty() ? "" : " (" + unit + ")") + hint;
    }
}
