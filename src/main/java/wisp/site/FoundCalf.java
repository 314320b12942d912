package wisp.site;

import java.util.Locale;
import java.util.stream.Stream;
import wisp.event.TagFitted;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;
import wisp.tag.TagNumber;

/**
 * What somebody looks for among calves: part of a key, or of any tag that was ever fitted, written in any way.
 *
 * @param written as it was typed, without blanks round it
 */
record FoundCalf(String written) {

    /** Whether a calf is one of those looked for; everybody is where nothing is looked for. */
    boolean fits(Life life) {
        if (written.isEmpty() || holds(life.key(), written)) {
            return true;
        }
        TagNumber wanted = TagNumber.read(written);
        Stream<LifeEvent> marked = life.marks().stream().map(Mark::event);
        return Stream.concat(life.events().stream(), marked)
                .anyMatch(event -> event.data() instanceof TagFitted tag && fits(wanted, TagNumber.read(tag.number())));
    }

    /** Part of the number as it stands on the tag or as an electronic one, or the same number in another writing. */
    private boolean fits(TagNumber wanted, TagNumber tag) {
        String part = wanted.compact();
        boolean within = !part.isEmpty()
                && (tag.compact().contains(part) || tag.electronic().contains(part));
        return within || wanted.same(tag) || holds(tag.written(), written);
    }

    private static boolean holds(String text, String part) {
        return text.toLowerCase(Locale.ROOT).contains(part.toLowerCase(Locale.ROOT));
    }
}
