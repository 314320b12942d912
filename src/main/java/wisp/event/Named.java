package wisp.event;

import java.util.Locale;

/** A choice among fixed words, written in events in lower case. */
public interface Named {
    /** The constant's name, supplied by the enum. */
    String name();

    /** The word as it stands in an event. */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
