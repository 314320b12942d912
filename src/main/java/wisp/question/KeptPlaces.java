package wisp.question;

import java.util.List;
import wisp.statistics.Interval;
import wisp.statistics.NewcombeDifference;
import wisp.statistics.TwoByTwoTable;

/**
 * Calves born in pens that the records show as bedded or cleaned out, and calves born elsewhere: in cubicles, a
 * passage, the field.
 *
 * @param kept calves of kept pens
 * @param elsewhere calves of places without a bedding or a cleaning on record
 * @param difference share elsewhere less share in kept pens, Newcombe's 95 % interval; null where one side is empty
 * @param p Fisher's exact two-sided p-value, not a number where it cannot be given
 */
public record KeptPlaces(DirtyShare kept, DirtyShare elsewhere, Interval difference, double p) {

    static KeptPlaces of(List<ScoredCalf> calves, BeddingAge beddings) {
        DirtyShare kept = DirtyShare.of(
                "places.kept",
                "where bedding or cleaning is on record",
                "born where bedding or cleaning is on record",
                calves.stream().filter(calf -> beddings.kept(calf.pen())).toList());
        DirtyShare elsewhere = DirtyShare.of(
                "places.elsewhere",
                "where none is on record",
                "born where no bedding or cleaning is on record",
                calves.stream().filter(calf -> !beddings.kept(calf.pen())).toList());
        if (kept.n() == 0 || elsewhere.n() == 0) {
            return new KeptPlaces(kept, elsewhere, null, Double.NaN);
        }
        TwoByTwoTable table = TwoByTwoTable.ofGroups(elsewhere.dirty(), elsewhere.n(), kept.dirty(), kept.n());
        return new KeptPlaces(
                kept, elsewhere, NewcombeDifference.of(table, DirtyShare.LEVEL), PenContrast.fisher(table));
    }

    /** Whether the two differ by more than chance. */
    public boolean moreThanChance() {
        return p < 0.05 && (difference.low() > 0 || difference.high() < 0);
    }
}
