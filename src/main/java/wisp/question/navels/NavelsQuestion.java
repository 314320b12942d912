package wisp.question.navels;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.cohort.Cohort;
import wisp.indicator.Definitions;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.Indicator;
import wisp.indicator.Rule;
import wisp.indicator.Selection;
import wisp.indicator.SelectionWords;
import wisp.indicator.Stratum;
import wisp.indicator.Verdict;

/** Does the time to navel treatment matter here? */
public final class NavelsQuestion {
    /** The definition whose verdicts the answer rests on. */
    public static final String FIGURE = "navel-infection-landmark";

    private final Definitions definitions;
    private final Figures figures;

    /** The question, answered by these definitions. */
    public NavelsQuestion(Definitions definitions) {
        this(definitions, new Figures(definitions));
    }

    /** The question, answered by these definitions from figures that others share. */
    public NavelsQuestion(Definitions definitions, Figures figures) {
        this.definitions = definitions;
        this.figures = figures;
    }

    /** The answer of the calves that are asked for, whole and divided. */
    public NavelsAnswer of(Cohort cohort, Selection selection) {
        Indicator indicator = definitions.indicator(FIGURE).orElseThrow();
        Estimate figure = figures.plain(indicator, cohort, selection);
        double days = days(indicator);
        List<NavelCalf> calves = atRisk(figure, cohort);
        List<NavelCalf> everyone = new ArrayList<>(calves);
        atRisk(figures.plain(byDate(indicator), cohort, selection), cohort).stream()
                .filter(calf -> !calf.birthHourKnown())
                .forEach(everyone::add);
        Map<Integer, String> stratumOf =
                NavelStrata.divides(selection.by()) ? stratumOf(figures.of(indicator, cohort, selection)) : Map.of();
        List<DelayClass> classes = DelayClass.all(calves, days);
        LateTreatment late = LateTreatment.of(calves, days);
        return new NavelsAnswer(
                figure.season(),
                SelectionWords.of(selection),
                cohort.cut(),
                figure,
                classes,
                (int) calves.stream().filter(calf -> !calf.known()).count(),
                DelayTrend.of(classes),
                late,
                DoseResponse.of(calves),
                MissingDelay.of(everyone),
                AvoidableRisk.of(calves),
                CalvesNeeded.of(late.late(), late.early()),
                CareStratum.by(NavelCalf::product, calves, days),
                CareStratum.by(NavelCalf::method, calves, days),
                strata(selection.by(), calves, stratumOf, days),
                everyone,
                stratumOf);
    }

    private static List<NavelCalf> atRisk(Estimate figure, Cohort cohort) {
        return figure.verdicts().stream()
                .filter(Verdict::atRisk)
                .map(verdict -> NavelCalf.of(cohort, verdict))
                .toList();
    }

    /** The same rule by age since the midnight that begins the day of birth, where the hour is not known. */
    private static Indicator byDate(Indicator hours) {
        return new Indicator(
                hours.id(),
                hours.version(),
                hours.title(),
                hours.measure(),
                false,
                hours.population(),
                hours.rule(),
                hours.target(),
                hours.source(),
                hours.remarks(),
                hours.file());
    }

    private static Map<Integer, String> stratumOf(Estimate divided) {
        Map<Integer, String> names = new LinkedHashMap<>();
        divided.strata()
                .forEach(stratum -> stratum.verdicts().forEach(verdict -> names.put(verdict.row(), stratum.name())));
        return names;
    }

    private static NavelStrata strata(Stratum by, List<NavelCalf> calves, Map<Integer, String> stratumOf, double days) {
        if (!NavelStrata.divides(by)) {
            return NavelStrata.none(by);
        }
        Map<String, List<NavelCalf>> parts = new LinkedHashMap<>();
        stratumOf.values().forEach(name -> parts.putIfAbsent(name, new ArrayList<>()));
        calves.stream()
                .filter(NavelCalf::known)
                .forEach(calf -> parts.get(stratumOf.get(calf.verdict().row())).add(calf));
        return NavelStrata.of(by, parts, days);
    }

    private static double days(Indicator indicator) {
        Rule.Risk risk = (Rule.Risk) indicator.rule();
        Duration window =
                risk.window().end().exact().minus(risk.window().start().exact());
        return window.toMillis() / 86_400_000.0;
    }
}
