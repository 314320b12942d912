package wisp.indicator;

import java.util.List;
import java.util.stream.Collectors;
import wisp.event.EventType;
import wisp.history.LifeEvent;

/**
 * Events that a definition names: a type and what its fields must hold.
 *
 * @param type the type of event
 * @param where every test must pass; empty takes any
 */
public record EventMatch(EventType type, List<FieldTest> where) {

    /** Whether an event is meant. */
    public boolean matches(LifeEvent event) {
        return event.type() == type && where.stream().allMatch(test -> test.passes(event.data()));
    }

    /** In words, such as {@code navel-checked (finding painful or discharging)}. */
    public String words() {
        String tests = where.stream().map(FieldTest::words).collect(Collectors.joining(", "));
        return type.wireName() + (tests.isEmpty() ? "" : " (" + tests + ")");
    }
}
