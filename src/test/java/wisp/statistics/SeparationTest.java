package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The logistic fit's verdict on separation against linear programming, which decides it exactly. */
class SeparationTest {

    @ParameterizedTest
    @ValueSource(longs = {91, 92, 93, 94, 95, 96, 97, 98, 99})
    void theFitIsPenalisedExactlyWhenLinearProgrammingFindsSeparation(long seed) {
        System.out.println("Designs drawn with seed " + seed);
        Random random = new Random(seed);
        int separated = 0;
        int fitted = 0;
        for (int sample = 0; sample < 150; sample++) {
            int n = 8 + random.nextInt(20);
            double[][] design = new double[n][];
            boolean[] outcomes = new boolean[n];
            double unit = Math.pow(10, random.nextInt(7) - 3);
            for (int i = 0; i < n; i++) {
                design[i] = new double[] {1, random.nextInt(2), unit * random.nextGaussian(), random.nextInt(3)};
                outcomes[i] = random.nextDouble() < 0.35;
            }
            RegressionFit fit = fitOrNull(outcomes, design);
            if (fit != null) {
                fitted++;
                separated += fit.penalised() ? 1 : 0;
                assertEquals(
                        separable(outcomes, design, unit), fit.penalised(), "sample " + sample + " of seed " + seed);
                for (int j = 0; j < 4; j++) {
                    Interval wald = fit.coefficients().wald(j, 0.95);
                    assertTrue(wald.low() < wald.high() && Double.isFinite(wald.high() - wald.low()));
                }
            }
        }
        assertTrue(separated > 10 && fitted - separated > 50, separated + " separated of " + fitted);
    }

    /** Null for draws with no variation in the outcome or in a column, which are refused. */
    private static RegressionFit fitOrNull(boolean[] outcomes, double[][] design) {
        try {
            return Logistic.fit(outcomes, design);
        } catch (CannotEstimate refusal) {
            assertTrue(
                    refusal.getMessage().contains("does not vary")
                            || refusal.getMessage().contains("collinear"),
                    refusal.getMessage());
            return null;
        }
    }

    /** Konis 2007: maximise the sum of s x b with every s x b not negative and b bounded; above 0 means separation. */
    private static boolean separable(boolean[] outcomes, double[][] design, double unit) {
        int p = design[0].length;
        double[] sum = new double[p];
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int i = 0; i < outcomes.length; i++) {
            double[] row = design[i].clone();
            row[2] /= unit;
            for (int j = 0; j < p; j++) {
                row[j] *= outcomes[i] ? 1 : -1;
                sum[j] += row[j];
            }
            constraints.add(new LinearConstraint(row, Relationship.GEQ, 0));
        }
        for (int j = 0; j < p; j++) {
            double[] one = new double[p];
            one[j] = 1;
            constraints.add(new LinearConstraint(one, Relationship.LEQ, 1));
            constraints.add(new LinearConstraint(one, Relationship.GEQ, -1));
        }
        double best = new SimplexSolver()
                .optimize(
                        new MaxIter(10_000),
                        new LinearObjectiveFunction(sum, 0),
                        new LinearConstraintSet(constraints),
                        GoalType.MAXIMIZE,
                        new NonNegativeConstraint(false))
                .getValue();
        return best > 1e-6;
    }
}
