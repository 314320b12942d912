package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.statistics.ReferenceFile.assertClose;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AalenJohansenTest {

    @Test
    void agreesWithSurvfitOnTwelveLives() {
        // R 4.2.2, survival 3.5.3: survfit(Surv(time, factor(event, 0:2)) ~ 1)$pstate
        ReferenceFile tiny = ReferenceFile.read("aalen-johansen-tiny");
        List<IncidenceCurve> curves =
                AalenJohansen.of(tiny.numbers("input/data/time"), tiny.integers("input/data/event"), 2);
        double[][] expected = tiny.matrix("expected/cif");
        assertArrayEquals(tiny.numbers("expected/time"), curves.get(0).times());
        assertArrayEquals(tiny.integers("expected/n_risk"), curves.get(0).atRisk());
        for (int i = 0; i < expected.length; i++) {
            assertClose(expected[i][0], curves.get(0).incidence()[i], 1e-12, "cause 1");
            assertClose(expected[i][1], curves.get(1).incidence()[i], 1e-12, "cause 2");
        }
    }

    @Test
    void varianceIsTheDeltaMethodOneAndNotTheCountingProcessOne() {
        // R 4.2.2: Dinse-Larson written out (var_delta); survfit's infinitesimal jackknife agrees, cmprsk's does not
        ReferenceFile tiny = ReferenceFile.read("aalen-johansen-tiny-variances");
        List<IncidenceCurve> curves =
                AalenJohansen.of(tiny.numbers("input/data/time"), tiny.integers("input/data/event"), 2);
        double[] times = tiny.numbers("expected/time");
        for (int j = 1; j <= 2; j++) {
            double[] expected = tiny.numbers("expected/event_" + j + "/var_delta");
            double[] jackknife = tiny.numbers("expected/event_" + j + "/var_ij");
            IncidenceCurve curve = curves.get(j - 1);
            for (int i = 0; i < times.length; i++) {
                double se = curve.standardErrors()[Arrays.binarySearch(curve.times(), times[i])];
                assertClose(expected[i], se * se, 1e-9, "delta");
                assertClose(jackknife[i], se * se, 1e-9, "jackknife");
            }
        }
    }

    @Test
    void agreesWithSurvfitOnTheMgusCohort() {
        // R 4.2.2, survival 3.5.3: summary(survfit(Surv(time, event) ~ 1, mgus2), times), whole and by sex
        ReferenceFile mgus = ReferenceFile.read("aalen-johansen-mgus2");
        double[] times = mgus.numbers("input/time");
        int[] causes = mgus.integers("input/event");
        String[] sex = mgus.texts("input/sex");
        double[] at = mgus.numbers("input/times");
        for (String who : new String[] {"all", "F", "M"}) {
            int[] rows = IntStream.range(0, sex.length)
                    .filter(i -> who.equals("all") || who.equals(sex[i]))
                    .toArray();
            List<IncidenceCurve> curves = AalenJohansen.of(
                    Arrays.stream(rows).mapToDouble(i -> times[i]).toArray(),
                    Arrays.stream(rows).map(i -> causes[i]).toArray(),
                    2);
            for (int k = 0; k < at.length; k++) {
                holds(mgus, who + "/pcm", k, curves.get(0), at[k]);
                holds(mgus, who + "/death", k, curves.get(1), at[k]);
            }
        }
    }

    @Test
    void agreesWithTenLivesWorkedByHand() {
        // 1 - KM with deaths censored would say 0.58, too much
        double[] times = {2, 3, 5, 5, 7, 8, 10, 12, 14, 14};
        int[] causes = {1, 2, 1, 0, 2, 1, 0, 1, 0, 0};
        List<IncidenceCurve> curves = AalenJohansen.of(times, causes, 2);
        double disease = 1.0 / 10 + 9.0 / 10 * 8 / 9 / 8 + 7.0 / 10 * 5 / 6 / 5 + 7.0 / 15 / 3;
        assertEquals(disease, curves.get(0).at(12).value(), 1e-12);
        assertEquals(0.4722, curves.get(0).at(12).value(), 5e-5);
        assertEquals(0.2167, curves.get(1).at(12).value(), 5e-5);
        SurvivalCurve naive =
                KaplanMeier.of(times, new boolean[] {true, false, true, false, false, true, false, true, false, false});
        assertEquals(0.58, 1 - naive.at(12).value(), 1e-12);
    }

    @Test
    void withoutCensoringItIsTheBinomialProportion() {
        double[] times = {1, 2, 2, 3, 4, 5, 6, 6, 9, 9};
        int[] causes = {1, 2, 1, 1, 2, 1, 2, 2, 1, 1};
        IncidenceCurve curve = AalenJohansen.of(times, causes, 2).get(0);
        double p = 4 / 10.0; // at 5: causes 1 at 1, 2, 3, 5
        assertEquals(p, curve.at(5).value(), 1e-12);
        int at = Arrays.binarySearch(curve.times(), 5);
        assertEquals(Math.sqrt(p * (1 - p) / 10), curve.standardErrors()[at], 1e-12);
    }

    @Test
    void aCauseNotSeenHasWilsonsIntervalOnTheLivesOfKnownState() {
        double[] times = {1, 2, 3, 4, 4, 4, 4, 4, 4, 4, 4};
        int[] causes = {0, 2, 2, 0, 0, 0, 0, 0, 0, 0, 0};
        Interval there = AalenJohansen.of(times, causes, 2).get(0).at(4);
        assertEquals(0, there.value());
        assertEquals(0, there.low());
        assertEquals(0.2775, there.high(), 5e-5); // Wilson 0 of 10 (Newcombe 1998)
        assertEquals("Aalen-Johansen, Wilson score on 10 of known state", there.method());
        CannotEstimate refusal = assertThrows(
                CannotEstimate.class,
                () -> AalenJohansen.of(new double[] {1, 2}, new int[2], 2)
                        .get(0)
                        .at(3));
        assertEquals(
                "The Aalen-Johansen curve cannot be estimated because no life was followed that far and no event came "
                        + "before.",
                refusal.getMessage());
    }

    @Test
    void whenAllFailOfOneCauseTheIncidenceIsExactlyOne() {
        Interval there = AalenJohansen.of(new double[] {1, 2, 3, 4, 5, 6, 7}, new int[] {1, 0, 1, 1, 0, 1, 1}, 1)
                .get(0)
                .at(7);
        assertEquals(1, there.value());
        assertEquals(1, there.high());
        assertEquals("Aalen-Johansen, Wilson score on 5 of known state", there.method());
    }

    @Test
    void withLateEntryAndOneCauseItIsTheComplementOfKaplanMeier() {
        double[] entries = {0, 0, 1, 2, 3, 0};
        double[] times = {2, 4, 5, 6, 6, 8};
        int[] causes = {1, 0, 1, 1, 0, 1};
        SurvivalCurve survival =
                KaplanMeier.leftTruncated(entries, times, new boolean[] {true, false, true, true, false, true});
        IncidenceCurve incidence = AalenJohansen.leftTruncated(entries, times, causes, 1, CurveInterval.LOG_LOG, 0.95)
                .get(0);
        assertEquals(4, incidence.atRiskAt(1.5)); // three from the origin and one since 1
        assertEquals(1 - 3.0 / 4, incidence.at(2).value(), 1e-12);
        for (double t = 0; t <= 8; t += 0.5) {
            assertEquals(1 - survival.at(t).value(), incidence.at(t).value(), 1e-12);
            assertEquals(1 - survival.at(t).high(), incidence.at(t).low(), 1e-9);
        }
    }

    @Test
    void badInputIsRefused() {
        CannotEstimate refusal =
                assertThrows(CannotEstimate.class, () -> AalenJohansen.of(new double[] {1}, new int[] {3}, 2));
        assertEquals(
                "The cumulative incidence cannot be estimated because cause 1 is 3, not between 0 and 2.",
                refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33})
    void withOneCauseItIsTheComplementOfKaplanMeier(long seed) {
        Lives lives = Lives.drawn(seed, 50);
        IncidenceCurve incidence =
                AalenJohansen.of(lives.times(), lives.oneCause(), 1).get(0);
        SurvivalCurve survival = KaplanMeier.of(lives.times(), lives.anyEvent());
        for (double t = 0; t <= survival.followUp().last(); t++) {
            Interval f = incidence.at(t);
            Interval s = survival.at(t);
            assertEquals(1 - s.value(), f.value(), 1e-12);
            assertEquals(1 - s.high(), f.low(), 1e-10);
            assertEquals(1 - s.low(), f.high(), 1e-10);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43})
    void causesOrderAndUnitMayBeRelabelled(long seed) {
        Lives lives = Lives.drawn(seed, 80);
        Lives other = lives.reversed().scaled(7);
        int[] swapped =
                Arrays.stream(other.causes()).map(c -> c == 0 ? 0 : 3 - c).toArray();
        List<IncidenceCurve> curves = AalenJohansen.of(lives.times(), lives.causes(), 2);
        List<IncidenceCurve> relabelled = AalenJohansen.of(other.times(), swapped, 2);
        SurvivalCurve survival = KaplanMeier.of(lives.times(), lives.anyEvent());
        assertArrayEquals(curves.get(0).incidence(), relabelled.get(1).incidence(), 1e-15);
        assertArrayEquals(curves.get(0).standardErrors(), relabelled.get(1).standardErrors(), 1e-15);
        double before = 0;
        for (int i = 0; i < survival.times().length; i++) {
            double one = curves.get(0).incidence()[i];
            assertEquals(1, one + curves.get(1).incidence()[i] + survival.survival()[i], 1e-12);
            assertTrue(one >= before);
            before = one;
            Interval there = curves.get(0).at(survival.times()[i]);
            assertTrue(there.low() <= there.value() && there.value() <= there.high());
        }
    }

    private static void holds(ReferenceFile mgus, String path, int k, IncidenceCurve curve, double time) {
        int step = StepFunction.lastAtOrBefore(curve.times(), time);
        assertClose(
                mgus.number("expected/" + path + "/cif/" + k), curve.at(time).value(), 1e-10, path);
        assertClose(mgus.number("expected/" + path + "/se_survfit_ij/" + k), curve.standardErrors()[step], 1e-8, path);
    }
}
