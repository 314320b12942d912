package wisp.indicator;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wisp.cohort.Cohort;
import wisp.history.Life;

/** Judges calves for an indicator, one after the other. */
public final class Verdicts {
    private final Definitions definitions;

    /** Judges by these definitions' limits. */
    public Verdicts(Definitions definitions) {
        this.definitions = definitions;
    }

    /** What each of these rows is to the indicator; a rule about episodes gives one verdict an episode. */
    public List<Verdict> of(Indicator indicator, Cohort cohort, int[] rows) {
        List<Verdict> verdicts = new ArrayList<>(rows.length);
        for (int row : rows) {
            verdicts.addAll(of(indicator, row, cohort.lives().get(row), cohort.cut()));
        }
        return verdicts;
    }

    /** What one life, followed to a cut, is to the indicator. */
    List<Verdict> of(Indicator indicator, int row, Life life, Instant cut) {
        FollowedLife followed = new FollowedLife(row, life, cut);
        Optional<Verdict> refused = Entry.refused(indicator, followed);
        return refused.isPresent() ? List.of(refused.get()) : judge(indicator, followed);
    }

    private List<Verdict> judge(Indicator indicator, FollowedLife followed) {
        Rule rule = indicator.rule();
        if (rule instanceof Rule.Risk risk) {
            return List.of(RiskVerdict.of(indicator, risk, followed));
        } else if (rule instanceof Rule.Rate rate) {
            return List.of(RateVerdict.of(indicator, rate, followed));
        } else if (rule instanceof Rule.CaseFatality fatality) {
            return ProportionVerdict.caseFatality(fatality, followed);
        } else if (rule instanceof Rule.Feature feature) {
            return List.of(ProportionVerdict.feature(feature, followed));
        } else if (rule instanceof Rule.AmountByAge amount) {
            return List.of(ProportionVerdict.amount(amount, followed));
        }
        LimitVerdict limits = new LimitVerdict(definitions);
        if (rule instanceof Rule.DoneByLimit done) {
            return List.of(limits.doneByLimit(done, followed));
        } else if (rule instanceof Rule.DoneAtEnd atEnd) {
            return List.of(limits.doneAtEnd(atEnd, followed));
        } else if (rule instanceof Rule.CastratedLawfully) {
            return List.of(limits.castratedLawfully(followed));
        }
        throw new IllegalStateException("a rule of no known kind: " + rule);
    }
}
