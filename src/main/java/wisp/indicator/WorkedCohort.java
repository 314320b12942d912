package wisp.indicator;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import wisp.cohort.Cohort;

/**
 * A cohort with what every figure asks of it: its followed lives, the rows of a selection, its seasons, and estimates
 * that pages, strata and comparisons share. Estimates are kept as long as they stand on no more than so many verdicts.
 */
final class WorkedCohort {
    private static final int VERDICTS_MOST = 400_000;

    private record AskedFigure(String indicator, Selection selection) {}

    /** How calves that never had an illness are judged. */
    record Well(Population population, boolean needsHours, Rule rule) {}

    private record AskedWell(Well well, int[] rows) {}

    private record AskedRows(Selection selection, boolean placeOfRecord) {}

    private final Cohort cohort;
    private final SettledVerdicts settled;
    private final FollowedLife[] lives;
    private final Map<AskedRows, int[]> rows = new ConcurrentHashMap<>();
    private final Map<AskedRows, int[]> marked = new ConcurrentHashMap<>();
    private final Map<AskedFigure, Estimate> estimates = new HashMap<>();
    private final Map<AskedWell, List<Verdict>> well = new HashMap<>();
    private final Map<String, int[]> ill = new ConcurrentHashMap<>();
    private int verdicts;
    private volatile List<String> seasons;

    /**
     * A cohort of which nothing is worked out yet.
     *
     * @param settled verdicts settled in earlier cohorts of the same herd
     */
    WorkedCohort(Cohort cohort, SettledVerdicts settled) {
        this.cohort = cohort;
        this.settled = settled;
        this.lives = new FollowedLife[cohort.lives().size()];
    }

    Cohort cohort() {
        return cohort;
    }

    SettledVerdicts settled() {
        return settled;
    }

    /** Whether some life of another cohort is unchanged here: both are of one herd. */
    boolean continuedBy(Cohort later) {
        int rows = Math.min(lives.length, later.lives().size());
        for (int row = 0; row < rows; row++) {
            if (cohort.lives().get(row) == later.lives().get(row)) {
                return true;
            }
        }
        return false;
    }

    /** A life of a recorded birth, followed to the cohort's cut. */
    FollowedLife life(int row) {
        // made twice by two threads it is the same: all its fields are final
        FollowedLife life = lives[row];
        if (life == null) {
            life = new FollowedLife(row, cohort.lives().get(row), cohort.cut());
            lives[row] = life;
        }
        return life;
    }

    /** The rows of the animals that ever had an illness, in ascending order. */
    int[] ill(String condition) {
        return ill.computeIfAbsent(
                condition,
                of -> IntStream.range(0, lives.length)
                        .filter(row -> cohort.lives().get(row).episodes().stream()
                                .anyMatch(episode -> episode.condition().equals(of)))
                        .toArray());
    }

    /**
     * The verdicts on calves as if none had ever been ill.
     *
     * @param rows the very array that {@link #rows} gave
     */
    List<Verdict> well(Well asked, int[] rows, Supplier<List<Verdict>> judged) {
        return kept(well, new AskedWell(asked, rows), judged, List::size);
    }

    /** The rows asked for, in ascending order; not to be changed. */
    int[] rows(Selection asked, boolean placeOfRecord) {
        AskedRows key = new AskedRows(asked.by(null), placeOfRecord);
        return rows.computeIfAbsent(key, of -> asked.rows(cohort, placeOfRecord));
    }

    /** Those of the rows asked for whose lives have marked events: mostly few, and the only ones that can count. */
    int[] marked(Selection asked, boolean placeOfRecord) {
        AskedRows key = new AskedRows(asked.by(null), placeOfRecord);
        return marked.computeIfAbsent(
                key,
                of -> Arrays.stream(rows(asked, placeOfRecord))
                        .filter(row -> !cohort.lives().get(row).marks().isEmpty())
                        .toArray());
    }

    /** The seasons that have a calf, in order. */
    List<String> seasonsWithCalves() {
        if (seasons == null) {
            seasons = cohort.seasonsWithCalves();
        }
        return seasons;
    }

    /** A figure worked out before, or worked out now. */
    Estimate estimate(Indicator indicator, Selection selection, Supplier<Estimate> worked) {
        AskedFigure asked = new AskedFigure(indicator.id(), selection.by(null));
        return kept(estimates, asked, worked, estimate -> estimate.verdicts().size());
    }

    private <K, V> V kept(Map<K, V> all, K asked, Supplier<V> worked, ToIntFunction<V> size) {
        synchronized (estimates) {
            V known = all.get(asked);
            if (known != null) {
                return known;
            }
        }
        V value = worked.get();
        synchronized (estimates) {
            verdicts += size.applyAsInt(value);
            if (verdicts > VERDICTS_MOST) {
                estimates.clear();
                well.clear();
                verdicts = size.applyAsInt(value);
            }
            all.put(asked, value);
        }
        return value;
    }
}
