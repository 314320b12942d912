package wisp.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wisp.chart.Picture;
import wisp.chart.SvgPainter;
import wisp.indicator.Indicator;
import wisp.indicator.Measure;
import wisp.indicator.Outcome;
import wisp.indicator.Rule;
import wisp.question.Counted;
import wisp.question.season.AgeHazard;
import wisp.question.season.Chance;
import wisp.question.season.SeasonAnswer;
import wisp.question.season.SeasonFigure;
import wisp.question.season.SeasonQuestion;
import wisp.records.Records;

/**
 * How the season went: the answer in words, what stands out, and where to look for the reason.
 *
 * @param sentences the season in plain words, the first of them the answer
 * @param before the season that figures are compared with, empty where there is none
 * @param findings what stands out
 * @param compared whether anything could be compared at all
 * @param searched what was searched for it
 * @param picture SVG of the main risks beside last season's
 * @param survival SVG of survival by age
 * @param hazards SVG of each illness by week of life
 * @param births SVG of births by week
 * @param rare the illnesses too rare to draw, in words; empty where there is none such
 * @param groups the figures in groups
 * @param illness the illness figures, one row a condition
 * @param transfer the classes of passive transfer
 * @param deaths deaths by cause and age
 * @param strata one figure divided
 * @param marks events of the whole log that no figure counts
 * @param calves how many it is about; of nobody there is nothing to show
 */
public record SeasonPage(
        Frame frame,
        List<Sentence> sentences,
        String before,
        List<Found> findings,
        boolean compared,
        String searched,
        String picture,
        String survival,
        List<Small> hazards,
        String births,
        Sentence rare,
        List<Group> groups,
        List<IllnessRow> illness,
        List<TransferRow> transfer,
        DeathsTable deaths,
        StrataRows strata,
        int marks,
        int calves) {

    private static final int WEEKS_OF_A_YEAR = 53;

    /** Something that stands out, and where it opens. */
    public record Found(String text, String href) {}

    /** One of several small pictures of a kind. */
    public record Small(String title, String svg) {}

    /** Figures under one heading. */
    public record Group(String id, String title, String note, List<SeasonRow> rows) {}

    /**
     * One condition's figures; the last column compares the risk by 60 days.
     *
     * @param none whether nobody had it
     */
    public record IllnessRow(
            String title,
            FigureRow risk21,
            FigureRow risk60,
            FigureRow rate,
            FigureRow fatality,
            SeasonRow compared,
            boolean none) {}

    /** One class of passive transfer. */
    public record TransferRow(
            String name, String edges, int calves, String href, String share, String interval, String target) {}

    static SeasonPage of(Records records, Asked asked, SeasonAnswer answer) {
        String divided = answer.strata().figure().indicator().id();
        Frame frame = Frame.of(asked, "Season", "/", Map.of(SeasonLinks.FIGURE, divided));
        SeasonLinks links = new SeasonLinks(frame.links());
        return new SeasonPage(
                frame,
                Sentence.all(answer.said(), frame.links(), SeasonLinks.CALVES),
                answer.before(),
                answer.findings().stream()
                        .map(finding -> new Found(finding.text(), links.finding(finding)))
                        .toList(),
                compared(answer),
                searched(answer),
                SvgPainter.figure(SeasonPicture.of(answer, frame.links())),
                SvgPainter.figure(SeasonPictures.survival(answer)),
                small(IllnessPictures.hazards(answer, links)),
                births(answer, links),
                rare(answer, frame.links()),
                groups(answer, frame.links()),
                illness(records, answer, frame.links()),
                transfer(answer, links),
                DeathsTable.of(answer, links),
                StrataRows.of(answer, links),
                RecordsPage.marks(asked.cohort()).size(),
                answer.calves());
    }

    private static String searched(SeasonAnswer answer) {
        long figures =
                answer.figures().stream().filter(SeasonFigure::lookedThrough).count();
        if (!compared(answer)) {
            return "No earlier season could be compared, no group has others beside it, and no figure with a target"
                    + " has a value.";
        }
        int groups = answer.strata().comparisons();
        String against = answer.before().isEmpty()
                ? "No earlier season could be compared; "
                : "Mortality and " + figures + " other figures were compared with " + answer.before() + ", ";
        String others = groups == 0
                ? "no group could be compared with all other calves; "
                : groups == 1
                        ? "one group was compared with all other calves, and "
                        : groups + " groups were compared with all other calves, and ";
        return against + others + "every figure was held against its"
                + " targets. What is named differs by more than chance with that many looks allowed for (Holm 1979), or"
                + " misses a target with its whole interval.";
    }

    private static boolean compared(SeasonAnswer answer) {
        return answer.strata().comparisons() > 0
                || answer.figures().stream()
                        .anyMatch(figure -> figure.chance() != Chance.CANNOT_SAY
                                || figure.estimate().standing() != null
                                || figure.ownStanding() != null);
    }

    /** The bars of several seasons are many: one drawing then serves phone and desk. */
    private static String births(SeasonAnswer answer, SeasonLinks links) {
        Picture picture = SeasonPictures.births(answer, links);
        return answer.births().size() > WEEKS_OF_A_YEAR
                ? new SvgPainter(SvgPainter.NARROW).paint(picture)
                : SvgPainter.figure(picture);
    }

    /** Small multiples are as narrow on a wide page as on a phone, so one drawing serves both. */
    static List<Small> small(List<Picture> pictures) {
        SvgPainter painter = new SvgPainter(SvgPainter.NARROW);
        return pictures.stream()
                .map(picture -> new Small(picture.title(), painter.paint(picture)))
                .toList();
    }

    static Sentence rare(SeasonAnswer answer, Links links) {
        Counted rare = new Counted(answer.hazards().stream()
                .filter(hazard -> hazard.episodes() < IllnessPictures.FEW_EPISODES)
                .map(hazard -> hazard.title() + " (" + episodes(hazard) + ")")
                .collect(Collectors.joining(", ")));
        return Sentence.of(rare, links, SeasonLinks.CALVES);
    }

    private static String episodes(AgeHazard hazard) {
        return Counted.figure(
                hazard.episodes(),
                String.valueOf(hazard.episodes()),
                hazard.condition() + "-rate",
                CalvesBehind.Part.NUMERATOR.word());
    }

    private static List<Group> groups(SeasonAnswer answer, Links links) {
        Map<String, Group> groups = new LinkedHashMap<>();
        groups.put("deaths", new Group("deaths", "Deaths", "Rates count per 1000 calf-days.", new ArrayList<>()));
        groups.put("other", new Group("care", "First days and care", "", new ArrayList<>()));
        groups.put(
                "limits",
                new Group(
                        "limits",
                        "Inside the limits of law",
                        "Local law and the vet in charge decide; each figure names the limit that it used.",
                        new ArrayList<>()));
        for (SeasonFigure figure : answer.figures()) {
            String group = groupOf(figure.estimate().indicator());
            if (groups.containsKey(group)) {
                groups.get(group).rows().add(SeasonRow.of(figure, links));
            }
        }
        return groups.values().stream().filter(group -> !group.rows().isEmpty()).toList();
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

    private static List<IllnessRow> illness(Records records, SeasonAnswer answer, Links links) {
        Map<String, SeasonFigure> byId = new LinkedHashMap<>();
        answer.figures()
                .forEach(figure -> byId.put(figure.estimate().indicator().id(), figure));
        List<IllnessRow> rows = new ArrayList<>();
        records.definitions().conditions().titles().forEach((key, title) -> {
            SeasonFigure risk = byId.get(key + "-risk-60d");
            if (risk != null) {
                rows.add(new IllnessRow(
                        title,
                        row(byId.get(key + "-risk-21d"), links),
                        row(risk, links),
                        row(byId.get(key + "-rate"), links),
                        row(byId.get(key + "-case-fatality"), links),
                        SeasonRow.of(risk, links),
                        Stream.of("-risk-21d", "-risk-60d", "-rate", "-case-fatality")
                                .map(figure -> byId.get(key + figure))
                                .allMatch(figure ->
                                        figure == null || figure.estimate().numerator() == 0)));
            }
        });
        return rows;
    }

    private static FigureRow row(SeasonFigure figure, Links links) {
        return figure == null ? null : FigureRow.of(figure.estimate(), links);
    }

    private static List<TransferRow> transfer(SeasonAnswer answer, SeasonLinks links) {
        return answer.transfer().stream()
                .filter(share -> share.share() != null)
                .map(share -> new TransferRow(
                        share.of().words(),
                        share.of().edges(),
                        share.calves().count(),
                        links.calves(share.calves()),
                        Shown.decimals(100 * share.share().value(), 0) + " %",
                        Shown.decimals(100 * share.share().low(), 0) + " to "
                                + Shown.decimals(100 * share.share().high(), 0),
                        share.of().target()))
                .toList();
    }

    /** Whether somebody asked for a figure to be divided, and so wants to see it. */
    public boolean divided() {
        return !strata.figure().equals(SeasonQuestion.MORTALITY);
    }

    /** How many illnesses nobody had. */
    public int illnessZeros() {
        return (int) illness.stream().filter(IllnessRow::none).count();
    }

    /** Address of a table of this page as CSV. */
    public String csv(String table) {
        return new SeasonLinks(frame.links()).csv(table);
    }

    /** Address of the groups as CSV. */
    public String groupsCsv() {
        return new SeasonLinks(frame.links()).groups(strata.figure());
    }

    /** Address of a picture of this page as PNG. */
    public String png(String name) {
        return new SeasonLinks(frame.links()).png(name);
    }
}
