package wisp.question.navels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import wisp.simulation.StandardModel;

/** What is built into a simulated season comes out of the answer. */
class NavelsRecoveryTest {
    private static final long SEED = 417;
    private static final int CALVES = 8000;

    private final NavelsAnswer answer = NavelHerd.answer(NavelHerd.simulated(StandardModel.model(), CALVES, SEED));

    @Test
    void theStatedEffectOfADoublingIsFound() {
        AdjustedDose.Term dose = answer.late().adjusted().dose();
        System.out.printf(
                "navels recovered: a doubling %.3f, late %.3f, seed %d%n",
                Math.exp(dose.wald().value()),
                answer.late().against().riskRatio().interval().value(),
                SEED);
        // Stated: hazard ratio 1.20 from 5 minutes on. At a risk near one in six the odds ratio of the model is some
        // 0.02 larger on the log scale, and the delays below 5 minutes make it smaller by as much.
        assertEquals(Math.log(1.20), dose.wald().value(), 4 * dose.standardError() + 0.02, "seed " + SEED);
    }

    @Test
    void lateTreatmentHasAboutTheStatedRiskRatio() {
        Measured ratio = answer.late().against().riskRatio();
        double error = Math.log(ratio.interval().high() / ratio.interval().value()) / 1.96;
        assertEquals(Math.log(1.9), Math.log(ratio.interval().value()), 4 * error, "seed " + SEED);
        assertTrue(answer.late().against().moreThanChance(), "seed " + SEED);
        assertTrue(answer.trend().statistic() > 4, "seed " + SEED);
    }

    @Test
    void noProductAndNoMethodStandsOut() {
        for (CareStratum stratum : answer.products()) {
            assertTrue(
                    !stratum.against().fisher().known()
                            || stratum.against().fisher().p() > 1e-4,
                    "seed " + SEED);
        }
        assertEquals(2, answer.methods().size());
    }

    @Test
    void treatingAllEarlyWouldAvoidSome() {
        assertTrue(answer.avoidable().avoided().interval().low() > 0, "seed " + SEED);
        assertTrue(answer.avoidable().minutes() <= 15);
    }

    @Test
    void theCurveRisesAndItsBandHoldsIt() {
        var points = answer.dose().points();
        assertTrue(points.get(points.size() - 1).risk() > 1.5 * points.get(5).risk(), "seed " + SEED);
        points.forEach(point -> assertTrue(point.low() <= point.risk() && point.risk() <= point.high()));
        assertEquals(4, answer.dose().knots().length);
    }
}
