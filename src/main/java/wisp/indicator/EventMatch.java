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

    /** In words, such as {@code a navel check with finding painful or discharging}. */
    public String words() {
        if (type == EventType.ILLNESS_FOUND && where.size() == 1 && where.get(0) instanceof FieldTest.OneOf test) {
            return test.field().equals("condition")
                    ? "a finding of " + String.join(" or ", test.values()).replace('-', ' ')
                    : noun();
        }
        return noun();
    }

    private String noun() {
        String tests = where.stream().map(EventMatch::test).collect(Collectors.joining(" and "));
        return EventPhrase.one(EventPhrase.noun(type)) + (tests.isEmpty() ? "" : " " + tests);
    }

    private static String test(FieldTest test) {
        return test instanceof FieldTest.OneOf oneOf && test.field().equals("method")
                ? "by " + String.join(" or ", oneOf.values())
                : "with " + test.words();
    }
}
