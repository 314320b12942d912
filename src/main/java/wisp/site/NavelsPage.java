package wisp.site;

import java.util.List;
import java.util.Map;
import wisp.chart.SvgPainter;
import wisp.cohort.NavelDelay;
import wisp.indicator.Estimate;
import wisp.indicator.Indicator;
import wisp.indicator.IndicatorSentence;
import wisp.question.navels.AdjustedDose;
import wisp.question.navels.CareStratum;
import wisp.question.navels.DelayClass;
import wisp.question.navels.GroupRisk;
import wisp.question.navels.Measured;
import wisp.question.navels.NavelsAnswer;
import wisp.question.navels.NavelsWords;
import wisp.question.navels.Plain;
import wisp.question.navels.Tested;

/**
 * The page of the navels question.
 *
 * @param words the sentences of its parts
 * @param classes the table by class of delay
 * @param measures late against early, measure by measure
 * @param terms of the logistic model
 * @param products treated calves by product
 * @param methods treated calves by method
 * @param figure the whole figure, with who was left out
 */
public record NavelsPage(
        Frame frame,
        Words words,
        Pictures pictures,
        List<ClassRow> classes,
        String unknown,
        String unknownHref,
        List<MeasureRow> measures,
        List<TermRow> terms,
        List<CareRow> products,
        List<CareRow> methods,
        Rule rule,
        List<Estimate.Attrition> attrition,
        FigureRow figure,
        List<String> cautions) {

    /** The sentences, each worked out from the figures. */
    public record Words(
            String answer,
            String observational,
            String landmark,
            String trend,
            String doubling,
            String eValue,
            String avoidable,
            String needed,
            String missing,
            String reference,
            String knots) {}

    /** The drawings as SVG, and addresses of what stands beside them. */
    public record Pictures(String classes, String forest, String dose, String csv, String png, String figure) {}

    /** One class of delay. */
    public record ClassRow(
            String delay,
            int n,
            String nHref,
            int cases,
            String casesHref,
            String risk,
            String interval,
            String ratio,
            String ratioInterval,
            String difference,
            String p,
            String why) {}

    /** One measure of late against early. */
    public record MeasureRow(String name, String value, String interval, String method) {}

    /** One term of the model, as odds ratio. */
    public record TermRow(String name, String oddsRatio, String interval, String error, String clusteredError) {}

    /** One product or method. */
    public record CareRow(
            String name, int n, int cases, String risk, String interval, String ratio, String early, String late) {}

    /** Where the rule comes from. */
    public record Rule(String definition, String source, String remarks, String file, int version) {}

    static NavelsPage of(Asked asked, NavelsAnswer answer) {
        Frame frame = Frame.of(asked, "Navels", "/navels", Map.of());
        NavelLinks links = new NavelLinks(frame.links());
        NavelsPictures pictures = new NavelsPictures(answer, links);
        Indicator indicator = answer.figure().indicator();
        return new NavelsPage(
                frame,
                words(answer),
                new Pictures(
                        SvgPainter.figure(pictures.classes()),
                        SvgPainter.figure(pictures.forest()),
                        answer.dose().points().isEmpty() ? "" : SvgPainter.figure(pictures.dose()),
                        frame.to("/navels.csv"),
                        frame.to("/navels.png"),
                        links.figure()),
                answer.classes().stream()
                        .map(one -> row(one, links, one == answer.reference()))
                        .toList(),
                answer.delayUnknown() == 0 ? "" : Plain.count(answer.delayUnknown(), "calf", "calves"),
                links.calves(NavelDelay.UNKNOWN, CalvesBehind.Part.DENOMINATOR),
                NavelMeasures.of(answer.late()),
                answer.late().adjusted().terms().stream().map(NavelsPage::row).toList(),
                answer.products().stream().map(NavelsPage::row).toList(),
                answer.methods().stream().map(NavelsPage::row).toList(),
                new Rule(
                        IndicatorSentence.of(indicator),
                        indicator.source(),
                        indicator.remarks(),
                        indicator.file(),
                        indicator.version()),
                answer.figure().attrition(),
                FigureRow.of(answer.figure(), frame.links()),
                NavelsWords.cautions(answer));
    }

    private static Words words(NavelsAnswer answer) {
        DelayClass reference = answer.reference();
        return new Words(
                NavelsWords.answer(answer),
                NavelsWords.observational(),
                NavelsWords.landmark(),
                NavelsWords.trend(answer),
                NavelsWords.doubling(answer),
                NavelsWords.eValue(answer),
                NavelsWords.avoidable(answer),
                NavelsWords.needed(answer),
                NavelsWords.missing(answer),
                reference == null
                        ? "No class holds " + DelayClass.CALVES_OF_REFERENCE + " calves to compare others with."
                        : "Compared with " + reference.delay().word() + ", the earliest class of at least "
                                + DelayClass.CALVES_OF_REFERENCE + " calves.",
                answer.dose().points().isEmpty()
                        ? answer.dose().why()
                        : "A restricted cubic spline of log2(minutes), knots at " + NavelsPictures.knots(answer.dose())
                                + " minutes; nothing else allowed for. Each stroke at the foot is a calf. "
                                + bend(answer.dose().bent()));
    }

    private static String bend(Tested bent) {
        if (!bent.known()) {
            return "";
        }
        return (bent.p() < 0.05 ? "It bends by more than chance" : "Its bends could be chance") + " (p "
                + Plain.p(bent.p()) + ").";
    }

    private static ClassRow row(DelayClass one, NavelLinks links, boolean reference) {
        Measured ratio = one.against().riskRatio();
        Measured points = one.against().riskDifference();
        return new ClassRow(
                one.delay().word(),
                one.risk().n(),
                links.calves(one.delay(), CalvesBehind.Part.DENOMINATOR),
                one.risk().cases(),
                links.calves(one.delay(), CalvesBehind.Part.NUMERATOR),
                risk(one.risk()),
                interval(one.risk()),
                ratio.known() ? NavelMeasures.ratio(ratio.interval().value()) : "–",
                ratio.known() ? Plain.span(ratio.interval()) : "",
                points.known() ? NavelMeasures.points(points.interval()) : "–",
                Double.isNaN(one.adjustedP()) ? "–" : Plain.p(one.adjustedP()),
                one.against().why() == null ? "" : reference ? "the reference" : "–");
    }

    private static TermRow row(AdjustedDose.Term term) {
        String name = switch (term.name()) {
            case "intercept" -> "intercept (odds)";
            case AdjustedDose.DOSE -> "delay, each doubling";
            case "cleanliness" -> "dirtiness, each point";
            case "ease" -> "calving ease, each grade";
            default -> "no colostrum by 6 h";
        };
        return new TermRow(
                name,
                Plain.number(term.oddsRatio().value(), 2),
                Plain.number(term.oddsRatio().low(), 2) + " to "
                        + Plain.number(term.oddsRatio().high(), 2),
                Plain.number(term.standardError(), 3),
                Double.isNaN(term.clusteredStandardError()) ? "–" : Plain.number(term.clusteredStandardError(), 3));
    }

    private static CareRow row(CareStratum stratum) {
        Measured ratio = stratum.against().riskRatio();
        return new CareRow(
                stratum.name(),
                stratum.risk().n(),
                stratum.risk().cases(),
                risk(stratum.risk()),
                interval(stratum.risk()),
                ratio.known()
                        ? NavelMeasures.ratio(ratio.interval().value()) + " (" + Plain.span(ratio.interval()) + ")"
                        : "compared with",
                stratum.early().cases() + " of " + stratum.early().n(),
                stratum.late().cases() + " of " + stratum.late().n());
    }

    private static String risk(GroupRisk risk) {
        return risk.at21Days().known()
                ? Plain.percent(risk.at21Days().interval().value(), risk.n())
                : "–";
    }

    private static String interval(GroupRisk risk) {
        return risk.at21Days().known() ? Plain.span(risk.at21Days().interval(), risk.n()) : "";
    }
}
