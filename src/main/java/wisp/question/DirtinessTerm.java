package wisp.question;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import wisp.statistics.CannotEstimate;
import wisp.statistics.Coefficients;
import wisp.statistics.Design;
import wisp.statistics.Interval;
import wisp.statistics.Logistic;
import wisp.statistics.MultipleTesting;

/**
 * What one more day since bedding, or one more calving in the last week, goes along with: a term of a logistic model of
 * the calves of bedded pens.
 *
 * @param name what there is one more of
 * @param crude odds ratio by itself, null where it cannot be estimated
 * @param within odds ratio within pens, days and calvings in one model with a term for each pen
 * @param adjustedP p-value of {@code within}, Holm's adjustment for both terms
 * @param n calves in the model
 * @param method how {@code within} was fitted, empty where it was not
 * @param why why an odds ratio is missing, null where both stand
 */
public record DirtinessTerm(
        String name, Interval crude, Interval within, double adjustedP, int n, String method, String why) {
    static final String BEDDING = "one more day since bedding";
    static final String CALVING = "one more calving in the pen in the last 7 days";

    /** Whether it goes along with more, or fewer, dirty calves by more than chance. */
    public boolean moreThanChance() {
        return within != null && adjustedP < 0.05 && (within.low() > 1 || within.high() < 1);
    }

    static List<DirtinessTerm> of(List<ScoredCalf> calves) {
        List<ScoredCalf> bedded =
                calves.stream().filter(ScoredCalf::beddingKnown).toList();
        boolean[] dirty = new boolean[bedded.size()];
        for (int i = 0; i < dirty.length; i++) {
            dirty[i] = bedded.get(i).dirty();
        }
        double[] days = column(bedded, ScoredCalf::daysSinceBedding);
        double[] calvings = column(bedded, ScoredCalf::calvingsBefore);
        Fit both = Fit.of(dirty, withPens(bedded, days, calvings));
        Fit daysAlone = Fit.of(dirty, days);
        Fit calvingsAlone = Fit.of(dirty, calvings);
        double[] p = both.coefficients == null
                ? new double[] {Double.NaN, Double.NaN}
                : MultipleTesting.holm(both.coefficients.pValue(1), both.coefficients.pValue(2));
        return List.of(
                term(BEDDING, daysAlone, both, 1, p[0], dirty.length),
                term(CALVING, calvingsAlone, both, 2, p[1], dirty.length));
    }

    private static DirtinessTerm term(String name, Fit alone, Fit both, int j, double p, int n) {
        String method = both.coefficients == null ? "" : both.coefficients.method();
        String why = both.why != null ? both.why : alone.why;
        return new DirtinessTerm(name, alone.ratio(1), both.ratio(j), p, n, method, why);
    }

    private static double[] column(List<ScoredCalf> calves, ToDoubleFunction<ScoredCalf> of) {
        return calves.stream().mapToDouble(of).toArray();
    }

    private static double[][] withPens(List<ScoredCalf> calves, double[] days, double[] calvings) {
        List<double[]> columns = new ArrayList<>(List.of(days, calvings));
        calves.stream()
                .map(ScoredCalf::pen)
                .distinct()
                .sorted()
                .skip(1)
                .forEach(pen -> columns.add(column(calves, calf -> calf.pen().equals(pen) ? 1 : 0)));
        return columns.toArray(double[][]::new);
    }

    /** A fit, or why there is none. */
    private record Fit(Coefficients coefficients, String why) {
        static Fit of(boolean[] dirty, double[]... columns) {
            try {
                return new Fit(
                        Logistic.fit(dirty, Design.withIntercept(columns)).coefficients(), null);
            } catch (CannotEstimate cannot) {
                return new Fit(null, cannot.getMessage());
            }
        }

        Interval ratio(int j) {
            return coefficients == null ? null : coefficients.ratio(j, DirtyShare.LEVEL);
        }
    }
}
