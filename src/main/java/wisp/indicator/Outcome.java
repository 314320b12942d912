package wisp.indicator;

import java.util.List;
import java.util.stream.Collectors;

/** What a risk or rate counts. */
public sealed interface Outcome {
    /** In words, such as {@code death}. */
    String words();

    /** The calf dies, or is born dead. */
    record Death() implements Outcome {
        @Override
        public String words() {
            return "death";
        }
    }

    /**
     * An episode of an illness opens.
     *
     * @param title the illness in a sentence
     */
    record Illness(String condition, String title) implements Outcome {
        @Override
        public String words() {
            return "a first episode of " + title;
        }
    }

    /** The first event that matches any of these. */
    record Happening(List<EventMatch> anyOf) implements Outcome {
        @Override
        public String words() {
            return anyOf.stream().map(EventMatch::words).collect(Collectors.joining(" or "));
        }
    }
}
