package wisp.indicator;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import wisp.event.EventData;
import wisp.event.Named;
import wisp.event.Relief;

/**
 * An event's data by the names that stand in events, for definitions and lists that name a field. Read off the records'
 * own components, so that a new field of an event needs no second list.
 */
public final class EventFields {
    /** Each record's components by field, worked out once a class: figures ask for every event of every life. */
    private static final ClassValue<Map<String, RecordComponent>> BY_NAME = new ClassValue<>() {
        @Override
        protected Map<String, RecordComponent> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .collect(Collectors.toUnmodifiableMap(c -> fieldName(c.getName()), c -> c));
        }
    };

    private EventFields() {}

    /** The fields that have a value, in the order of the record; words for choices, true or false for a relief. */
    public static Map<String, Object> of(EventData data) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (RecordComponent component : data.getClass().getRecordComponents()) {
            Object value = word(valueOf(component, data));
            if (value != null) {
                fields.put(fieldName(component.getName()), value);
            }
        }
        return fields;
    }

    /** The value of one field, or null. */
    static Object value(EventData data, String field) {
        RecordComponent component = BY_NAME.get(data.getClass()).get(field);
        return component == null ? null : word(valueOf(component, data));
    }

    private static Object word(Object value) {
        if (value instanceof Named word) {
            return word.word();
        }
        return value instanceof Relief relief ? (Object) relief.given() : value;
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
