package wisp.site;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.chart.Picture;
import wisp.chart.SvgPainter;
import wisp.indicator.Estimate;
import wisp.indicator.Indicator;
import wisp.indicator.Measure;
import wisp.indicator.Outcome;
import wisp.indicator.Rule;
import wisp.records.Records;

/**
 * The season at a glance.
 *
 * @param sentence the season in plain words
 * @param before the season that figures are compared with, empty where there is none
 * @param picture SVG of its main risks beside last season's
 * @param pictureHref the same as PNG
 * @param groups the figures in groups
 * @param illness the illness figures, one row a condition
 * @param marks events that no figure counts
 */
public record SeasonPage(
        Frame frame,
        String sentence,
        String before,
        String picture,
        String pictureHref,
        List<Group> groups,
        List<IllnessRow> illness,
        int marks) {
    private static final String STILLBIRTH = "stillbirth";
    private static final String DEATHS = "preweaning-mortality";

    /** Figures under one heading. */
    public record Group(String title, String note, List<FigureRow> rows) {}

    /** One condition's figures. */
    public record IllnessRow(String title, FigureRow risk21, FigureRow risk60, FigureRow rate, FigureRow fatality) {}

    static SeasonPage of(Records records, Asked asked) {
        Frame frame = Frame.of(asked, "Season", "/", Map.of());
        Map<String, Estimate> estimates = estimates(records, asked);
        Map<String, Group> groups = new LinkedHashMap<>();
        groups.put("deaths", new Group("Deaths", "Rates count per 1000 calf-days.", new ArrayList<>()));
        groups.put(
                "limits",
                new Group(
                        "Inside the limits of law",
                        "Local law and the vet in charge decide; each figure names the limit that it used.",
                        new ArrayList<>()));
        groups.put("other", new Group("First days and care", "", new ArrayList<>()));
        estimates.forEach((id, estimate) -> {
            String group = groupOf(estimate.indicator());
            if (groups.containsKey(group)) {
                groups.get(group).rows().add(FigureRow.of(estimate, frame.links()));
            }
        });
        groups.values().removeIf(group -> group.rows().isEmpty());
        List<IllnessRow> illness = new ArrayList<>();
        records.definitions().conditions().titles().forEach((key, title) -> {
            if (estimates.containsKey(key + "-risk-60d")) {
                illness.add(illness(key, title, estimates, frame.links()));
            }
        });
        int calves = asked.selection().calves(asked.cohort()).length;
        Picture picture = SeasonPicture.of(estimates, asked.season(), frame.links());
        return new SeasonPage(
                frame,
                SeasonSentence.of(asked.season(), calves, estimates.get(STILLBIRTH), estimates.get(DEATHS)),
                before(estimates),
                SvgPainter.figure(picture),
                frame.to("/season.png"),
                List.copyOf(groups.values()),
                illness,
                RecordsPage.marks(asked.cohort()).size());
    }

    private static String before(Map<String, Estimate> estimates) {
        return estimates.values().stream()
                .filter(estimate -> estimate.comparison() != null)
                .map(estimate -> estimate.comparison().with())
                .findFirst()
                .orElse("");
    }

    /** Every figure of the selection, undivided, by its id. */
    static Map<String, Estimate> estimates(Records records, Asked asked) {
        Map<String, Estimate> estimates = new LinkedHashMap<>();
        List<Indicator> indicators = new ArrayList<>(records.definitions().indicators());
        indicators.sort(Comparator.comparing(SeasonPage::lifeOrder));
        for (Indicator indicator : indicators) {
            estimates.put(
                    indicator.id(),
                    records.figures()
                            .of(indicator, asked.cohort(), asked.selection().by(null)));
        }
        return estimates;
    }

    /** Risks of death first, by the age at which their windows end; the rest as they were read. */
    private static Duration lifeOrder(Indicator indicator) {
        boolean death = indicator.rule() instanceof Rule.Risk risk && risk.outcome() instanceof Outcome.Death;
        return death ? ((Rule.Risk) indicator.rule()).window().end().exact() : Duration.ofDays(Integer.MAX_VALUE);
    }

    private static String groupOf(Indicator indicator) {
        Outcome outcome = indicator.rule() instanceof Rule.Risk risk
                ? risk.outcome()
                : indicator.rule() instanceof Rule.Rate rate ? rate.outcome() : null;
        if (outcome instanceof Outcome.Death) {
            return "deaths";
        }
        if (outcome instanceof Outcome.Illness || indicator.rule() instanceof Rule.CaseFatality) {
            return "illness";
        }
        return indicator.measure() == Measure.INSIDE_LIMIT ? "limits" : "other";
    }

    private static IllnessRow illness(String key, String title, Map<String, Estimate> estimates, Links links) {
        return new IllnessRow(
                title,
                row(estimates.get(key + "-risk-21d"), links),
                row(estimates.get(key + "-risk-60d"), links),
                row(estimates.get(key + "-rate"), links),
                row(estimates.get(key + "-case-fatality"), links));
    }

    private static FigureRow row(Estimate estimate, Links links) {
        return estimate == null ? null : FigureRow.of(estimate, links);
    }
}
