package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static wisp.statistics.ReferenceFile.assertClose;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GrayTestTest {

    @Test
    void agreesWithCumincOnThreeGroupsWithAndWithoutStrata() {
        // R 4.2.2, cmprsk 2.2.11: cuminc(ftime, fstatus, group, strata)$Tests, help page example
        ReferenceFile file = ReferenceFile.read("gray-test-cmprsk-example");
        double[] times = file.numbers("input/ftime");
        int[] causes = file.integers("input/fstatus");
        int[] groups = LogRankTest.numbered(file.texts("input/group"));
        int[] strata = file.integers("input/strata");
        double[][] plain = file.matrix("expected/unstratified");
        double[][] within = file.matrix("expected/stratified");
        for (int cause = 1; cause <= 2; cause++) {
            holds(plain[cause - 1], GrayTest.of(times, causes, cause, groups));
            holds(within[cause - 1], GrayTest.stratified(times, causes, cause, groups, strata));
        }
    }

    @Test
    void agreesWithCumincOnTheMgusCohortWithItsManyTies() {
        // R 4.2.2, cmprsk 2.2.11: cuminc(etime, event, sex)$Tests on survival::mgus2
        ReferenceFile file = ReferenceFile.read("gray-test-mgus2");
        int[] sex = LogRankTest.numbered(file.texts("input/sex"));
        for (int cause = 1; cause <= 2; cause++) {
            String path = "expected/event_" + cause + "/";
            double[] row = {file.number(path + "stat"), file.number(path + "p"), file.number(path + "df")};
            holds(row, GrayTest.of(file.numbers("input/time"), file.integers("input/event"), cause, sex));
        }
    }

    // No printed example with its data was found in searching, so that the score is worked by hand.
    @Test
    void expectedEventsFollowTheModifiedRiskSetWorkedByHand() {
        // Gray 1988, Ann Statist 16:1141, section 2. Group 1 loses one at 1, one to another cause at 2, one at 4; group
        // 2
        // one at 3, one censored at 5, one at 6. The life lost to another cause stays in group 1's modified risk set
        // while others of the group are followed, so expected there: 3/6 at 1, 2/5 at 3, 2/4 at 4, none at 6.
        CurveComparison test = GrayTest.of(
                new double[] {1, 2, 4, 3, 5, 6}, new int[] {1, 2, 1, 1, 0, 1}, 1, new int[] {1, 1, 1, 2, 2, 2});
        assertEquals(2, test.observed()[0]);
        assertEquals(3.0 / 6 + 2.0 / 5 + 2.0 / 4, test.expected()[0], 1e-12);
        assertEquals(4, test.expected()[0] + test.expected()[1], 1e-12);
    }

    @ParameterizedTest
    @ValueSource(longs = {71, 72})
    void withoutCompetingCauseTheScoreIsThatOfTheLogRankTest(long seed) {
        Lives lives = Lives.drawn(seed, 70);
        CurveComparison gray = GrayTest.of(lives.times(), lives.oneCause(), 1, lives.groups());
        CurveComparison logRank = LogRank.of(lives.times(), lives.anyEvent(), lives.groups());
        for (int g = 0; g < 3; g++) {
            assertEquals(logRank.expected()[g], gray.expected()[g], 1e-9);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {73, 74, 75})
    void orderUnitAndLabelsDoNotMatter(long seed) {
        Lives lives = Lives.drawn(seed, 90);
        Lives other = lives.reversed().scaled(3);
        int[] relabelled = Arrays.stream(other.groups()).map(g -> 40 - 7 * g).toArray();
        CurveComparison test = GrayTest.stratified(lives.times(), lives.causes(), 1, lives.groups(), lives.strata());
        CurveComparison same = GrayTest.stratified(other.times(), other.causes(), 1, relabelled, other.strata());
        assertClose(test.chiSquare(), same.chiSquare(), 1e-9, "chi-square");
    }

    @Test
    void withoutAnEventOfTheCauseItIsRefused() {
        CannotEstimate refusal = assertThrows(
                CannotEstimate.class,
                () -> GrayTest.of(new double[] {1, 2, 3}, new int[] {2, 2, 0}, 1, new int[] {1, 2, 2}));
        assertEquals(
                "The Gray test cannot be estimated because no event came while two groups or more were at risk.",
                refusal.getMessage());
    }

    private static void holds(double[] statisticPDf, CurveComparison test) {
        assertClose(statisticPDf[0], test.chiSquare(), 1e-8, "statistic");
        assertClose(statisticPDf[1], test.pValue(), 1e-8, "p");
        assertEquals(statisticPDf[2], test.degreesOfFreedom());
    }
}
