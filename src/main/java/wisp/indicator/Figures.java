package wisp.indicator;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wisp.cohort.Cohort;

/**
 * Works figures out: one indicator over the calves that are asked for, whole, by stratum and beside the last season.
 */
public final class Figures {
    private final Definitions definitions;
    private final Verdicts verdicts;
    private final RecentCohorts recent = new RecentCohorts();

    /** Figures by these definitions' limits. */
    public Figures(Definitions definitions) {
        this.definitions = definitions;
        this.verdicts = new Verdicts(definitions);
    }

    /** One figure. */
    public Estimate of(Indicator indicator, Cohort cohort, Selection asked) {
        Selection selection = asked.ofSeason(asked.seasonIn(cohort));
        Estimate whole = plain(indicator, cohort, selection);
        Comparison comparison = withLastSeason(whole, indicator, cohort, selection);
        List<Estimate> strata = selection.by() == null ? List.of() : strata(indicator, cohort, selection, whole);
        return whole.with(strata, comparison);
    }

    /** One figure by stratum, each stratum beside all other calves; without the comparison of the whole. */
    public List<Estimate> divided(Indicator indicator, Cohort cohort, Selection asked) {
        Selection selection = asked.ofSeason(asked.seasonIn(cohort));
        return strata(indicator, cohort, selection, plain(indicator, cohort, selection));
    }

    private Comparison withLastSeason(Estimate whole, Indicator indicator, Cohort cohort, Selection selection) {
        String last = lastSeason(recent.of(cohort).seasonsWithCalves(), whole.season());
        if (last == null || selection.from() != null || selection.to() != null) {
            return null;
        }
        Estimate before = plain(indicator, cohort, selection.ofSeason(last));
        // a year may hold the calves of a named season too; nothing is compared with its own calves
        return shareACalf(whole.verdicts(), before.verdicts()) ? null : Comparing.withSeason(whole, before);
    }

    /** Whether two lists, each in order of rows, have a row in common. */
    private static boolean shareACalf(List<Verdict> some, List<Verdict> others) {
        int i = 0;
        int j = 0;
        while (i < some.size() && j < others.size()) {
            int order = Integer.compare(some.get(i).row(), others.get(j).row());
            if (order == 0) {
                return true;
            }
            i += order < 0 ? 1 : 0;
            j += order > 0 ? 1 : 0;
        }
        return false;
    }

    /** One figure without strata and comparison. */
    public Estimate plain(Indicator indicator, Cohort cohort, Selection selection) {
        WorkedCohort worked = recent.of(cohort);
        // a part of a figure, such as one week of a rate, bears its id and is another
        boolean defined = definitions.indicator(indicator.id()).orElse(null) == indicator;
        return defined
                ? worked.estimate(indicator, selection, () -> worked(indicator, worked, selection))
                : worked(indicator, worked, selection);
    }

    private Estimate worked(Indicator indicator, WorkedCohort worked, Selection selection) {
        int[] rows = worked.rows(selection, placeOfRecord(indicator));
        Cohort cohort = worked.cohort();
        int[] marked = worked.marked(selection, placeOfRecord(indicator));
        Map<String, Integer> marks = MarkedEvents.of(indicator, cohort, marked, everybody(cohort, selection));
        List<Verdict> judged = verdicts.of(indicator, worked, rows);
        return Estimator.estimate(indicator, "", selection.seasonIn(cohort), judged, marks);
    }

    /** The same figure among some of its calves only; marked events are not counted again. */
    public static Estimate among(Estimate whole, String name, List<Verdict> some) {
        return Estimator.estimate(whole.indicator(), name, whole.season(), some, Map.of());
    }

    /**
     * The marked events that a figure leaves out; as many of each kind as its count says.
     *
     * @param stratum only of this stratum, empty for the whole
     */
    public static List<MarkedEvent> marked(Indicator indicator, Cohort cohort, Selection selection, String stratum) {
        boolean place = placeOfRecord(indicator);
        int[] rows = selection.rows(cohort, place);
        if (stratum.isEmpty()) {
            return MarkedEvents.list(indicator, cohort, rows, everybody(cohort, selection));
        }
        int[] part = selection.by().divide(cohort, rows, place).getOrDefault(stratum, new int[0]);
        return MarkedEvents.list(indicator, cohort, part, false);
    }

    private static boolean everybody(Cohort cohort, Selection selection) {
        return selection.seasonIn(cohort).equals(Selection.ALL) && !selection.filtered();
    }

    private List<Estimate> strata(Indicator indicator, Cohort cohort, Selection selection, Estimate whole) {
        boolean place = placeOfRecord(indicator);
        int[] rows = recent.of(cohort).rows(selection, place);
        Map<String, int[]> parts = selection.by().divide(cohort, rows, place);
        Map<String, List<Verdict>> judged = new HashMap<>();
        String[] names = new String[cohort.lives().size()];
        parts.forEach((name, part) -> {
            judged.put(name, new ArrayList<>(part.length));
            for (int row : part) {
                names[row] = name;
            }
        });
        whole.verdicts().forEach(verdict -> judged.get(names[verdict.row()]).add(verdict));
        List<Estimate> strata = new ArrayList<>();
        parts.forEach((name, part) -> {
            Map<String, Integer> marks = MarkedEvents.of(indicator, cohort, part, false);
            strata.add(Estimator.estimate(indicator, name, whole.season(), judged.get(name), marks));
        });
        return Comparing.withOthers(whole, strata);
    }

    static boolean placeOfRecord(Indicator indicator) {
        return indicator.rule() instanceof Rule.Feature feature && feature.placeOfRecord();
    }

    /** The season before this one among those that have calves, or null. */
    private static String lastSeason(List<String> seasons, String season) {
        int at = seasons.indexOf(season);
        return at > 0 ? seasons.get(at - 1) : null;
    }
}
