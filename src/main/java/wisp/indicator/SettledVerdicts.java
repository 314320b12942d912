package wisp.indicator;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import wisp.history.Life;
import wisp.history.LifeEvent;

/**
 * Verdicts that no later cut can change, kept from one cohort of a herd to the next. A verdict is settled where the cut
 * leaves nothing open; it holds for every later cut as long as no event touches the life. So a new event has one life
 * judged anew, and those still followed.
 */
final class SettledVerdicts {
    private static final int VERDICTS_MOST = 1_000_000;

    private final Map<Object, Kept> kept = new LinkedHashMap<>(16, 0.75f, true);

    /** The settled verdicts of one question, by row, each with the life that it is on. */
    private static final class Kept {
        private Life[] lives = {};
        private Verdict[] verdicts = {};
        private Instant newestCut = Instant.MIN;

        private void grow(int rows) {
            if (lives.length < rows) {
                // some room, as most new events of a season are births
                lives = Arrays.copyOf(lives, rows + rows / 8);
                verdicts = Arrays.copyOf(verdicts, lives.length);
            }
        }
    }

    /**
     * One verdict a row.
     *
     * @param question what tells this judgement from every other
     * @param judge gives the verdict on one life
     */
    List<Verdict> of(Object question, WorkedCohort cohort, int[] rows, Function<FollowedLife, Verdict> judge) {
        Kept of = kept(question, cohort.cohort().lives().size());
        synchronized (of) {
            Instant cut = cohort.cohort().cut();
            // whoever still reads an older cohort must not see what was settled after its cut
            boolean newest = !cut.isBefore(of.newestCut);
            if (newest) {
                of.newestCut = cut;
                of.grow(cohort.cohort().lives().size());
            }
            List<Verdict> verdicts = new ArrayList<>(rows.length);
            for (int row : rows) {
                verdicts.add(newest ? settled(of, cohort, row, judge) : judge.apply(cohort.life(row)));
            }
            return verdicts;
        }
    }

    private static Verdict settled(Kept of, WorkedCohort cohort, int row, Function<FollowedLife, Verdict> judge) {
        Life life = cohort.cohort().lives().get(row);
        // the very same life: an event that touches it makes another
        if (of.lives[row] == life) {
            return of.verdicts[row];
        }
        Verdict verdict = judge.apply(cohort.life(row));
        boolean settled = !verdict.pending() && !goesOnAfter(life, of.newestCut);
        of.lives[row] = settled ? life : null;
        of.verdicts[row] = settled ? verdict : null;
        return verdict;
    }

    private static boolean goesOnAfter(Life life, Instant cut) {
        List<LifeEvent> events = life.events();
        return !events.isEmpty() && events.get(events.size() - 1).time().isAfter(cut);
    }

    private Kept kept(Object question, int rows) {
        synchronized (kept) {
            Kept of = kept.computeIfAbsent(question, asked -> new Kept());
            Iterator<Kept> oldest = kept.values().iterator();
            while ((long) kept.size() * rows > VERDICTS_MOST && kept.size() > 1) {
                oldest.next();
                oldest.remove();
            }
            return of;
        }
    }
}
