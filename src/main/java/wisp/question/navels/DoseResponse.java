package wisp.question.navels;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import wisp.statistics.CannotEstimate;
import wisp.statistics.Coefficients;
import wisp.statistics.Logistic;
import wisp.statistics.RegressionFit;
import wisp.statistics.RestrictedCubicSpline;
import wisp.statistics.TestResult;

/**
 * How the risk of a navel case goes with the minutes to treatment among treated calves: a logistic model on a
 * restricted cubic spline of log2(minutes), nothing else allowed for. Four knots at Harrell's quantiles from 60
 * calves on, three below and where ties forbid four. The curve is drawn over the
 * middle 95 % of delays. Delays below one minute count as one.
 *
 * @param points of the curve, each with its pointwise 95 % band, upwards in minutes
 * @param knots in minutes
 * @param minutes the delay of every calf behind the curve, upwards
 * @param bent likelihood-ratio test of the curve against a straight line of log odds on log2(minutes)
 * @param why why there is no curve, null where there is one
 */
public record DoseResponse(List<Point> points, double[] knots, double[] minutes, Tested bent, String why) {
    private static final int CASES_LEAST = 5;
    private static final int CALVES_FOR_FOUR_KNOTS = 60;
    private static final int STEPS = 40;
    private static final double TAIL = 0.025;

    /** The risk at one delay with its band. */
    public record Point(double minutes, double risk, double low, double high) {}

    static DoseResponse of(List<NavelCalf> everyone) {
        List<NavelCalf> treated = everyone.stream().filter(NavelCalf::treated).toList();
        double[] dose = treated.stream().mapToDouble(AdjustedDose::log2).toArray();
        double[] minutes =
                treated.stream().mapToDouble(NavelCalf::minutes).sorted().toArray();
        int cases = (int) treated.stream().filter(NavelCalf::sick).count();
        if (cases < CASES_LEAST) {
            return none(minutes, "Fewer than " + CASES_LEAST + " treated calves were cases, too few to draw a curve.");
        }
        try {
            double[] knots = knots(dose);
            RegressionFit curve = fit(treated, RestrictedCubicSpline.basis(dose, knots));
            return new DoseResponse(
                    points(curve.coefficients(), dose, knots),
                    inMinutes(knots),
                    minutes,
                    bent(treated, curve, dose),
                    null);
        } catch (CannotEstimate cannot) {
            return none(minutes, "Too many calves have the same delay to draw a curve.");
        }
    }

    private static DoseResponse none(double[] minutes, String why) {
        return new DoseResponse(List.of(), new double[0], minutes, Tested.none(why), why);
    }

    private static double[] knots(double[] dose) {
        if (dose.length >= CALVES_FOR_FOUR_KNOTS) {
            try {
                return RestrictedCubicSpline.knots(dose, 4);
            } catch (CannotEstimate ties) {
                return RestrictedCubicSpline.knots(dose, 3);
            }
        }
        return RestrictedCubicSpline.knots(dose, 3);
    }

    private static RegressionFit fit(List<NavelCalf> calves, double[][] rows) {
        boolean[] sick = new boolean[calves.size()];
        double[][] design = new double[rows.length][];
        for (int i = 0; i < sick.length; i++) {
            sick[i] = calves.get(i).sick();
            design[i] = withOne(rows[i]);
        }
        return Logistic.fit(sick, design);
    }

    private static double[] withOne(double[] row) {
        double[] one = new double[row.length + 1];
        one[0] = 1;
        System.arraycopy(row, 0, one, 1, row.length);
        return one;
    }

    private static Tested bent(List<NavelCalf> calves, RegressionFit curve, double[] dose) {
        return Tested.of(() -> {
            double[][] line = new double[dose.length][];
            for (int i = 0; i < line.length; i++) {
                line[i] = new double[] {dose[i]};
            }
            RegressionFit straight = fit(calves, line);
            if (straight.penalised() || curve.penalised()) {
                throw new CannotEstimate("The bend of the curve", "the outcome is separated by the delay");
            }
            int more = curve.coefficients().values().length - 2;
            double statistic = Math.max(0, 2 * (curve.logLikelihood() - straight.logLikelihood()));
            double p = ChiSquaredDistribution.of(more).survivalProbability(statistic);
            return new TestResult(statistic, more, p, "likelihood ratio, " + more + " degrees of freedom");
        });
    }

    private static List<Point> points(Coefficients fit, double[] dose, double[] knots) {
        double[] ascending = dose.clone();
        Arrays.sort(ascending);
        double low = ascending[(int) Math.floor(TAIL * (dose.length - 1))];
        double high = ascending[(int) Math.ceil((1 - TAIL) * (dose.length - 1))];
        double[] at = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            at[i] = low + (high - low) * i / STEPS;
        }
        double[][] basis = RestrictedCubicSpline.basis(at, knots);
        double z = NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - GroupRisk.LEVEL) / 2);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            double[] row = withOne(basis[i]);
            double centre = 0;
            double variance = 0;
            for (int j = 0; j < row.length; j++) {
                centre += row[j] * fit.values()[j];
                for (int k = 0; k < row.length; k++) {
                    variance += row[j] * row[k] * fit.covariance()[j][k];
                }
            }
            double half = z * Math.sqrt(Math.max(0, variance));
            points.add(new Point(Math.pow(2, at[i]), risk(centre), risk(centre - half), risk(centre + half)));
        }
        return points;
    }

    private static double risk(double logOdds) {
        return 1 / (1 + Math.exp(-logOdds));
    }

    private static double[] inMinutes(double[] knots) {
        return Arrays.stream(knots).map(knot -> Math.pow(2, knot)).toArray();
    }
}
