package wisp.question.season;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wisp.cohort.Cohort;
import wisp.indicator.Comparison;
import wisp.indicator.Definitions;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.Indicator;
import wisp.indicator.Measure;
import wisp.indicator.Outcome;
import wisp.indicator.Rule;
import wisp.indicator.Selection;
import wisp.statistics.MultipleTesting;

/** How did the season go? */
public final class SeasonQuestion {
    /** The figure that is divided where nobody asks for another. */
    public static final String MORTALITY = "preweaning-mortality";

    static final String STILLBIRTH = "stillbirth";
    private static final String TRANSFER = "passive-transfer";
    private static final String RATE = "-rate";

    private final Definitions definitions;
    private final Figures figures;

    /** The question, answered by these definitions. */
    public SeasonQuestion(Definitions definitions) {
        this(definitions, new Figures(definitions));
    }

    /** The question, answered by these definitions from figures that others share. */
    public SeasonQuestion(Definitions definitions, Figures figures) {
        this.definitions = definitions;
        this.figures = figures;
    }

    /** The answer of the calves that are asked for, with mortality divided. */
    public SeasonAnswer of(Cohort cohort, Selection selection) {
        return of(cohort, selection, definitions.indicator(MORTALITY).orElseThrow());
    }

    /** The answer of the calves that are asked for; what the selection divides by is not looked at. */
    public SeasonAnswer of(Cohort cohort, Selection asked, Indicator divided) {
        String season = asked.seasonIn(cohort);
        Selection selection = asked.by(null).ofSeason(season);
        List<SeasonFigure> all = figures(cohort, selection);
        String before = before(all);
        int[] rows = selection.calves(cohort);
        int[] lastSeason =
                before.isEmpty() ? new int[0] : selection.ofSeason(before).calves(cohort);
        Deaths deaths = Deaths.of(cohort, rows, lastSeason, definitions.conditions());
        StrataTable strata = StrataTable.of(divided, figures, cohort, selection);
        return new SeasonAnswer(
                season,
                before,
                cohort.cut(),
                rows.length,
                SeasonSentences.of(
                        selection,
                        rows.length,
                        risk(all, STILLBIRTH).orElse(null),
                        risk(all, MORTALITY).orElse(null),
                        deaths),
                Finding.among(all, strata),
                all,
                figure(all, TRANSFER)
                        .map(figure -> TransferClass.of(figure.estimate()))
                        .orElse(List.of()),
                BirthWeek.of(cohort, rows),
                survival(all),
                hazards(cohort, selection),
                before.isEmpty() ? List.of() : hazards(cohort, selection.ofSeason(before)),
                calendars(cohort, all, SeasonFigure::estimate),
                before.isEmpty()
                        ? List.of()
                        : calendars(
                                cohort,
                                all,
                                figure -> figure.estimate().comparison().other()),
                deaths,
                strata);
    }

    private List<SeasonFigure> figures(Cohort cohort, Selection selection) {
        List<Indicator> indicators = new ArrayList<>(definitions.indicators());
        indicators.sort(Comparator.comparing(SeasonQuestion::lifeOrder));
        CalfMix mixes = new CalfMix(cohort);
        List<SeasonFigure> all = new ArrayList<>();
        for (Indicator indicator : indicators) {
            Estimate estimate = figures.of(indicator, cohort, selection);
            Comparison comparison = estimate.comparison();
            Standardised standardised =
                    comparison == null ? null : Standardised.of(estimate, comparison.other(), mixes);
            all.add(new SeasonFigure(
                    estimate,
                    standardised,
                    definitions.ownTarget(indicator.id()).orElse(null),
                    headline(indicator),
                    Double.NaN));
        }
        return adjusted(all);
    }

    /** Risks of death first, by the age at which their windows end; the rest as they were read. */
    private static Duration lifeOrder(Indicator indicator) {
        boolean death = indicator.rule() instanceof Rule.Risk risk && risk.outcome() instanceof Outcome.Death;
        return death ? ((Rule.Risk) indicator.rule()).window().end().exact() : Duration.ofDays(Integer.MAX_VALUE);
    }

    /** One figure a subject: the others say the same in another measure, and would only be more looks. */
    private static boolean headline(Indicator indicator) {
        return indicator.id().equals(STILLBIRTH)
                || indicator.id().equals(MORTALITY)
                || indicator.id().endsWith("-risk-60d")
                || indicator.measure() == Measure.INSIDE_LIMIT
                || indicator.rule() instanceof Rule.Feature
                || indicator.rule() instanceof Rule.AmountByAge;
    }

    /**
     * Mortality is the one comparison asked for beforehand and stands for itself; the others are looked through, and
     * Holm's adjustment answers for all of them.
     */
    private static List<SeasonFigure> adjusted(List<SeasonFigure> figures) {
        List<SeasonFigure> all = figures.stream()
                .map(figure -> mortality(figure) && figure.estimate().comparison() != null
                        ? figure.adjusted(figure.estimate().comparison().p())
                        : figure)
                .toList();
        List<Integer> tested = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Comparison comparison = all.get(i).estimate().comparison();
            if (all.get(i).headline()
                    && !mortality(all.get(i))
                    && comparison != null
                    && !Double.isNaN(comparison.p())) {
                tested.add(i);
            }
        }
        if (tested.isEmpty()) {
            return all;
        }
        double[] holm = MultipleTesting.holm(tested.stream()
                .mapToDouble(i -> all.get(i).estimate().comparison().p())
                .toArray());
        List<SeasonFigure> adjusted = new ArrayList<>(all);
        for (int i = 0; i < holm.length; i++) {
            adjusted.set(tested.get(i), all.get(tested.get(i)).adjusted(holm[i]));
        }
        return adjusted;
    }

    private static boolean mortality(SeasonFigure figure) {
        return figure.estimate().indicator().id().equals(MORTALITY);
    }

    private static String before(List<SeasonFigure> all) {
        return all.stream()
                .map(figure -> figure.estimate().comparison())
                .filter(comparison -> comparison != null)
                .map(Comparison::with)
                .findFirst()
                .orElse("");
    }

    private static Optional<SeasonFigure> figure(List<SeasonFigure> all, String id) {
        return all.stream()
                .filter(figure -> figure.estimate().indicator().id().equals(id))
                .findFirst();
    }

    /** A figure that a farm's own definition has not made something else of. */
    private static Optional<SeasonFigure> risk(List<SeasonFigure> all, String id) {
        return figure(all, id).filter(figure -> figure.estimate().indicator().rule() instanceof Rule.Risk);
    }

    private static boolean illnessRate(Indicator indicator) {
        return indicator.rule() instanceof Rule.Rate rate && rate.outcome() instanceof Outcome.Illness;
    }

    private static List<SurvivalByAge> survival(List<SeasonFigure> all) {
        List<SurvivalByAge> curves = new ArrayList<>();
        risk(all, MORTALITY).ifPresent(figure -> {
            curves.add(SurvivalByAge.of(figure.estimate()));
            if (figure.estimate().comparison() != null) {
                curves.add(SurvivalByAge.of(figure.estimate().comparison().other()));
            }
        });
        return curves;
    }

    private List<AgeHazard> hazards(Cohort cohort, Selection selection) {
        List<AgeHazard> hazards = new ArrayList<>();
        definitions
                .conditions()
                .titles()
                .forEach((condition, title) -> definitions
                        .indicator(condition + RATE)
                        .filter(SeasonQuestion::illnessRate)
                        .ifPresent(
                                rate -> hazards.add(AgeHazard.of(condition, title, rate, figures, cohort, selection))));
        return hazards;
    }

    private List<IllnessCalendar> calendars(
            Cohort cohort, List<SeasonFigure> all, Function<SeasonFigure, Estimate> season) {
        List<IllnessCalendar> calendars = new ArrayList<>();
        IllnessCalendar.Presence presence = new IllnessCalendar.Presence(cohort);
        definitions
                .conditions()
                .titles()
                .forEach((condition, title) -> figure(all, condition + RATE)
                        .filter(figure -> illnessRate(figure.estimate().indicator()))
                        .ifPresent(figure ->
                                calendars.add(IllnessCalendar.of(condition, title, season.apply(figure), presence))));
        return calendars;
    }
}
