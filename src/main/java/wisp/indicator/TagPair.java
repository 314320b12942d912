package wisp.indicator;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wisp.event.TagFitted;
import wisp.history.LifeEvent;

/** The pair of ear tags: two numbers, or one number in both ears. */
public final class TagPair {
    private TagPair() {}

    /** The tag that made the pair complete, empty while it is not. */
    public static Optional<LifeEvent> completed(List<LifeEvent> events) {
        Set<String> numbers = new HashSet<>();
        Set<String> ears = new HashSet<>();
        for (LifeEvent event : events) {
            if (event.data() instanceof TagFitted tag) {
                numbers.add(tag.number());
                boolean otherEar = tag.ear() != null && ears.contains(tag.number() + other(tag.ear()));
                ears.add(tag.number() + tag.ear());
                if (numbers.size() >= 2 || otherEar) {
                    return Optional.of(event);
                }
            }
        }
        return Optional.empty();
    }

    private static TagFitted.Ear other(TagFitted.Ear ear) {
        return ear == TagFitted.Ear.LEFT ? TagFitted.Ear.RIGHT : TagFitted.Ear.LEFT;
    }
}
