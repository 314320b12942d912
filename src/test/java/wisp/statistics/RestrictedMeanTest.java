package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static wisp.statistics.ReferenceFile.assertClose;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RestrictedMeanTest {

    @Test
    void agreesWithSurvfitOnTheAmlTrial() {
        // R 4.2.2, survival 3.5.3: summary(survfit(Surv(time, status) ~ x, aml), rmean = 40)
        ReferenceFile aml = ReferenceFile.read("kaplan-meier-aml");
        double[] times = aml.numbers("input/time");
        double[] status = aml.numbers("input/status");
        double[][] expected = aml.matrix("expected/rmean_to_40");
        int[][] arms = {{0, 11}, {11, 23}};
        for (int arm = 0; arm < 2; arm++) {
            int from = arms[arm][0];
            boolean[] events = new boolean[arms[arm][1] - from];
            for (int i = 0; i < events.length; i++) {
                events[i] = status[from + i] == 1;
            }
            SurvivalCurve curve = KaplanMeier.of(Arrays.copyOfRange(times, from, arms[arm][1]), events);
            RestrictedMean.Area area = RestrictedMean.area(curve, 40);
            assertClose(expected[arm][0], area.value(), 1e-12, "mean");
            assertClose(expected[arm][1], area.standardError(), 1e-9, "se");
        }
    }

    @Test
    void agreesWithThePrintedMeanOfThe6MpArm() {
        // Printed values quoted from memory:
        // Klein and Moeschberger 2003, example 4.2: mean restricted to 35 weeks 23.3, standard error 2.83
        SurvivalCurve curve = KaplanMeier.of(Freireich.SIX_MP, Freireich.sixMpRelapses());
        RestrictedMean.Area area = RestrictedMean.area(curve, 35);
        assertEquals(23.3, area.value(), 0.05);
        assertEquals(2.83, area.standardError(), 0.005);
        assertEquals(
                "restricted mean to 35.0, normal", RestrictedMean.of(curve, 35).method());
    }

    @Test
    void withoutCensoringItIsThePlainMean() {
        boolean[] all = new boolean[21];
        Arrays.fill(all, true);
        SurvivalCurve curve = KaplanMeier.of(Freireich.PLACEBO, all);
        assertEquals(182.0 / 21, RestrictedMean.of(curve, 40).value(), 1e-12); // 182 person-weeks, 8.67 in print
    }

    @Test
    void itIsRefusedBeyondFollowUp() {
        SurvivalCurve curve = KaplanMeier.of(Freireich.SIX_MP, Freireich.sixMpRelapses());
        CannotEstimate refusal = assertThrows(CannotEstimate.class, () -> RestrictedMean.of(curve, 36));
        assertEquals(
                "The restricted mean cannot be estimated because follow-up ends at 35.0, before 36.0, with lives "
                        + "surviving.",
                refusal.getMessage());
    }

    @Test
    void beforeAnyExitItIsTau() {
        SurvivalCurve curve = KaplanMeier.of(new double[] {5, 6}, new boolean[] {true, true});
        assertEquals(3, RestrictedMean.of(curve, 3).value());
    }
}
