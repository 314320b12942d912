package wisp.cohort;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import wisp.history.Annals;
import wisp.history.FarmHistory;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;

/**
 * Every animal's life at one moment of the log. It never changes.
 *
 * @param table one row an animal, the same row numbers as {@code lives}; animals without a recorded birth have a row
 *     in which only {@code calf} and {@code marks} are filled
 * @param lives the folded lives
 * @param suspects the animals that a sample's result once called anything but negative, in order of row; marked results
 *     and animals without a recorded birth too
 * @param farm the farm through time
 * @param pens each pen's own events (bedding, cleaning, notes), in order
 * @param annals by subject, what is recorded of pens and of the farm with its corrections
 * @param strayMarks marked events of subjects that are no animals
 * @param cut where follow-up ends: the day asked for, else the time of the newest event in the log
 * @param sequence the newest event that is taken into account
 */
public record Cohort(
        Table table,
        List<Life> lives,
        List<Life> suspects,
        FarmHistory farm,
        Map<String, List<LifeEvent>> pens,
        Map<String, Annals> annals,
        List<Mark> strayMarks,
        Instant cut,
        long sequence) {

    /** The seasons that have a calf, in order of their first birth date. */
    public List<String> seasonsWithCalves() {
        StringColumn season = table.stringColumn("season");
        Map<String, LocalDate> firstBirth = new TreeMap<>();
        for (int row = 0; row < lives.size(); row++) {
            if (lives.get(row).born() != null) {
                firstBirth.merge(
                        season.get(row), lives.get(row).birthDate(), (one, other) -> other.isBefore(one) ? other : one);
            }
        }
        return firstBirth.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The season of the newest birth, or {@code all} where there is none. */
    public String newestSeason() {
        int newest = -1;
        for (int row = 0; row < lives.size(); row++) {
            if (lives.get(row).born() != null
                    && (newest < 0
                            || lives.get(row)
                                    .birthDate()
                                    .isAfter(lives.get(newest).birthDate()))) {
                newest = row;
            }
        }
        return newest < 0 ? "all" : table.stringColumn("season").get(newest);
    }

    /** The row of an animal, or -1. */
    public int rowOf(String key) {
        for (int row = 0; row < lives.size(); row++) {
            if (lives.get(row).key().equals(key)) {
                return row;
            }
        }
        return -1;
    }
}
