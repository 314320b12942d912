package wisp.indicator;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wisp.cohort.Cohort;

/** Judges calves for an indicator, one after the other. */
public final class Verdicts {
    private static final Outcome NO_ILLNESS = new Outcome.Illness("", "");

    private final LimitVerdict limits;

    /** Judges by these definitions' limits. */
    public Verdicts(Definitions definitions) {
        this.limits = new LimitVerdict(definitions);
    }

    /** What each of these rows is to the indicator; a rule about episodes gives one verdict an episode. */
    public List<Verdict> of(Indicator indicator, Cohort cohort, int[] rows) {
        return of(indicator, new WorkedCohort(cohort, new SettledVerdicts()), rows);
    }

    List<Verdict> of(Indicator indicator, WorkedCohort cohort, int[] rows) {
        Optional<Rule> well = well(indicator.rule());
        if (well.isPresent()) {
            return withTheIll(indicator, cohort, rows, well.get());
        }
        if (indicator.rule() instanceof Rule.CaseFatality) {
            List<Verdict> verdicts = new ArrayList<>(rows.length);
            for (int row : rows) {
                verdicts.addAll(of(indicator, cohort.life(row)));
            }
            return verdicts;
        }
        return judged(indicator, cohort, rows);
    }

    private List<Verdict> judged(Indicator indicator, WorkedCohort cohort, int[] rows) {
        return cohort.settled()
                .of(indicator, cohort, rows, followed -> of(indicator, followed).get(0));
    }

    /** The rule of an illness as it is to calves that never had it: the same whatever the illness. */
    private static Optional<Rule> well(Rule rule) {
        if (rule instanceof Rule.Risk risk && risk.outcome() instanceof Outcome.Illness) {
            return Optional.of(new Rule.Risk(risk.window(), NO_ILLNESS, risk.leaveOutCensored()));
        }
        return rule instanceof Rule.Rate rate && rate.outcome() instanceof Outcome.Illness
                ? Optional.of(new Rule.Rate(rate.window(), NO_ILLNESS))
                : Optional.empty();
    }

    /** All illnesses share the verdicts on calves that never had them; only those that had this one are judged anew. */
    private List<Verdict> withTheIll(Indicator indicator, WorkedCohort cohort, int[] rows, Rule well) {
        Outcome outcome =
                indicator.rule() instanceof Rule.Risk risk ? risk.outcome() : ((Rule.Rate) indicator.rule()).outcome();
        WorkedCohort.Well asked = new WorkedCohort.Well(indicator.population(), indicator.needsHours(), well);
        List<Verdict> verdicts = new ArrayList<>(cohort.well(
                asked,
                rows,
                () -> cohort.settled().of(asked, cohort, rows, followed -> ofWell(indicator, well, followed))));
        int[] ill = Arrays.stream(cohort.ill(((Outcome.Illness) outcome).condition()))
                .filter(row -> Arrays.binarySearch(rows, row) >= 0)
                .toArray();
        List<Verdict> judged = judged(indicator, cohort, ill);
        for (int i = 0; i < ill.length; i++) {
            verdicts.set(Arrays.binarySearch(rows, ill[i]), judged.get(i));
        }
        return verdicts;
    }

    private Verdict ofWell(Indicator indicator, Rule well, FollowedLife followed) {
        Optional<Verdict> refused = Entry.refused(indicator, followed);
        return refused.isPresent()
                ? refused.get()
                : judge(indicator, well, followed).get(0);
    }

    /** What one life, followed to a cut, is to the indicator. */
    List<Verdict> of(Indicator indicator, FollowedLife followed) {
        Optional<Verdict> refused = Entry.refused(indicator, followed);
        return refused.isPresent() ? List.of(refused.get()) : judge(indicator, indicator.rule(), followed);
    }

    private List<Verdict> judge(Indicator indicator, Rule rule, FollowedLife followed) {
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
