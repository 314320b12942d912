package wisp.question;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wisp.cohort.Cohort;
import wisp.event.CleanlinessScored;
import wisp.history.Life;
import wisp.indicator.Definitions;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.Indicator;
import wisp.indicator.Selection;
import wisp.indicator.SelectionWords;
import wisp.indicator.Stratum;
import wisp.indicator.Verdict;

/** The farmer's question: which pens give dirty calves, and is it more than chance. */
public final class PensQuestion {
    /** The figure that the answer stands on. */
    public static final String FIGURE = "dirty-calves";

    private final Definitions definitions;
    private final Figures figures;

    /** Answers by these definitions. */
    public PensQuestion(Definitions definitions) {
        this(definitions, new Figures(definitions));
    }

    /** The question, answered by these definitions from figures that others share. */
    public PensQuestion(Definitions definitions, Figures figures) {
        this.definitions = definitions;
        this.figures = figures;
    }

    /** The answer for the calves asked for; whatever the selection divides by, this divides by pen. */
    public PensAnswer of(Cohort cohort, Selection selection) {
        Indicator indicator = definitions
                .indicator(FIGURE)
                .orElseThrow(() -> new IllegalStateException("the definitions have no figure " + FIGURE));
        Selection byPen = selection.by(Stratum.PEN);
        Estimate figure = figures.of(indicator, cohort, byPen);
        List<Estimate> strata = figure.strata().stream()
                .filter(stratum -> !stratum.name().equals(Stratum.NOT_RECORDED))
                .toList();
        BeddingAge beddings = new BeddingAge(cohort.pens());
        List<ScoredCalf> calves = calves(strata, cohort, beddings);
        String lastSeason = lastSeason(figure, indicator, cohort, byPen);
        Map<String, DirtyShare> before = lastSeason == null
                ? Map.of()
                : figures.of(indicator, cohort, byPen.ofSeason(lastSeason)).strata().stream()
                        .collect(Collectors.toMap(Estimate::name, stratum -> share(stratum.name(), stratum)));
        List<Estimate> scored =
                strata.stream().filter(stratum -> stratum.denominator() > 0).toList();
        PenShares pens = PenShares.of(scored, calves, beddings, before);
        return new PensAnswer(
                figure.season(),
                SelectionWords.of(selection),
                cohort.cut(),
                figure.verdicts().size(),
                figure,
                pens.pens(),
                DirtyShare.of("all", "all pens", "of all pens", calves),
                (int) figure.denominator() - calves.size(),
                strata.stream()
                        .filter(stratum -> stratum.denominator() == 0)
                        .map(Estimate::name)
                        .toList(),
                pens.spread(),
                pens.homogeneity(),
                KeptPlaces.of(calves, beddings),
                WeekShare.of(calves),
                Circumstances.of(calves),
                DirtyThenIll.of(calves, definitions.conditions(), cohort.cut()),
                seasons(indicator, cohort, byPen),
                lastSeason);
    }

    static DirtyShare share(String name, Estimate estimate) {
        return DirtyShare.of(name, estimate.numerator(), (int) estimate.denominator());
    }

    private static List<ScoredCalf> calves(List<Estimate> strata, Cohort cohort, BeddingAge beddings) {
        Stocking stocking = Stocking.of(cohort.lives());
        List<ScoredCalf> calves = new ArrayList<>();
        for (Estimate stratum : strata) {
            for (Verdict verdict : stratum.verdicts()) {
                if (verdict.atRisk()) {
                    Life life = cohort.lives().get(verdict.row());
                    Instant born = life.born().time();
                    calves.add(new ScoredCalf(
                            verdict.row(),
                            life,
                            stratum.name(),
                            verdict.because().data() instanceof CleanlinessScored scored ? scored.score() : null,
                            verdict.part() == Verdict.Part.CASE,
                            verdict.because().time(),
                            beddings.daysAt(stratum.name(), born),
                            stocking.before(stratum.name(), life)));
                }
            }
        }
        return calves;
    }

    /** The season before, where it has calves of its own and no dates narrow the question. */
    private String lastSeason(Estimate now, Indicator indicator, Cohort cohort, Selection selection) {
        List<String> seasons = cohort.seasonsWithCalves();
        int at = seasons.indexOf(now.season());
        if (at < 1 || selection.from() != null || selection.to() != null) {
            return null;
        }
        String last = seasons.get(at - 1);
        Set<Integer> rows = new HashSet<>();
        now.verdicts().forEach(verdict -> rows.add(verdict.row()));
        boolean apart = figures.plain(indicator, cohort, selection.ofSeason(last)).verdicts().stream()
                .noneMatch(verdict -> rows.contains(verdict.row()));
        return apart ? last : null;
    }

    private List<DirtyShare> seasons(Indicator indicator, Cohort cohort, Selection selection) {
        if (selection.from() != null || selection.to() != null) {
            return List.of();
        }
        return cohort.seasonsWithCalves().stream()
                .map(season -> share(season, figures.plain(indicator, cohort, selection.ofSeason(season))))
                .toList();
    }
}
