package wisp.cohort;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import tech.tablesaw.api.Table;
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
 * @param farm the farm through time
 * @param pens each pen's own events (bedding, cleaning, notes), in order
 * @param strayMarks marked events of subjects that are no animals
 * @param cut where follow-up ends: the day asked for, else the time of the newest event in the log
 * @param sequence the newest event that is taken into account
 */
public record Cohort(
        Table table,
        List<Life> lives,
        FarmHistory farm,
        Map<String, List<LifeEvent>> pens,
        List<Mark> strayMarks,
        Instant cut,
        long sequence) {

    /** The seasons that have a calf, in order of their first birth date. */
    public List<String> seasonsWithCalves() {
        Map<LocalDate, TreeSet<String>> byDate = new TreeMap<>();
        for (int row = 0; row < lives.size(); row++) {
            if (lives.get(row).born() != null) {
                byDate.computeIfAbsent(lives.get(row).birthDate(), d -> new TreeSet<>())
                        .add(table.stringColumn("season").get(row));
            }
        }
        return byDate.values().stream().flatMap(TreeSet::stream).distinct().toList();
    }

    /** The season of the newest birth, or {@code all} where there is none. */
    public String newestSeason() {
        List<String> seasons = seasonsWithCalves();
        String newest = "all";
        LocalDate last = null;
        for (int row = 0; row < lives.size(); row++) {
            Life life = lives.get(row);
            if (life.born() != null && (last == null || life.birthDate().isAfter(last))) {
                last = life.birthDate();
                newest = table.stringColumn("season").get(row);
            }
        }
        return seasons.isEmpty() ? "all" : newest;
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
