package wisp.question.navels;

import java.util.List;
import wisp.statistics.FisherExactTest;
import wisp.statistics.Mover;
import wisp.statistics.NewcombeDifference;
import wisp.statistics.OddsRatio;
import wisp.statistics.RiskRatio;
import wisp.statistics.TwoByTwoTable;

/**
 * One group beside another.
 *
 * <p>Ratios, difference and tests are of the plain counts at risk at 24 h, as anybody can work them out again from
 * the two-by-two table: Katz's log interval of the risk ratio and Woolf's of the odds ratio, and where a count of 0
 * forbids them Koopman's score interval and the exact conditional one; Newcombe's interval of the difference. A calf
 * that left early counts there as seen, not sick. {@code ratioAt21Days} and {@code differenceAt21Days} compare the
 * risks at 21 days instead, in which such calves count for as long as they were followed (MOVER).
 *
 * @param why why there is no comparison at all, null where there is one
 */
public record TwoGroups(
        Measured riskRatio,
        Measured riskDifference,
        Measured oddsRatio,
        Measured ratioAt21Days,
        Measured differenceAt21Days,
        Tested fisher,
        Tested midP,
        OverPens mantelHaenszel,
        String why) {

    static TwoGroups of(List<NavelCalf> exposed, List<NavelCalf> reference, double days) {
        TwoByTwoTable table = OverPens.table(exposed, reference, calf -> true);
        GroupRisk one = GroupRisk.of(exposed, days);
        GroupRisk two = GroupRisk.of(reference, days);
        return new TwoGroups(
                riskRatio(table),
                Measured.of(() -> NewcombeDifference.of(table, GroupRisk.LEVEL)),
                Measured.of(
                        () -> OddsRatio.of(table, GroupRisk.LEVEL, OddsRatio.Method.WOOLF_LOGIT),
                        () -> OddsRatio.of(table, GroupRisk.LEVEL, OddsRatio.Method.FISHER_EXACT_CONDITIONAL)),
                one.censored() + two.censored() == 0 ? riskRatio(table) : ratio(one.at21Days(), two.at21Days()),
                difference(one.at21Days(), two.at21Days()),
                Tested.p("Fisher exact, two-sided", () -> FisherExactTest.twoSided(table)),
                Tested.p("mid-p, two-sided", () -> FisherExactTest.midP(table)),
                OverPens.of(exposed, reference),
                null);
    }

    static TwoGroups none(String why) {
        Measured not = Measured.none(why);
        Tested no = Tested.none(why);
        return new TwoGroups(not, not, not, not, not, no, no, OverPens.none(why), why);
    }

    static Measured riskRatio(TwoByTwoTable table) {
        return Measured.of(
                () -> RiskRatio.of(table, GroupRisk.LEVEL, RiskRatio.Method.KATZ_LOG),
                () -> RiskRatio.of(table, GroupRisk.LEVEL, RiskRatio.Method.KOOPMAN_SCORE));
    }

    /** The ratio shown first: of the risks at 21 days, or of the counts where that is not to be had. */
    public Measured shown() {
        return ratioAt21Days.known() ? ratioAt21Days : riskRatio;
    }

    /** Whether every way of looking at it, ratio of counts, ratio at 21 days and exact test, finds more than chance. */
    public boolean moreThanChance() {
        return riskRatio.excludes(1) && ratioAt21Days.excludes(1) && fisher.known() && fisher.p() < 1 - GroupRisk.LEVEL;
    }

    private static Measured ratio(Measured one, Measured two) {
        return both(one, two) ? Measured.of(() -> Mover.ratio(one.interval(), two.interval())) : lacking(one, two);
    }

    private static Measured difference(Measured one, Measured two) {
        return both(one, two) ? Measured.of(() -> Mover.difference(one.interval(), two.interval())) : lacking(one, two);
    }

    private static boolean both(Measured one, Measured two) {
        return one.known() && two.known();
    }

    private static Measured lacking(Measured one, Measured two) {
        return Measured.none(one.known() ? two.why() : one.why());
    }
}
