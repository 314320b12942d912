package wisp.question.navels;

import java.time.Duration;
import java.util.List;
import wisp.cohort.Cohort;
import wisp.indicator.Definitions;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.Indicator;
import wisp.indicator.Rule;
import wisp.indicator.Selection;
import wisp.indicator.Verdict;

/** Does the time to navel treatment matter here? */
public final class NavelsQuestion {
    /** The definition whose verdicts the answer rests on. */
    public static final String FIGURE = "navel-infection-landmark";

    private final Definitions definitions;

    /** The question, answered by these definitions. */
    public NavelsQuestion(Definitions definitions) {
        this.definitions = definitions;
    }

    /** The answer of the calves that are asked for; what they are to be divided by is not looked at. */
    public NavelsAnswer of(Cohort cohort, Selection selection) {
        Indicator indicator = definitions.indicator(FIGURE).orElseThrow();
        Estimate figure = new Figures(definitions).plain(indicator, cohort, selection);
        double days = days(indicator);
        List<NavelCalf> calves = figure.verdicts().stream()
                .filter(Verdict::atRisk)
                .map(verdict -> NavelCalf.of(cohort, verdict))
                .toList();
        List<DelayClass> classes = DelayClass.all(calves, days);
        LateTreatment late = LateTreatment.of(calves, days);
        return new NavelsAnswer(
                figure.season(),
                cohort.cut(),
                figure,
                classes,
                (int) calves.stream().filter(calf -> !calf.known()).count(),
                DelayTrend.of(classes),
                late,
                DoseResponse.of(calves),
                MissingDelay.of(calves),
                AvoidableRisk.of(calves),
                CalvesNeeded.of(late.late(), late.early()),
                CareStratum.by(NavelCalf::product, calves, days),
                CareStratum.by(NavelCalf::method, calves, days));
    }

    private static double days(Indicator indicator) {
        Rule.Risk risk = (Rule.Risk) indicator.rule();
        Duration window =
                risk.window().end().exact().minus(risk.window().start().exact());
        return window.toMillis() / 86_400_000.0;
    }
}
