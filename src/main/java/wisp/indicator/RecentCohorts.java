package wisp.indicator;

import java.util.ArrayDeque;
import java.util.Deque;
import wisp.cohort.Cohort;

/**
 * The two cohorts used last, today's and mostly that of a past day, with what was worked out from them. That holds for
 * one cohort, which never changes; a new event makes a new one, which takes over what is settled.
 */
final class RecentCohorts {
    private static final int COHORTS_MOST = 2;

    private final Deque<WorkedCohort> recent = new ArrayDeque<>();

    synchronized WorkedCohort of(Cohort cohort) {
        // the very same cohort: comparing two of them by content would cost more than the work
        for (WorkedCohort worked : recent) {
            if (worked.cohort() == cohort) {
                recent.remove(worked);
                recent.addFirst(worked);
                return worked;
            }
        }
        SettledVerdicts settled = recent.stream()
                .filter(earlier -> earlier.continuedBy(cohort))
                .map(WorkedCohort::settled)
                .findFirst()
                .orElseGet(SettledVerdicts::new);
        WorkedCohort worked = new WorkedCohort(cohort, settled);
        recent.addFirst(worked);
        if (recent.size() > COHORTS_MOST) {
            recent.removeLast();
        }
        return worked;
    }
}
