package wisp.site;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.chart.SvgPainter;
import wisp.indicator.Estimate;
import wisp.indicator.IndicatorSentence;
import wisp.indicator.Stratum;
import wisp.question.DirtyShare;
import wisp.question.DirtyThenIll;
import wisp.question.KeptPlaces;
import wisp.question.PensAnswer;
import wisp.statistics.Interval;

/**
 * Which pens give dirty calves: the answer in words, the funnel, the table, and how it was worked out.
 *
 * @param answer the answer in its first two lines
 * @param besides what else can be said in words
 * @param lastSeason the season before, null where there is none to compare with
 * @param figure the figure of dirty calves that every count belongs to
 * @param rows one a pen
 * @param notes what the table cannot show: scored calves without a pen, pens without a score, no spread
 * @param funnel SVG
 * @param weeks SVG
 * @param bedding SVG of classes of days since bedding, empty where no calf was scored
 */
public record PensPage(
        Frame frame,
        List<String> answer,
        List<String> besides,
        String lastSeason,
        FigureRow figure,
        List<PenRow> rows,
        List<String> notes,
        String homogeneity,
        String places,
        String funnel,
        String weeks,
        String bedding,
        List<ShareTable> tables,
        List<String> terms,
        String illness,
        List<IllRow> ill,
        String definition,
        String source,
        List<String> method,
        List<String> cautions) {

    private static final int ANSWER = 2;

    /** Shares by class as a table. */
    public record ShareTable(String title, String head, List<ShareRow> rows) {}

    /** One class. */
    public record ShareRow(String name, int dirty, int n, String share, String interval) {}

    /** One illness, of dirty and of clean calves. */
    public record IllRow(String outcome, String dirty, String clean, String ratio, String verdict) {}

    static PensPage of(Asked asked, PensAnswer answer) {
        Frame frame = Frame.of(asked, "Pens", "/pens", Map.of());
        Links links = links(asked);
        // a number and its per cent sign stay on one line
        List<String> lines = answer.sentences().stream()
                .map(line -> line.replace(" %", "\u00a0%"))
                .toList();
        boolean scored = answer.overall().n() > 0;
        Estimate figure = answer.figure();
        return new PensPage(
                frame,
                lines.subList(0, Math.min(ANSWER, lines.size())),
                lines.subList(Math.min(ANSWER, lines.size()), lines.size()),
                answer.lastSeason(),
                FigureRow.of(figure, links),
                answer.pens().stream().map(pen -> PenRow.of(pen, links)).toList(),
                PensWords.notes(answer),
                PensWords.homogeneity(answer),
                PensWords.places(answer.places()),
                scored ? SvgPainter.figure(PensPictures.funnel(answer, links)) : "",
                scored ? SvgPainter.figure(PensPictures.weeks(answer)) : "",
                scored
                        ? SvgPainter.figure(PensPictures.classes(
                                "bedding",
                                "Dirty calves by days since the pen was bedded",
                                "Days since bedding",
                                answer.circumstances().bedding()))
                        : "",
                scored ? tables(answer) : List.of(),
                answer.circumstances().terms().stream().map(PensWords::term).toList(),
                PensWords.illness(answer.illness().get(0)),
                answer.illness().stream()
                        .filter(one -> one.table().cases() > 0)
                        .map(PensPage::ill)
                        .toList(),
                IndicatorSentence.of(figure.indicator()),
                figure.indicator().source(),
                answer.method(),
                answer.cautions());
    }

    /** Links to the figure's own page divide it by pen, as this page does. */
    static Links links(Asked asked) {
        Map<String, String> parameters = new LinkedHashMap<>(asked.parameters());
        parameters.put("by", Stratum.PEN.word());
        return new Links(parameters);
    }

    private static List<ShareTable> tables(PensAnswer answer) {
        KeptPlaces places = answer.places();
        return List.of(
                table("Places", "Born in", List.of(places.kept(), places.elsewhere())),
                table("Bedding", "Days since bedding", answer.circumstances().bedding()),
                table(
                        "Stocking",
                        "Other calvings in the pen, 7 days",
                        answer.circumstances().stocking()),
                table("Month of birth", "Month", answer.circumstances().months()),
                table("Seasons", "Season", answer.seasons()));
    }

    private static ShareTable table(String title, String head, List<DirtyShare> shares) {
        return new ShareTable(
                title,
                head,
                shares.stream()
                        .map(one -> new ShareRow(
                                one.name(),
                                one.dirty(),
                                one.n(),
                                one.n() == 0 ? "–" : PenRow.percent(one.share()),
                                PenRow.span(one.interval())))
                        .toList());
    }

    private static IllRow ill(DirtyThenIll one) {
        Interval ratio = one.byPen() == null ? one.crude() : one.byPen();
        return new IllRow(
                one.outcome(),
                one.table().exposedCases() + " of " + one.table().exposed(),
                one.table().unexposedCases() + " of " + one.table().unexposed(),
                ratio == null ? "–" : PensWords.ratio(ratio, 1) + (one.byPen() == null ? ", over all pens" : ""),
                one.moreThanChance() ? "more than chance" : "could be chance");
    }
}
