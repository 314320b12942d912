package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.statistics.ReferenceFile.assertClose;

import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class KaplanMeierTest {

    @Test
    void agreesWithSurvfitOnTheTwoArmsOfTheAmlTrial() {
        // R 4.2.2, survival 3.5.3: survfit(Surv(time, status) ~ x, aml, conf.type = "log-log")
        ReferenceFile aml = ReferenceFile.read("kaplan-meier-aml");
        String[] arm = aml.texts("input/x");
        holds(aml, curve(aml, "time", "status", i -> arm[i].equals("Maintained")), 0);
        holds(aml, curve(aml, "time", "status", i -> arm[i].equals("Nonmaintained")), 10);
    }

    @Test
    void quartilesAgreeWithSurvfit() {
        ReferenceFile aml = ReferenceFile.read("kaplan-meier-aml");
        String[] arm = aml.texts("input/x");
        SurvivalCurve curve = curve(aml, "time", "status", i -> arm[i].equals("Maintained"));
        double[] quartiles = aml.matrix("expected/quartiles")[0];
        assertEquals(quartiles[0], curve.quantile(0.25).value());
        assertEquals(quartiles[1], curve.quantile(0.5).value());
        assertEquals(quartiles[2], curve.quantile(0.75).value());
        assertEquals(Double.POSITIVE_INFINITY, curve.quantile(0.75).high());
        CannotEstimate refusal = assertThrows(CannotEstimate.class, () -> curve.quantile(0.9));
        assertTrue(refusal.getMessage().startsWith("The 0.9 quantile cannot be estimated because"));
    }

    @Test
    void agreesWithSurvfitOnDelayedEntry() {
        // R 4.2.2, survival 3.5.3: survfit(Surv(start, stop, event) ~ transplant, heart, conf.type = "log-log")
        ReferenceFile heart = ReferenceFile.read("kaplan-meier-left-truncated-heart");
        String[] transplant = heart.texts("input/transplant");
        int first = 0;
        for (String group : new String[] {"0", "1"}) {
            int[] rows = rows(transplant, group::equals);
            SurvivalCurve curve = KaplanMeier.leftTruncated(
                    take(heart.numbers("input/start"), rows),
                    take(heart.numbers("input/stop"), rows),
                    happened(take(heart.numbers("input/event"), rows)));
            holds(heart, curve, first);
            first += curve.times().length;
        }
    }

    @Test
    void agreesWithSurvfitBetweenTheStepsOfTheVeteranTrial() {
        // R 4.2.2, survival 3.5.3: summary(survfit(Surv(time, status) ~ trt, veteran), times = 30, 60, 90, 180, 365)
        ReferenceFile veteran = ReferenceFile.read("kaplan-meier-veteran-at-times");
        double[] treatment = veteran.numbers("input/trt");
        double[] times = veteran.numbers("expected/time");
        for (int k = 0; k < times.length; k++) {
            int group = k < 5 ? 1 : 2;
            SurvivalCurve curve = curve(veteran, "time", "status", i -> treatment[i] == group);
            Interval there = curve.at(times[k]);
            assertClose(veteran.number("expected/surv/" + k), there.value(), 1e-12, "S");
            assertClose(veteran.number("expected/lower/" + k), there.low(), 1e-9, "low");
            assertClose(veteran.number("expected/upper/" + k), there.high(), 1e-9, "high");
            assertEquals(veteran.integer("expected/n_risk/" + k), curve.atRiskAt(times[k]));
        }
    }

    @ParameterizedTest
    @EnumSource(CurveInterval.class)
    void everyScaleAgreesWithSurvfit(CurveInterval scale) {
        // R 4.2.2, survival 3.5.3: survfit(Surv(time, status) ~ 1, aml Maintained, conf.type = ...)
        ReferenceFile types = ReferenceFile.read("kaplan-meier-conf-types");
        String name = switch (scale) {
            case LOG_LOG -> "log-log";
            case PLAIN -> "plain";
            case LOG -> "log";
            case LOGIT -> "logit";
            case ARCSINE -> "arcsin";
        };
        SurvivalCurve curve =
                KaplanMeier.of(types.numbers("input/time"), happened(types.numbers("input/status")), scale, 0.95);
        for (int i = 0; i < curve.times().length; i++) {
            Interval there = curve.at(curve.times()[i]);
            assertClose(types.number("expected/" + name + "/lower/" + i), there.low(), 1e-9, name + " low " + i);
            assertClose(types.number("expected/" + name + "/upper/" + i), there.high(), 1e-9, name + " high " + i);
        }
    }

    @Test
    void agreesWithThePrintedRemissionTimesOfFreireich() {
        // Freireich and others 1963, 6-MP arm; S printed in Kleinbaum and Klein, Survival Analysis, table 2.2 (from
        // memory)
        SurvivalCurve curve = KaplanMeier.of(Freireich.SIX_MP, Freireich.sixMpRelapses());
        double[] at = {6, 7, 10, 13, 16, 22, 23};
        double[] printed = {.8571, .8067, .7529, .6902, .6275, .5378, .4482};
        for (int i = 0; i < at.length; i++) {
            assertEquals(printed[i], curve.at(at[i]).value(), 5e-5);
        }
    }

    @Test
    void strataAreCurvesOfTheirOwn() {
        SortedMap<Integer, SurvivalCurve> curves =
                KaplanMeier.byStratum(Freireich.times(), Freireich.events(), Freireich.arms());
        assertEquals(List.of(1, 2), List.copyOf(curves.keySet()));
        SurvivalCurve alone = KaplanMeier.of(Freireich.SIX_MP, Freireich.sixMpRelapses());
        assertArrayEquals(alone.survival(), curves.get(1).survival());
        assertEquals(12.0 / 21, curves.get(2).at(7).value(), 1e-12);
        assertThrows(
                CannotEstimate.class,
                () -> KaplanMeier.byStratum(new double[] {1}, new boolean[] {true}, new int[] {1, 2}));
    }

    @Test
    void anEventPrecedesACensoringAtTheSameTime() {
        SurvivalCurve curve = KaplanMeier.of(new double[] {2, 2, 2, 3}, new boolean[] {true, false, false, false});
        assertEquals(4, curve.atRisk()[0]);
        assertEquals(3.0 / 4, curve.at(2).value());
        assertEquals(4, curve.atRiskAt(2));
        assertEquals(1, curve.atRiskAt(2.5));
    }

    @Test
    void anEventAtTheOriginIsInTheRiskSetThere() {
        SurvivalCurve curve = KaplanMeier.leftTruncated(
                new double[] {0, 0, 1}, new double[] {0, 2, 2}, new boolean[] {true, false, true});
        assertEquals(2, curve.atRiskAt(0));
        assertEquals(1.0 / 2, curve.at(0).value());
        assertEquals(1.0 / 4, curve.at(2).value());
    }

    @Test
    void withNoEventTheIntervalIsWilsonsOnThoseStillFollowed() {
        SurvivalCurve curve = KaplanMeier.of(new double[] {1, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5}, new boolean[11]);
        Interval there = curve.at(5);
        // Wilson 0 of 10: 0 to 0.2775 (Newcombe 1998, Statistics in Medicine 17:857)
        assertEquals(1, there.value());
        assertEquals(1 - 0.2775, there.low(), 5e-5);
        assertEquals("Kaplan-Meier, Wilson score on 10 of known state", there.method());
        CannotEstimate refusal = assertThrows(CannotEstimate.class, () -> curve.at(6));
        assertEquals(
                "The Kaplan-Meier curve cannot be estimated because no life was followed that far and no event came "
                        + "before.",
                refusal.getMessage());
    }

    @Test
    void withEveryLifeGoneTheIntervalIsWilsonsOnTheEvents() {
        SurvivalCurve curve = KaplanMeier.of(new double[] {1, 2, 3}, new boolean[] {true, false, true});
        Interval there = curve.at(10);
        assertEquals(0, there.value());
        assertEquals(0, there.low());
        assertEquals("Kaplan-Meier, Wilson score on 2 of known state", there.method());
        assertEquals(0, curve.standardErrors()[2]);
    }

    @Test
    void oneLifeIsEnough() {
        assertEquals(
                0, KaplanMeier.of(new double[] {4}, new boolean[] {true}).at(4).value());
        assertEquals(
                1,
                KaplanMeier.of(new double[] {4}, new boolean[] {true}).at(3.9).value());
        assertEquals(
                1, KaplanMeier.of(new double[] {4}, new boolean[] {false}).at(4).value());
    }

    @Test
    void afterTheLastExitTheCurveIsHeldAndSaysSo() {
        SurvivalCurve curve = KaplanMeier.of(new double[] {1, 2}, new boolean[] {true, false});
        assertEquals(0.5, curve.at(9).value());
        assertEquals(
                "Kaplan-Meier, log(-log), held from the last follow-up at 2.0",
                curve.at(9).method());
        assertEquals(0, curve.atRiskAt(9));
    }

    @Test
    void badInputIsRefusedInWholeSentences() {
        refuses("The survival curve cannot be estimated because there are no observations.", new double[0]);
        refuses(
                "The survival curve cannot be estimated because time 2 is -1.0, not a number from 0 up.",
                new double[] {1, -1});
        refuses(
                "The survival curve cannot be estimated because time 1 is NaN, not a number from 0 up.",
                new double[] {Double.NaN});
        CannotEstimate late = assertThrows(
                CannotEstimate.class,
                () -> KaplanMeier.leftTruncated(new double[] {3}, new double[] {3}, new boolean[] {true}));
        assertEquals(
                "The survival curve cannot be estimated because entry 1 at 3.0 is not before its exit at 3.0.",
                late.getMessage());
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void withoutCensoringTheCurveIsTheProportion(long seed) {
        Lives lives = Lives.drawn(seed, 40);
        boolean[] all = new boolean[40];
        Arrays.fill(all, true);
        SurvivalCurve curve = KaplanMeier.of(lives.times(), all);
        for (int i = 0; i < curve.times().length; i++) {
            double t = curve.times()[i];
            double p = Arrays.stream(lives.times()).filter(x -> x > t).count() / 40.0;
            assertEquals(p, curve.at(t).value(), 1e-12);
            assertEquals(Math.sqrt(p * (1 - p) / 40), curve.standardErrors()[i], 1e-12);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void neitherOrderNorUnitOfTimeMatters(long seed) {
        Lives lives = Lives.drawn(seed, 60);
        SurvivalCurve curve = KaplanMeier.of(lives.times(), lives.anyEvent());
        Lives other = lives.reversed().scaled(24);
        SurvivalCurve hours = KaplanMeier.of(other.times(), other.anyEvent());
        assertArrayEquals(curve.survival(), hours.survival());
        assertArrayEquals(curve.standardErrors(), hours.standardErrors());
        double last = 1;
        for (double t = 0; t <= curve.followUp().last(); t += 0.5) {
            Interval there = curve.at(t);
            assertEquals(there.value(), hours.at(24 * t).value());
            assertTrue(there.low() <= there.value() && there.value() <= there.high() && there.value() <= last);
            last = there.value();
        }
    }

    private static void holds(ReferenceFile file, SurvivalCurve curve, int first) {
        for (int i = 0; i < curve.times().length; i++) {
            int row = first + i;
            assertEquals(file.number("expected/time/" + row), curve.times()[i]);
            assertEquals(file.integer("expected/n_risk/" + row), curve.atRisk()[i]);
            assertEquals(file.integer("expected/n_risk/" + row), curve.atRiskAt(curve.times()[i]));
            assertEquals(file.integer("expected/n_event/" + row), curve.events()[i]);
            assertEquals(file.integer("expected/n_censor/" + row), curve.censored()[i]);
            Interval there = curve.at(curve.times()[i]);
            assertClose(file.number("expected/surv/" + row), there.value(), 1e-12, "S");
            if (there.value() > 0) { // R gives NaN and no interval at S = 0; there Wilson's stands
                assertClose(file.number("expected/greenwood_se/" + row), curve.standardErrors()[i], 1e-9, "se");
                assertClose(file.number("expected/lower_loglog/" + row), there.low(), 1e-9, "low");
                assertClose(file.number("expected/upper_loglog/" + row), there.high(), 1e-9, "high");
            }
        }
    }

    private static SurvivalCurve curve(ReferenceFile file, String time, String status, IntPredicate member) {
        double[] times = file.numbers("input/" + time);
        double[] events = file.numbers("input/" + status);
        int[] rows = IntStream.range(0, times.length).filter(member).toArray();
        return KaplanMeier.of(take(times, rows), happened(take(events, rows)));
    }

    private static int[] rows(String[] labels, Predicate<String> member) {
        return IntStream.range(0, labels.length)
                .filter(i -> member.test(labels[i]))
                .toArray();
    }

    private static double[] take(double[] values, int[] rows) {
        return Arrays.stream(rows).mapToDouble(i -> values[i]).toArray();
    }

    private static boolean[] happened(double[] status) {
        boolean[] events = new boolean[status.length];
        for (int i = 0; i < events.length; i++) {
            events[i] = status[i] == 1;
        }
        return events;
    }

    private static void refuses(String message, double[] times) {
        CannotEstimate refusal =
                assertThrows(CannotEstimate.class, () -> KaplanMeier.of(times, new boolean[times.length]));
        assertEquals(message, refusal.getMessage());
    }
}
