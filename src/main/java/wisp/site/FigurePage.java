package wisp.site;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.indicator.Conditions;
import wisp.indicator.Estimate;
import wisp.indicator.Indicator;
import wisp.indicator.IndicatorSentence;
import wisp.indicator.LimitTimes;
import wisp.indicator.MarkedEvent;
import wisp.indicator.Measure;
import wisp.indicator.Rule;
import wisp.indicator.Stratum;
import wisp.indicator.Target;
import wisp.indicator.Verdict;
import wisp.records.Records;
import wisp.site.CalvesBehind.Part;

/**
 * One figure opened: its value, its rule and source, its strata, who was left out, and the calves behind each count.
 *
 * @param row the figure itself
 * @param ownTarget the farm's own target, empty where it set none
 * @param ownStanding how the figure stands to it, empty where it cannot be said
 * @param strata the figure divided, null where by nothing
 * @param limits the limits of law that it used
 * @param counts every count of it that has a list
 * @param listTitle what the list of calves shows, empty where no count was asked for
 * @param listCount how many it shows, with how many calves where a calf counts more than once
 * @param calves the calves, or episodes, of the count asked for
 * @param leaf which of them stand on this leaf
 * @param proofHref where every calf outside the limit stands by both clocks; empty where no limit of time is asked
 * @param needsHours whether it leaves out calves whose hour of birth is not known
 * @param unit what it is asked of: calf or episode
 */
public record FigurePage(
        Frame frame,
        FigureRow row,
        String definition,
        String source,
        String remarks,
        String targetSource,
        String ownTarget,
        String ownStanding,
        String file,
        int version,
        String method,
        List<Step> attrition,
        FigureStrata strata,
        List<LimitUsed> limits,
        List<Count> counts,
        String listTitle,
        String listCount,
        List<Listed> calves,
        Leaf leaf,
        String caution,
        String proofHref,
        boolean needsHours,
        String unit) {

    /** One of the figure's counts. */
    public record Count(String what, int count, String href, boolean shown) {}

    /** One step from all asked for to those counted. */
    public record Step(String reason, int before, String beforeHref, int lost, String lostHref) {
        static Step of(Estimate figure, Estimate.Attrition step, Links links) {
            return new Step(
                    step.reason(),
                    step.before(),
                    links.step(figure, Part.BEFORE, step.reason()),
                    step.lost(),
                    links.step(figure, Part.LOST, step.reason()));
        }
    }

    /** One calf, or one of its episodes, in the list. */
    public record Listed(
            CalfName calf, String href, String born, String pen, String part, String why, String outcomeAt) {}

    static FigurePage of(Address address, Records records, Asked asked) {
        String id = address.name();
        CalvesBehind behind = CalvesBehind.of(address, records, asked, id);
        Estimate whole = records.figures().of(FiguresApi.indicator(records, id), asked.cohort(), asked.selection());
        Map<String, String> kept = new LinkedHashMap<>();
        if (address.parameter("part") != null) {
            kept.put("part", address.parameter("part"));
        }
        Indicator indicator = whole.indicator();
        Target own = records.definitions().ownTarget(id).orElse(null);
        Frame frame = Frame.of(asked, indicator.title(), "/figures/" + id, kept);
        Stratum by = asked.selection().by();
        List<Listed> calves = behind.asked() ? calves(asked, records, behind, frame.links()) : List.of();
        String number = address.parameter(Leaf.PARAMETER);
        Leaf leaf = Leaf.of(calves.size(), behind.asked() || by == null ? number : null, frame, list(address));
        return new FigurePage(
                frame,
                FigureRow.of(whole, frame.links()),
                IndicatorSentence.of(indicator),
                indicator.source(),
                indicator.remarks(),
                indicator.target() == null ? "" : indicator.target().source(),
                own == null ? "" : Shown.target(own, Shown.rate(whole)),
                Shown.standing(whole, whole.standing(own)),
                indicator.file(),
                indicator.version(),
                whole.interval() == null ? "" : whole.interval().method(),
                whole.attrition().stream()
                        .map(step -> Step.of(whole, step, frame.links()))
                        .toList(),
                by == null ? null : FigureStrata.of(whole, by, frame, behind.asked(), number),
                LimitUsed.of(indicator, records.definitions(), asked.cohort(), asked.selection()),
                counts(behind, frame.links()),
                behind.asked() ? title(behind, address.parameter("reason"), by) : "",
                listCount(behind),
                leaf.of(calves),
                leaf,
                Cautions.of(indicator),
                LimitTimes.timed(indicator.rule()) ? frame.to("/proof/" + id) : "",
                indicator.needsHours(),
                indicator.rule() instanceof Rule.CaseFatality ? "episode" : "calf");
    }

    /** What names the list beside its part. */
    private static Map<String, String> list(Address address) {
        Map<String, String> list = new LinkedHashMap<>();
        for (String name : List.of("reason", "stratum")) {
            if (address.parameter(name) != null) {
                list.put(name, address.parameter(name));
            }
        }
        return list;
    }

    private static List<Count> counts(CalvesBehind behind, Links links) {
        Estimate estimate = behind.estimate();
        List<Count> counts = new ArrayList<>();
        for (Part part : List.of(Part.NUMERATOR, Part.DENOMINATOR, Part.PENDING, Part.EXCLUDED, Part.ALL)) {
            int count = (int) estimate.verdicts().stream().filter(part::holds).count();
            if (part == Part.EXCLUDED) {
                count = estimate.excluded().values().stream()
                        .mapToInt(Integer::intValue)
                        .sum();
            }
            boolean shown = behind.asked() && behind.part() == part;
            String what = what(part, estimate);
            int episodes = part == Part.NUMERATOR
                    ? episodes(estimate.verdicts().stream().filter(part::holds))
                    : count;
            counts.add(new Count(
                    episodes == count ? what : what + ", of " + count + (count == 1 ? " calf" : " calves"),
                    episodes,
                    links.calves(estimate, part),
                    shown));
        }
        return counts;
    }

    private static String what(Part part, Estimate estimate) {
        boolean limit = estimate.indicator().measure() == Measure.INSIDE_LIMIT;
        return switch (part) {
            case NUMERATOR -> limit ? "done inside the limit" : "counted";
            case DENOMINATOR -> "in the denominator";
            case PENDING -> "still pending";
            case EXCLUDED -> "left out";
            case ALL -> "everyone asked of";
            case OUTSIDE -> "not in the population";
            case LOST -> "not counted";
            case BEFORE -> "still there before the step";
        };
    }

    private static String title(CalvesBehind behind, String reason, Stratum by) {
        String stratum = behind.estimate().name();
        String of = stratum.isEmpty() || by == null ? "" : " (" + by.title() + ": " + stratum + ")";
        String why = reason == null || reason.isBlank() ? "" : ": " + reason.replace('-', ' ');
        String what = what(behind.part(), behind.estimate());
        return Character.toUpperCase(what.charAt(0)) + what.substring(1) + why + of;
    }

    /** A rate counts episodes, of which a calf may have several. */
    private static String listCount(CalvesBehind behind) {
        int counted = behind.part() == Part.NUMERATOR ? episodes(behind.verdicts().stream()) : behind.count();
        return counted == behind.count() ? String.valueOf(counted) : counted + ", of " + behind.count() + " calves";
    }

    private static int episodes(Stream<Verdict> verdicts) {
        return verdicts.mapToInt(Verdict::count).sum();
    }

    /** What heads the way from everyone asked of to those counted. */
    public String way() {
        if (attrition.isEmpty()) {
            return "Left out";
        }
        int first = attrition.get(0).before();
        int lost = attrition.stream().mapToInt(Step::lost).sum();
        return "From " + first + (unit.equals("episode") ? " episodes" : " calves") + " to " + (first - lost);
    }

    /** What a birth of which only the day is known is to it. */
    public String noHour() {
        return needsHours
                ? "A calf whose hour of birth nobody wrote down is left out."
                : "A birth without an hour counts from midnight, the beginning of its day.";
    }

    private static List<Listed> calves(Asked asked, Records records, CalvesBehind behind, Links links) {
        List<Listed> listed = new ArrayList<>();
        boolean rate = Shown.rate(behind.estimate());
        for (Verdict verdict : behind.verdicts()) {
            Life life = asked.cohort().lives().get(verdict.row());
            ZoneId zone = life.farm().zone();
            listed.add(new Listed(
                    CalfName.of(life),
                    links.calf(life.key()),
                    Shown.moment(life.born().time(), life.birthTimeKnown(), zone),
                    life.birth().pen() == null ? "not recorded" : life.birth().pen(),
                    part(verdict, rate),
                    verdict.reason().replace('-', ' '),
                    outcome(life, verdict.because(), records.definitions().conditions())));
        }
        behind.marked().forEach(marked -> listed.add(marked(marked, links)));
        return listed;
    }

    private static Listed marked(MarkedEvent marked, Links links) {
        Life life = marked.life();
        boolean born = life.born() != null;
        ZoneId zone = life.farm().zone();
        LifeEvent event = marked.mark().event();
        return new Listed(
                CalfName.of(life),
                links.calf(life.key()),
                born ? Shown.moment(life.born().time(), life.birthTimeKnown(), zone) : "not recorded",
                born && life.birth().pen() != null ? life.birth().pen() : "not recorded",
                "event left out",
                (marked.mark().kind().problem() + " " + marked.mark().detail()).strip(),
                EventWords.of(event) + ", " + Shown.moment(event.time(), event.timeKnown(), zone));
    }

    private static String outcome(Life life, LifeEvent because, Conditions conditions) {
        if (because == null) {
            return "";
        }
        return EventWords.deciding(because, conditions) + ", "
                + Shown.moment(because.time(), because.timeKnown(), life.farm().zone()) + ", age "
                + Shown.age(life, because.time());
    }

    private static String part(Verdict verdict, boolean rate) {
        return rate && verdict.atRisk()
                ? part(verdict) + ", " + Shown.decimals(verdict.days(), 1) + " days at risk"
                : part(verdict);
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
