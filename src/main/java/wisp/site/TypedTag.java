package wisp.site;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Collectors;
import wisp.event.Fault;
import wisp.history.EarTags;
import wisp.history.Life;
import wisp.history.TagWarning;
import wisp.tag.LikelyNumber;
import wisp.tag.TagDoubt;
import wisp.tag.TagNumber;

/** A tag number that somebody types for a calf, held beside those of the herd. */
final class TypedTag {
    private static final int SHOWN = 3;

    private TypedTag() {}

    /**
     * Finds what is wrong with it.
     *
     * @param sure true where somebody has looked at the tag again and stands by what it says
     */
    static void check(ObjectNode data, Life calf, List<Life> herd, boolean sure, List<Fault> faults) {
        String text = data.path("number").asText().strip();
        if (text.isEmpty()) {
            return;
        }
        TagNumber number = TagNumber.read(text);
        for (Life other : herd) {
            boolean living = other.exit() == null && !other.key().equals(calf.key());
            if (living && EarTags.of(other).numbers().stream().anyMatch(number::same)) {
                String problem = "Another living animal has this number: " + other.key() + ".";
                faults.add(new Fault("data.number", problem, "Look at both animals' tags."));
                return;
            }
        }
        if (EarTags.of(calf).numbers().stream().anyMatch(number::same)) {
            return;
        }
        List<TagDoubt> doubts = TagDoubt.of(number);
        if (!sure && !doubts.isEmpty()) {
            String likely = LikelyNumber.of(number, TagWarning.herdMarks(herd)).stream()
                    .limit(SHOWN)
                    .map(one -> one.number().shown())
                    .collect(Collectors.joining(", "));
            String mend = "Look at the tag again" + (likely.isEmpty() ? "." : "; perhaps " + likely + " is meant.")
                    + " If it stands so on the tag, say so below and send again.";
            faults.add(new Fault(
                    "data.number", doubts.stream().map(TagDoubt::sentence).collect(Collectors.joining(" ")), mend));
        }
    }
}
