package wisp.indicator;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wisp.cohort.Cohort;

/**
 * Works figures out: one indicator over the calves that are asked for, whole, by stratum and beside the last season.
 */
public final class Figures {
    private final Definitions definitions;
    private final Verdicts verdicts;
    private final RecentEstimates recent = new RecentEstimates();

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

    private Comparison withLastSeason(Estimate whole, Indicator indicator, Cohort cohort, Selection selection) {
        String last = lastSeason(cohort, whole.season());
        if (last == null || selection.from() != null || selection.to() != null) {
            return null;
        }
        Estimate before = plain(indicator, cohort, selection.ofSeason(last));
        Set<Integer> rows = before.verdicts().stream().map(Verdict::row).collect(Collectors.toSet());
        // a year may hold the calves of a named season too; nothing is compared with its own calves
        boolean apart = whole.verdicts().stream().noneMatch(verdict -> rows.contains(verdict.row()));
        return apart ? Comparing.withSeason(whole, before) : null;
    }

    /** One figure without strata and comparison. */
    public Estimate plain(Indicator indicator, Cohort cohort, Selection selection) {
        // a part of a figure, such as one week of a rate, bears its id and is another
        boolean defined = definitions.indicator(indicator.id()).orElse(null) == indicator;
        return defined
                ? recent.of(indicator, cohort, selection, () -> worked(indicator, cohort, selection))
                : worked(indicator, cohort, selection);
    }

    private Estimate worked(Indicator indicator, Cohort cohort, Selection selection) {
        int[] rows = selection.rows(cohort, placeOfRecord(indicator));
        Map<String, Integer> marks = MarkedEvents.of(indicator, cohort, rows, everybody(cohort, selection));
        List<Verdict> judged = verdicts.of(indicator, cohort, rows);
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
        int[] rows = selection.rows(cohort, place);
        List<Estimate> strata = new ArrayList<>();
        Map<Integer, List<Verdict>> byRow = whole.verdicts().stream().collect(Collectors.groupingBy(Verdict::row));
        selection.by().divide(cohort, rows, place).forEach((name, part) -> {
            Map<String, Integer> marks = MarkedEvents.of(indicator, cohort, part, false);
            List<Verdict> judged = Arrays.stream(part)
                    .mapToObj(row -> byRow.getOrDefault(row, List.of()))
                    .flatMap(List::stream)
                    .toList();
            strata.add(Estimator.estimate(indicator, name, whole.season(), judged, marks));
        });
        return Comparing.withOthers(whole, strata);
    }

    static boolean placeOfRecord(Indicator indicator) {
        return indicator.rule() instanceof Rule.Feature feature && feature.placeOfRecord();
    }

    /** The season before this one among those that have calves, or null. */
    static String lastSeason(Cohort cohort, String season) {
        List<String> seasons = cohort.seasonsWithCalves();
        int at = seasons.indexOf(season);
        return at > 0 ? seasons.get(at - 1) : null;
    }
}
