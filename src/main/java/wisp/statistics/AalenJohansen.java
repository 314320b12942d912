package wisp.statistics;

import java.util.ArrayList;
import java.util.List;

/**
 * The Aalen-Johansen estimator of the cumulative incidence of competing causes.
 *
 * <p>Fj(t) = sum over ti &lt;= t of S(ti-) dij / ni, with S the Kaplan-Meier survival from all causes (Aalen and
 * Johansen 1978, Scand J Statist 5:141; Marubini and Valsecchi 1995, section 10.2). The variance is the delta-method
 * one of Dinse and Larson 1986 (Biometrika 73:379) in the form of Gaynor and others 1993 (J Am Stat Assoc 88:400):
 *
 * <pre>var Fj(t) = sum (Fj(t) - Fj(ti))^2 di / (ni (ni - di)) + sum S(ti-)^2 dij (ni - dij) / ni^3
 *             - 2 sum (Fj(t) - Fj(ti)) S(ti-) dij / ni^2</pre>
 *
 * <p>It is the binomial variance when nobody is censored and Greenwood's when there is one cause, and equals the
 * infinitesimal jackknife of R's {@code survival::survfit}. R's {@code cmprsk::cuminc} uses Aalen's counting-process
 * variance, which is larger and has neither property; it was not followed. Times need not be sorted; an event at t
 * precedes a censoring at t, and both are at risk at t.
 */
public final class AalenJohansen {
    private AalenJohansen() {}

    /** The curves of causes 1 to {@code causeCount} with 95 % log(-log) intervals; cause 0 is a censoring. */
    public static List<IncidenceCurve> of(double[] times, int[] causes, int causeCount) {
        return of(times, causes, causeCount, CurveInterval.LOG_LOG, 0.95);
    }

    /**
     * The curves of causes 1 to {@code causeCount}, in that order, of lives observed from the origin.
     *
     * @throws CannotEstimate when there are no observations, a time is negative or not a number, or a cause is out of
     *     range
     */
    public static List<IncidenceCurve> of(
            double[] times, int[] causes, int causeCount, CurveInterval scale, double level) {
        return leftTruncated(new double[0], times, causes, causeCount, scale, level);
    }

    /**
     * The same of lives under observation only after their entry: at risk over (entry, time]; entry 0 is the origin.
     */
    public static List<IncidenceCurve> leftTruncated(
            double[] entries, double[] times, int[] causes, int causeCount, CurveInterval scale, double level) {
        if (causeCount < 1) {
            throw new CannotEstimate("The cumulative incidence", "the number of causes is " + causeCount);
        }
        TwoSided.quantile(level);
        RiskTable table = RiskTable.of("The cumulative incidence", entries, times, causes, causeCount);
        List<IncidenceCurve> curves = new ArrayList<>(causeCount);
        for (int cause = 1; cause <= causeCount; cause++) {
            curves.add(curve(table, cause, scale, level));
        }
        return List.copyOf(curves);
    }

    private static IncidenceCurve curve(RiskTable table, int cause, CurveInterval scale, double level) {
        int steps = table.times().length;
        int[] own = table.events()[cause - 1];
        int[] competing = new int[steps];
        double[] incidence = new double[steps];
        double[] errors = new double[steps];
        double survival = 1;
        boolean othersCame = false;
        Variance variance = new Variance();
        for (int i = 0; i < steps; i++) {
            int all = table.allEvents(i);
            competing[i] = all - own[i];
            if (all > 0) {
                variance.step(survival, table.atRisk()[i], all, own[i]);
                survival *= (table.atRisk()[i] - all) / (double) table.atRisk()[i];
            }
            othersCame |= competing[i] > 0;
            // with nobody left and no other cause F is 1, not a sum that rounding left just beside it
            incidence[i] = survival == 0 && !othersCame ? 1 : variance.incidence;
            errors[i] = Math.sqrt(Math.max(0, variance.value()));
        }
        return new IncidenceCurve(
                cause,
                table.times(),
                table.atRisk(),
                own,
                competing,
                table.censored(),
                incidence,
                errors,
                table.followUp(),
                scale,
                level);
    }

    /** The three sums of the variance, brought forward step by step so that the whole curve takes one pass. */
    private static final class Variance {
        private double incidence;
        private double greenwood;
        private double gap;
        private double gapSquared;
        private double binomial;
        private double cross;
        private double gapCross;

        void step(double survival, double n, double all, double own) {
            double rise = survival * own / n;
            gapSquared += 2 * rise * gap + rise * rise * greenwood;
            gap += rise * greenwood;
            gapCross += rise * cross;
            incidence += rise;
            // with n = all nothing follows, and the factor F(t) - F(ti) of this term stays 0
            greenwood += n > all ? all / (n * (n - all)) : 0;
            binomial += survival * survival * own * (n - own) / (n * n * n);
            cross += survival * own / (n * n);
        }

        double value() {
            return gapSquared + binomial - 2 * gapCross;
        }
    }
}
