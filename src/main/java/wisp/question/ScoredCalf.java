package wisp.question;

import java.time.Instant;
import wisp.history.Life;

/**
 * A calf that was scored for cleanliness in time, with what may have made it dirty.
 *
 * @param row its row in the cohort
 * @param pen where it was scored, else born
 * @param score 0 to 3, null where the definition in use judges by something else
 * @param scored when it was scored
 * @param daysSinceBedding exact days from the pen's last bedding to the birth, not a number where none is on record
 * @param calvingsBefore other calvings in the pen in the seven days before
 */
public record ScoredCalf(
        int row,
        Life life,
        String pen,
        Integer score,
        boolean dirty,
        Instant scored,
        double daysSinceBedding,
        int calvingsBefore) {

    /** Whether its pen was ever bedded before its birth, by the records. */
    public boolean beddingKnown() {
        return !Double.isNaN(daysSinceBedding);
    }
}
