package wisp.indicator;

import java.util.List;
import wisp.event.EventData;

/** What a definition asks of one field of an event. */
public sealed interface FieldTest {
    /** The field's name in events. */
    String field();

    /** Whether the event's data passes; an absent field does not. */
    boolean passes(EventData data);

    /** The test in words, such as {@code a score of at least 2}. */
    String words();

    /** The field holds one of these words, numbers or truth values. */
    record OneOf(String field, List<String> values) implements FieldTest {
        @Override
        public boolean passes(EventData data) {
            Object value = EventFields.value(data, field);
            return value != null && values.stream().anyMatch(one -> same(one, value));
        }

        @Override
        public String words() {
            return EventPhrase.field(field) + " " + String.join(" or ", values) + EventPhrase.unit(field);
        }

        /** A number is the same however many zeros it is written with. */
        private static boolean same(String written, Object value) {
            return value instanceof Number number && written.matches("-?\\d+(\\.\\d+)?")
                    ? Double.parseDouble(written) == number.doubleValue()
                    : written.equals(value.toString());
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
            return EventPhrase.one(EventPhrase.field(field)) + " of at least " + Plain.number(least)
                    + EventPhrase.unit(field);
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
            return EventPhrase.one(EventPhrase.field(field)) + " of less than " + Plain.number(bound)
                    + EventPhrase.unit(field);
        }
    }
}
