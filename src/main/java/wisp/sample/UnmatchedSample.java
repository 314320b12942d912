package wisp.sample;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wisp.cohort.Cohort;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;

/**
 * What a laboratory said of a tag number that is no one animal's: nobody has it, or several have had it. It is kept
 * under the number as it was written until somebody says whose it is.
 *
 * @param number as it was written
 * @param event what was said
 * @param likely the animals that may have been meant, best first
 * @param having how many animals have had the number: several, or one that was given it since the row came; where
 *     several have, {@code likely} is all of them
 */
public record UnmatchedSample(String number, LifeEvent event, List<Life> likely, int having) {

    /** Those of a herd, the oldest first. */
    public static List<UnmatchedSample> of(Cohort cohort, TagIndex index) {
        List<UnmatchedSample> unmatched = new ArrayList<>();
        for (Life life : cohort.lives()) {
            if (life.born() == null && !TagIndex.tagged(life)) {
                life.marks().stream()
                        .filter(mark -> mark.kind() == Mark.Kind.NO_BIRTH && ofSample(mark.event()))
                        .forEach(mark -> unmatched.add(of(life.key(), mark.event(), index)));
            }
        }
        unmatched.sort(Comparator.comparing(UnmatchedSample::event, LifeEvent.ORDER));
        return unmatched;
    }

    private static UnmatchedSample of(String number, LifeEvent event, TagIndex index) {
        List<Life> same = index.find(number, event.time());
        List<Life> likely = same.size() > 1 ? same : index.likely(number, event.time());
        return new UnmatchedSample(number, event, likely, same.size());
    }

    private static boolean ofSample(LifeEvent event) {
        return switch (event.type()) {
            case TISSUE_SAMPLED, SAMPLE_SENT, SAMPLE_RESULT -> true;
            default -> false;
        };
    }
}
