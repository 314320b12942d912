package wisp.cli;

import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import wisp.cohort.Cohort;
import wisp.history.Life;
import wisp.interchange.TagSubjects;
import wisp.sample.TagIndex;

/** Whose a tag number is, by the tags and samples of one herd. */
final class TagsOfHerd implements TagSubjects {
    private final TagIndex index;

    TagsOfHerd(Cohort cohort) {
        index = new TagIndex(cohort);
    }

    @Override
    public Whose of(String number, Instant time) {
        List<Life> found = index.find(number, time);
        if (found.size() == 1) {
            return new Whose(found.get(0).key(), "");
        }
        if (found.size() > 1) {
            return new Whose(null, "Several animals have had it: " + keys(found) + ".");
        }
        List<Life> likely = index.likely(number, time);
        String near = likely.isEmpty() ? "" : " Perhaps meant: " + keys(likely) + ".";
        return new Whose(null, "No animal has it." + near);
    }

    private static String keys(List<Life> lives) {
        return lives.stream().map(Life::key).collect(Collectors.joining(", "));
    }
}
