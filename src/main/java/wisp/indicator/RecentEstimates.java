package wisp.indicator;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import wisp.cohort.Cohort;

/**
 * Estimates worked out lately, so that pages, strata and comparisons that stand on the same figure share it. They hold
 * for one cohort, which never changes; a new event makes a new one. Those of the two cohorts used last are kept,
 * today's and mostly that of a past day, and of each no more than stand on so many verdicts.
 */
final class RecentEstimates {
    private static final int COHORTS_MOST = 2;
    private static final int VERDICTS_MOST = 400_000;

    private record Asked(String indicator, Selection selection) {}

    private static final class OfCohort {
        private final Cohort cohort;
        private final Map<Asked, Estimate> estimates = new HashMap<>();
        private int verdicts;

        private OfCohort(Cohort cohort) {
            this.cohort = cohort;
        }
    }

    private final Deque<OfCohort> recent = new ArrayDeque<>();

    Estimate of(Indicator indicator, Cohort cohort, Selection selection, Supplier<Estimate> worked) {
        Asked asked = new Asked(indicator.id(), selection.by(null));
        synchronized (recent) {
            Estimate known = of(cohort).estimates.get(asked);
            if (known != null) {
                return known;
            }
        }
        Estimate estimate = worked.get();
        synchronized (recent) {
            OfCohort of = of(cohort);
            of.verdicts += estimate.verdicts().size();
            if (of.verdicts > VERDICTS_MOST) {
                of.estimates.clear();
                of.verdicts = estimate.verdicts().size();
            }
            of.estimates.put(asked, estimate);
        }
        return estimate;
    }

    private OfCohort of(Cohort cohort) {
        // the very same cohort: comparing two of them by content would cost more than the work
        for (OfCohort of : recent) {
            if (of.cohort == cohort) {
                recent.remove(of);
                recent.addFirst(of);
                return of;
            }
        }
        OfCohort of = new OfCohort(cohort);
        recent.addFirst(of);
        if (recent.size() > COHORTS_MOST) {
            recent.removeLast();
        }
        return of;
    }
}
