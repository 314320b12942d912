package wisp.site;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.chart.Picture;
import wisp.chart.SvgPainter;
import wisp.history.Life;
import wisp.indicator.Estimate;
import wisp.indicator.Indicator;
import wisp.indicator.IndicatorSentence;
import wisp.indicator.Stratum;
import wisp.indicator.Verdict;
import wisp.records.Records;

/**
 * One figure opened: its value, its rule and source, its strata, who was left out, and the calves behind each count.
 *
 * @param row the figure itself
 * @param by what it is divided by, empty where by nothing
 * @param picture SVG of the strata, empty where it is not divided
 * @param listTitle what the list of calves shows
 * @param calves the calves, or episodes, of the count asked for
 */
public record FigurePage(
        Frame frame,
        FigureRow row,
        String definition,
        String source,
        String remarks,
        String targetSource,
        String file,
        int version,
        String method,
        List<Estimate.Attrition> attrition,
        String by,
        List<FigureRow> strata,
        String picture,
        String pictureHref,
        String listTitle,
        List<Listed> calves,
        String caution) {

    /** One calf, or one of its episodes, in the list. */
    public record Listed(
            String calf, String href, String born, String pen, String part, String why, String outcomeAt) {}

    static FigurePage of(Context ctx, Records records, Asked asked) {
        String id = ctx.pathParam("id");
        CalvesBehind behind = CalvesBehind.of(ctx, records, asked, id);
        Estimate whole = records.figures().of(FiguresApi.indicator(records, id), asked.cohort(), asked.selection());
        Map<String, String> kept = new LinkedHashMap<>();
        CalvesBehind.PARAMETERS.forEach(name -> {
            if (ctx.queryParam(name) != null && name.equals("part")) {
                kept.put(name, ctx.queryParam(name));
            }
        });
        Indicator indicator = whole.indicator();
        Frame frame = Frame.of(asked, indicator.title(), "/figures/" + id, kept);
        Stratum by = asked.selection().by();
        Picture picture = by == null ? null : StrataPicture.of(whole, by, frame.links());
        return new FigurePage(
                frame,
                FigureRow.of(whole, frame.links()),
                IndicatorSentence.of(indicator),
                indicator.source(),
                indicator.remarks(),
                indicator.target() == null ? "" : indicator.target().source(),
                indicator.file(),
                indicator.version(),
                whole.interval() == null ? "" : whole.interval().method(),
                whole.attrition(),
                by == null ? "" : by.title(),
                whole.strata().stream()
                        .map(stratum -> FigureRow.of(stratum, frame.links()))
                        .toList(),
                picture == null ? "" : SvgPainter.figure(picture),
                frame.to("/figures/" + id + ".png"),
                title(behind, by),
                calves(asked, behind, frame.links()),
                Cautions.of(indicator));
    }

    private static String title(CalvesBehind behind, Stratum by) {
        String stratum = behind.estimate().name();
        String of = stratum.isEmpty() || by == null ? "" : " (" + by.title() + ": " + stratum + ")";
        return switch (behind.part()) {
            case ALL -> "Everyone behind this figure" + of;
            case NUMERATOR -> "Counted as cases or done" + of;
            case DENOMINATOR -> "In the denominator" + of;
            case PENDING -> "Still pending" + of;
            case EXCLUDED -> "Left out" + of;
            case OUTSIDE -> "Not in the population" + of;
        };
    }

    private static List<Listed> calves(Asked asked, CalvesBehind behind, Links links) {
        List<Listed> listed = new ArrayList<>();
        for (Verdict verdict : behind.verdicts()) {
            Life life = asked.cohort().lives().get(verdict.row());
            ZoneId zone = life.farm().zone();
            String outcome = verdict.because() == null
                    ? ""
                    : EventWords.of(verdict.because()) + ", "
                            + Shown.moment(
                                    verdict.because().time(), verdict.because().timeKnown(), zone) + ", age "
                            + Shown.age(life.ageAt(verdict.because().time()));
            listed.add(new Listed(
                    life.key(),
                    links.calf(life.key()),
                    Shown.moment(life.born().time(), life.birthTimeKnown(), zone),
                    life.birth().pen() == null ? "not recorded" : life.birth().pen(),
                    part(verdict),
                    verdict.reason().replace('-', ' '),
                    outcome));
        }
        return listed;
    }

    private static String part(Verdict verdict) {
        return switch (verdict.part()) {
            case CASE -> verdict.count() > 1 ? "counted " + verdict.count() + " times" : "counted";
            case CLEAR -> verdict.pending() ? "in the denominator, still followed" : "in the denominator";
            case PENDING -> "pending";
            case EXCLUDED -> "left out";
            case OUTSIDE -> "not in the population";
        };
    }
}
