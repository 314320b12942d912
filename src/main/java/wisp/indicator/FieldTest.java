package wisp.indicator;

import java.util.List;
import wisp.event.EventData;

/** What a definition asks of one field of an event. */
public sealed interface FieldTest {
    /** The field's name in events. */
    String field();

    /** Whether the event's data passes; an absent field does not. */
    boolean passes(EventData data);

    /** The test in words, such as {@code score at least 2}. */
    String words();

    /** The field holds one of these words, numbers or truth values. */
    record OneOf(String field, List<String> values) implements FieldTest {
        @Override
        public boolean passes(EventData data) {
            Object value = EventFields.value(data, field);
            return value != null && values.contains(value.toString());
        }

        @Override
        public String words() {
            return field.replace('_', ' ') + " " + String.join(" or ", values);
        }
    }

    /** The field is a number of at least this. */
    record AtLeast(String field, double least) implements FieldTest {
        @Override
        public boolean passes(EventData data) {
            return EventFields.value(data, field) instanceof Number number && number.doubleValue() >= least;
        }

        @Override
        public String words() {
            return field.replace('_', ' ') + " at least " + Plain.number(least);
        }
    }

    /** The field is a number under this. */
    record Below(String field, double bound) implements FieldTest {
        @Override
        public boolean passes(EventData data) {
            return EventFields.value(data, field) instanceof Number number && number.doubleValue() < bound;
        }

        @Override
        public String words() {
            return field.replace('_', ' ') + " below " + Plain.number(bound);
        }
    }
}
