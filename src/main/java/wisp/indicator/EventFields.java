package wisp.indicator;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import wisp.event.EventData;
import wisp.event.Named;
import wisp.event.Relief;

/**
 * An event's data by the names that stand in events, for definitions and lists that name a field. Read off the records'
 * own components, so that a new field of an event needs no second list.
 */
public final class EventFields {
    private EventFields() {}

    /** The fields that have a value, in the order of the record; words for choices, true or false for a relief. */
    public static Map<String, Object> of(EventData data) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (RecordComponent component : data.getClass().getRecordComponents()) {
            Object value = valueOf(component, data);
            if (value instanceof Named word) {
                value = word.word();
            } else if (value instanceof Relief relief) {
                value = relief.given();
            }
            if (value != null) {
                fields.put(fieldName(component.getName()), value);
            }
        }
        return fields;
    }

    /** The value of one field, or null. */
    static Object value(EventData data, String field) {
        return Arrays.stream(data.getClass().getRecordComponents())
                .filter(component -> fieldName(component.getName()).equals(field))
                .map(component -> valueOf(component, data))
                .filter(Objects::nonNull)
                .map(value -> value instanceof Named word
                        ? word.word()
                        : value instanceof Relief relief ? (Object) relief.given() : value)
                .findFirst()
                .orElse(null);
    }

    /** A component's name as a field's: {@code weightKg} as {@code weight_kg}. */
    public static String fieldName(String component) {
        return Arrays.stream(component.split("(?=[A-Z])"))
                .map(part -> part.toLowerCase(Locale.ROOT))
                .collect(Collectors.joining("_"));
    }

    /** The value of one component of an event's data as the record has it, or null. */
    public static Object valueOf(RecordComponent component, EventData data) {
        try {
            return component.getAccessor().invoke(data);
        } catch (IllegalAccessException | InvocationTargetException impossible) {
            throw new IllegalStateException("a record's own accessor failed: " + component, impossible);
        }
    }
}
