package wisp.due;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wisp.statistics.AalenJohansen;
import wisp.statistics.IncidenceCurve;

/**
 * How the share done grows with time: the Aalen–Johansen cumulative incidence of the thing being done, death competing,
 * leaving and the cut censoring. It is the plain share at the limit when nobody died, left or is pending before it.
 */
final class TimeToDone {
    private TimeToDone() {}

    /** The curve over days of the limit's clock or exact hours; empty without a calf whose time is known. */
    static Optional<IncidenceCurve> of(List<ProofCalf> calves, Instant cut) {
        List<ProofCalf> known = calves.stream().filter(TimeToDone::known).toList();
        if (known.isEmpty()) {
            return Optional.empty();
        }
        double[] times = new double[known.size()];
        int[] causes = new int[known.size()];
        for (int i = 0; i < known.size(); i++) {
            ProofCalf calf = known.get(i);
            times[i] = followed(calf, cut);
            causes[i] = switch (calf.ending(cut)) {
                case DONE -> 1;
                case DIED -> 2;
                case LEFT, STILL_OPEN -> 0;
            };
        }
        return Optional.of(AalenJohansen.of(times, causes, 2).get(0));
    }

    /** For how long a calf is followed. */
    static double followed(ProofCalf calf, Instant cut) {
        return Math.max(0, calf.time(calf.ended(cut)));
    }

    /** In hours, only where the hour of birth and of the doing are known. */
    static boolean known(ProofCalf calf) {
        return !calf.span().byHours()
                || (calf.life().birthTimeKnown()
                        && (calf.done() == null || calf.done().timeKnown()));
    }
}
