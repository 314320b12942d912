package wisp.site;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import wisp.chart.Picture;
import wisp.chart.SvgPainter;
import wisp.indicator.Estimate;
import wisp.indicator.IndicatorSentence;
import wisp.indicator.Stratum;
import wisp.question.Circumstances;
import wisp.question.PensAnswer;

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
 * @param overall all pens together
 * @param noPen scored calves that stand in no pen
 * @param bothSides whether some calves were born in kept pens and some elsewhere, so that there is a table to show
 * @param inModel the calves that the terms are worked out from
 * @param unjudged scored calves of whom nobody can say whether they fell ill
 */
public record PensPage(
        Frame frame,
        List<Sentence> answer,
        List<Sentence> besides,
        String lastSeason,
        FigureRow figure,
        List<PenRow> rows,
        List<String> notes,
        String homogeneity,
        Sentence places,
        String funnel,
        String weeks,
        String bedding,
        ShareRow overall,
        Count noPen,
        boolean bothSides,
        ShareTable born,
        ShareTable byBedding,
        ShareTable byStocking,
        ShareTable byMonth,
        ShareTable bySeason,
        ShareTable byWeek,
        List<String> terms,
        Count inModel,
        String timeOfYear,
        Sentence illness,
        Count unjudged,
        List<IllRow> ill,
        String definition,
        String source,
        List<Sentence> method,
        List<String> cautions) {

    private static final int ANSWER = 2;

    /** Shares by class as a table. */
    public record ShareTable(String title, String head, List<ShareRow> rows) {}

    /** One class. */
    public record ShareRow(String name, Count dirty, Count n, String share, String interval) {}

    /** One illness, of dirty and of clean calves. */
    public record IllRow(
            String outcome,
            Count dirtyIll,
            Count dirty,
            Count cleanIll,
            Count clean,
            Count leftOut,
            String ratio,
            String verdict) {}

    static PensPage of(Asked asked, PensAnswer answer) {
        Frame frame = Frame.of(asked, "Pens", "/pens", Map.of());
        Links links = links(asked);
        PensLinks calves = new PensLinks(links);
        List<Sentence> lines = answer.said().stream().map(calves::said).toList();
        Estimate figure = answer.figure();
        Circumstances so = answer.circumstances();
        return new PensPage(
                frame,
                lines.subList(0, Math.min(ANSWER, lines.size())),
                lines.subList(Math.min(ANSWER, lines.size()), lines.size()),
                answer.lastSeason(),
                FigureRow.of(figure, links),
                answer.pens().stream()
                        .map(pen -> PenRow.of(pen, answer.lastSeason(), links))
                        .toList(),
                PensWords.notes(answer),
                PensWords.homogeneity(answer),
                calves.said(PensWords.places(answer.places())),
                drawn(answer, () -> PensPictures.funnel(answer, links)),
                drawn(answer, () -> PensPictures.weeks(answer, calves)),
                drawn(answer, () -> PensPictures.bedding(so.bedding(), calves)),
                PensTables.row(answer.overall(), calves),
                calves.noPen(answer.noPen()),
                answer.places().difference() != null,
                PensTables.of(
                        "Places",
                        "Born",
                        List.of(answer.places().kept(), answer.places().elsewhere()),
                        calves),
                PensTables.of("By days since bedding", "Days since bedding", so.bedding(), calves),
                PensTables.of("By stocking", "Other calvings in the pen, 7 days", so.stocking(), calves),
                PensTables.of("By month of birth", "Month", so.months(), calves),
                PensTables.seasons(answer.seasons(), calves),
                PensTables.weeks(answer.weeks(), calves),
                so.terms().stream().map(term -> PensWords.term(term, so)).toList(),
                calves.count(so.terms().get(0).calves()),
                PensWords.timeOfYear(so.timeOfYear()),
                calves.said(PensWords.illness(answer.illness().get(0))),
                calves.count(answer.illness().get(0).behind().leftOut()),
                answer.illness().stream()
                        .filter(one -> one.table().cases() > 0)
                        .map(one -> PensTables.ill(one, calves))
                        .toList(),
                IndicatorSentence.of(figure.indicator()),
                figure.indicator().source(),
                answer.steps().stream().map(calves::said).toList(),
                answer.cautions());
    }

    private static String drawn(PensAnswer answer, Supplier<Picture> picture) {
        return answer.overall().n() > 0 ? SvgPainter.figure(picture.get()) : "";
    }

    /** Links to the figure's own page divide it by pen, as this page does. */
    static Links links(Asked asked) {
        Map<String, String> parameters = new LinkedHashMap<>(asked.parameters());
        parameters.put("by", Stratum.PEN.word());
        return new Links(parameters);
    }
}
