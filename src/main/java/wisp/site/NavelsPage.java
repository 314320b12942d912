package wisp.site;

import java.util.List;
import java.util.Map;
import wisp.chart.SvgPainter;
import wisp.cohort.NavelDelay;
import wisp.indicator.Indicator;
import wisp.indicator.IndicatorSentence;
import wisp.question.navels.AdjustedDose;
import wisp.question.navels.DelayClass;
import wisp.question.navels.MissingDelayWords;
import wisp.question.navels.NavelGroup;
import wisp.question.navels.NavelStrataSentence;
import wisp.question.navels.NavelsAnswer;
import wisp.question.navels.NavelsWords;
import wisp.question.navels.Plain;
import wisp.question.navels.RatioWords;
import wisp.question.navels.Tested;
import wisp.site.NavelLinks.Count;

/**
 * The page of the navels question.
 *
 * @param words the sentences of its parts
 * @param classes the table by class of delay
 * @param unknown calves of unknown delay that the table leaves out
 * @param groups early and late
 * @param measures late against early, measure by measure
 * @param parts late against early where the calves are divided, those on this leaf
 * @param leaf which of the parts these are
 * @param terms of the logistic model
 * @param modelled calves and cases in it
 * @param missing calves of unknown delay, by kind and place
 * @param products treated calves by product
 * @param methods treated calves by method
 * @param population from all calves asked for to those at risk
 * @param marked marked events that were left out
 */
public record NavelsPage(
        Frame frame,
        Words words,
        Pictures pictures,
        List<NavelRows.DelayRow> classes,
        Count unknown,
        List<NavelRows.Risk> groups,
        List<MeasureRow> measures,
        List<NavelRows.PartRow> parts,
        Leaf leaf,
        List<TermRow> terms,
        Modelled modelled,
        List<NavelRows.Risk> missing,
        List<NavelRows.CareRow> products,
        List<NavelRows.CareRow> methods,
        Rule rule,
        Population population,
        List<FigureRow.LeftOut> marked,
        List<Sentence> cautions) {
    /** A part takes a row in each of two wide tables. */
    private static final int PARTS = 30;

    /** The sentences, each worked out from the figures. */
    public record Words(
            Sentence answer,
            String observational,
            String landmark,
            String trend,
            Sentence doubling,
            String fitted,
            Sentence ratios,
            String eValue,
            Sentence pens,
            Sentence avoidable,
            Sentence needed,
            Sentence missing,
            String reference,
            String knots,
            String parts,
            String notDrawn,
            String by) {}

    /** The drawings as SVG, and addresses of what stands beside them. */
    public record Pictures(
            String classes,
            String forest,
            String dose,
            String parts,
            String csv,
            String png,
            String latePng,
            String dosePng,
            String partsPng,
            String partsCsv,
            String json,
            String figure) {}

    /** One measure of late against early. */
    public record MeasureRow(String name, NavelLinks.Count calves, String value, String interval, String method) {}

    /** One term of the model, as odds ratio. */
    public record TermRow(String name, String oddsRatio, String interval, String error, String clusteredError) {}

    /**
     * Who is in the model.
     *
     * @param leftOut whom it leaves out and what it does not allow for, in words
     */
    public record Modelled(Count calves, Count cases, Sentence leftOut) {}

    /** From all calves asked for to those at risk. */
    public record Population(Count asked, List<NavelRows.Lost> lost, Count atRisk, Count pending) {}

    /** Where the rule comes from. */
    public record Rule(String definition, String source, String remarks, String file, int version) {}

    static NavelsPage of(Asked asked, NavelsAnswer answer, String number) {
        Frame frame = Frame.of(asked, "Navels", "/navels", Map.of());
        NavelLinks links = new NavelLinks(frame.links());
        NavelRows rows = new NavelRows(answer, links);
        Leaf leaf = Leaf.of(PARTS, answer.strata().strata().size(), number, frame, Map.of());
        Indicator indicator = answer.figure().indicator();
        return new NavelsPage(
                frame,
                words(answer, links),
                pictures(answer, frame, links),
                rows.classes(),
                new Count(answer.delayUnknown(), links.calves(NavelDelay.UNKNOWN, CalvesBehind.Part.DENOMINATOR)),
                rows.lateAndEarly(),
                NavelMeasures.of(answer.late(), links),
                leaf.of(rows.parts()),
                leaf,
                answer.late().adjusted().terms().stream().map(NavelsPage::row).toList(),
                modelled(answer.late().adjusted(), links),
                answer.missing().calves() == 0 ? List.of() : rows.missing(),
                rows.products(),
                rows.methods(),
                new Rule(
                        IndicatorSentence.of(indicator),
                        indicator.source(),
                        indicator.remarks(),
                        indicator.file(),
                        indicator.version()),
                population(answer, rows, links),
                FigureRow.of(answer.figure(), frame.links()).leftOut().stream()
                        .filter(left -> answer.figure().attrition().stream()
                                .noneMatch(
                                        step -> step.reason().replace('-', ' ').equals(left.reason())))
                        .toList(),
                // what kind of evidence this is stands under the answer already
                NavelsWords.cautions(answer).stream().skip(1).map(links::said).toList());
    }

    private static Pictures pictures(NavelsAnswer answer, Frame frame, NavelLinks links) {
        NavelsPictures pictures = new NavelsPictures(answer, links);
        return new Pictures(
                SvgPainter.figure(pictures.classes()),
                SvgPainter.figure(pictures.forest()),
                answer.dose().points().isEmpty() ? "" : SvgPainter.figure(pictures.dose()),
                answer.strata().strata().isEmpty()
                        ? ""
                        : SvgPainter.figure(NavelPartsPicture.of(answer.strata(), links)),
                frame.to("/navels.csv"),
                frame.to("/navels.png"),
                frame.to("/navels-late.png"),
                frame.to("/navels-dose.png"),
                frame.to("/navels-parts.png"),
                frame.to("/navels-parts.csv"),
                frame.to("/api/v1/questions/navels"),
                links.figure());
    }

    private static Modelled modelled(AdjustedDose model, NavelLinks links) {
        NavelCalvesAsked calves = NavelCalvesAsked.all(NavelGroup.MODELLED);
        return new Modelled(
                links.count(model.calves(), calves),
                links.count(model.cases(), calves.casesOnly()),
                links.said(NavelsWords.modelled(model)));
    }

    private static Population population(NavelsAnswer answer, NavelRows rows, NavelLinks links) {
        return new Population(
                new Count(answer.figure().verdicts().size(), links.asked()),
                rows.lost(),
                new Count((int) answer.figure().denominator(), links.part(CalvesBehind.Part.DENOMINATOR)),
                new Count(answer.figure().pending(), links.part(CalvesBehind.Part.PENDING)));
    }

    private static Words words(NavelsAnswer answer, NavelLinks links) {
        DelayClass reference = answer.reference();
        return new Words(
                links.said(NavelsWords.answer(answer)),
                NavelsWords.observational(),
                NavelsWords.landmark(),
                NavelsWords.trend(answer),
                links.said(NavelsWords.doubling(answer)),
                RatioWords.fitted(answer.late().adjusted()),
                links.said(RatioWords.of(answer)),
                NavelsWords.eValue(answer),
                links.said(NavelsWords.pens(answer)),
                links.said(NavelsWords.avoidable(answer)),
                links.said(NavelsWords.needed(answer)),
                links.said(MissingDelayWords.of(answer.missing())),
                reference == null
                        ? "No class holds " + DelayClass.CALVES_OF_REFERENCE + " calves to compare others with."
                        : "Compared with " + reference.delay().word() + ", the earliest class of at least "
                                + DelayClass.CALVES_OF_REFERENCE + " calves.",
                answer.dose().points().isEmpty()
                        ? answer.dose().why()
                        : "A restricted cubic spline of log2(minutes), knots at " + NavelsPictures.knots(answer.dose())
                                + " minutes; nothing else allowed for. Dots stand at the knots;"
                                + " each stroke at the foot is a calf. "
                                + bend(answer.dose().bent()),
                NavelStrataSentence.of(answer.strata()),
                NavelPartsPicture.notDrawn(answer.strata()),
                answer.strata().by() == null ? "" : answer.strata().by().title());
    }

    private static String bend(Tested bent) {
        if (!bent.known()) {
            return "";
        }
        return (bent.p() < 0.05 ? "It bends by more than chance" : "Its bends could be chance") + " (p "
                + Plain.p(bent.p()) + ").";
    }

    private static TermRow row(AdjustedDose.Term term) {
        String name = switch (term.name()) {
            case "intercept" -> "intercept (odds)";
            case AdjustedDose.DOSE -> "delay, each doubling";
            case "cleanliness" -> "dirtiness, each point";
            case "ease" -> "calving ease, each grade";
            case "no_colostrum_by_6_h" -> "no colostrum by 6 h";
            case "night" -> "born at night, 22 to 6 h";
            default -> term.name() + ", against the first season";
        };
        return new TermRow(
                name,
                Plain.number(term.oddsRatio().value(), 2),
                Plain.number(term.oddsRatio().low(), 2) + " to "
                        + Plain.number(term.oddsRatio().high(), 2),
                Plain.number(term.standardError(), 3),
                Double.isNaN(term.clusteredStandardError()) ? "–" : Plain.number(term.clusteredStandardError(), 3));
    }
}
