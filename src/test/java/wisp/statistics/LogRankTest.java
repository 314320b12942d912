package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static wisp.statistics.ReferenceFile.assertClose;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wisp.statistics.LogRank.Weight;

class LogRankTest {

    @Test
    void agreesWithSurvdiffOnTheAmlTrial() {
        // R 4.2.2, survival 3.5.3: survdiff(Surv(time, status) ~ x, aml), rho = 0 and 1
        ReferenceFile aml = ReferenceFile.read("log-rank-aml");
        int[] arms = numbered(aml.texts("input/x"));
        double[] times = aml.numbers("input/time");
        boolean[] events = happened(aml);
        holds(aml, "logrank", LogRank.of(times, events, arms));
        holds(aml, "peto", LogRank.stratified(times, events, arms, new int[arms.length], Weight.PETO_PETO));
    }

    @Test
    void agreesWithSurvdiffOnTheVeteranTrial() {
        // R 4.2.2, survival 3.5.3: survdiff by cell type (4 groups), by treatment, and by treatment + strata(celltype)
        ReferenceFile veteran = ReferenceFile.read("log-rank-veteran-stratified");
        double[] times = veteran.numbers("input/time");
        boolean[] events = happened(veteran);
        String[] cells = veteran.texts("input/celltype");
        int[] treatment = veteran.integers("input/trt");
        int[] order = numbered(cells); // R orders them by label too: adeno, large, smallcell, squamous
        holds(veteran, "celltype", LogRank.of(times, events, order));
        holds(veteran, "trt", LogRank.of(times, events, treatment));
        CurveComparison within = LogRank.stratified(times, events, treatment, order, Weight.LOG_RANK);
        holds(veteran, "trt_strata_celltype", within);
        assertEquals("stratified log-rank test", within.method());
    }

    @Test
    void agreesWithThePrintedTestOfFreireich() {
        // Printed values quoted from memory:
        // Kleinbaum and Klein 2012, Survival Analysis, section 2.IV: O 9, E 19.25, chi-square 16.793
        CurveComparison test = LogRank.of(Freireich.times(), Freireich.events(), Freireich.arms());
        assertEquals(9, test.observed()[0]);
        assertEquals(19.25, test.expected()[0], 0.005);
        assertEquals(6.257, test.covariance()[0][0], 5e-4);
        assertEquals(16.793, test.chiSquare(), 5e-4);
        assertEquals(1, test.degreesOfFreedom());
        assertEquals(4.2e-5, test.pValue(), 5e-7);
    }

    @Test
    void withoutATimeAtWhichTwoGroupsAreAtRiskItIsRefused() {
        CannotEstimate none = assertThrows(
                CannotEstimate.class, () -> LogRank.of(new double[] {1, 2, 3}, new boolean[3], new int[] {1, 2, 2}));
        assertEquals(
                "The log-rank test cannot be estimated because no event came while two groups or more were at risk.",
                none.getMessage());
        CannotEstimate one = assertThrows(
                CannotEstimate.class, () -> LogRank.of(new double[] {1, 2}, new boolean[] {true, true}, new int[2]));
        assertEquals("The log-rank test cannot be estimated because there is only one group.", one.getMessage());
    }

    @ParameterizedTest
    @ValueSource(longs = {61, 62, 63})
    void orderUnitAndLabelsDoNotMatter(long seed) {
        Lives lives = Lives.drawn(seed, 90);
        Lives other = lives.reversed().scaled(3);
        int[] relabelled = Arrays.stream(other.groups()).map(g -> 40 - 7 * g).toArray();
        for (Weight weight : Weight.values()) {
            CurveComparison test =
                    LogRank.stratified(lives.times(), lives.anyEvent(), lives.groups(), lives.strata(), weight);
            CurveComparison same =
                    LogRank.stratified(other.times(), other.anyEvent(), relabelled, other.strata(), weight);
            assertClose(test.chiSquare(), same.chiSquare(), 1e-9, "chi-square");
            assertEquals(2, test.degreesOfFreedom());
            assertEquals(
                    Arrays.stream(test.observed()).sum(),
                    Arrays.stream(test.expected()).sum(),
                    1e-9);
        }
    }

    static void holds(ReferenceFile file, String path, CurveComparison test) {
        for (int g = 0; g < test.groups().length; g++) {
            assertClose(file.number("expected/" + path + "/observed/" + g), test.observed()[g], 1e-10, "observed");
            assertClose(file.number("expected/" + path + "/expected/" + g), test.expected()[g], 1e-10, "expected");
        }
        double[][] covariance = file.matrix("expected/" + path + "/var");
        for (int g = 0; g < covariance.length; g++) {
            for (int h = 0; h < covariance.length; h++) {
                assertClose(covariance[g][h], test.covariance()[g][h], 1e-9, "covariance");
            }
        }
        assertClose(file.number("expected/" + path + "/chisq"), test.chiSquare(), 1e-9, "chi-square");
        assertEquals(file.integer("expected/" + path + "/df"), test.degreesOfFreedom());
        assertClose(file.number("expected/" + path + "/p"), test.pValue(), 1e-8, "p");
    }

    private static boolean[] happened(ReferenceFile file) {
        double[] status = file.numbers("input/status");
        boolean[] events = new boolean[status.length];
        for (int i = 0; i < events.length; i++) {
            events[i] = status[i] == 1;
        }
        return events;
    }

    static int[] numbered(String[] labels) {
        String[] sorted = Arrays.stream(labels).sorted().distinct().toArray(String[]::new);
        return Arrays.stream(labels)
                .mapToInt(x -> Arrays.binarySearch(sorted, x))
                .toArray();
    }
}
