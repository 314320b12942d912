package wisp.site;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import wisp.indicator.Estimate;
import wisp.question.navels.CareStratum;
import wisp.question.navels.DelayClass;
import wisp.question.navels.GroupRisk;
import wisp.question.navels.Measured;
import wisp.question.navels.MissingDelay;
import wisp.question.navels.NavelGroup;
import wisp.question.navels.NavelStratum;
import wisp.question.navels.NavelsAnswer;
import wisp.question.navels.Plain;
import wisp.site.NavelLinks.Count;

/** The tables of the navels page as rows; every count carries the address of its calves. */
public final class NavelRows {
    private final NavelsAnswer answer;
    private final NavelLinks links;

    NavelRows(NavelsAnswer answer, NavelLinks links) {
        this.answer = answer;
        this.links = links;
    }

    /**
     * A group's counts and risk.
     *
     * @param risk at 21 days
     */
    public record Risk(String name, Count cases, Count n, String risk, String interval) {}

    /** One class of delay. */
    public record DelayRow(Risk risk, String ratio, String ratioInterval, String difference, String p, String why) {}

    /** One product or method. */
    public record CareRow(Risk risk, String ratio, Count earlyCases, Count early, Count lateCases, Count late) {}

    /** Late against early in one part of the calves. */
    public record PartRow(
            String name, Risk early, Risk late, String ratio, String interval, String p, List<Risk> classes) {}

    /** How many calves drop out for one reason. */
    public record Lost(String reason, Count calves) {}

    List<DelayRow> classes() {
        return answer.classes().stream()
                .map(one -> row(one, one == answer.reference()))
                .toList();
    }

    private DelayRow row(DelayClass one, boolean reference) {
        Measured ratio = one.against().riskRatio();
        Measured points = one.against().riskDifference();
        Count cases = new Count(one.risk().cases(), links.calves(one.delay(), CalvesBehind.Part.NUMERATOR));
        Count n = new Count(one.risk().n(), links.calves(one.delay(), CalvesBehind.Part.DENOMINATOR));
        return new DelayRow(
                risk(one.delay().word(), one.risk(), cases, n),
                ratio.known() ? NavelMeasures.ratio(ratio.interval().value()) : "–",
                ratio.known() ? Plain.span(ratio.interval()) : "",
                points.known() ? NavelMeasures.points(points.interval(), smaller(one)) : "–",
                p(one.adjustedP()),
                one.against().why() == null ? "" : reference ? "the reference" : "–");
    }

    private int smaller(DelayClass one) {
        return Math.min(one.risk().n(), answer.reference().risk().n());
    }

    /** Late and early. */
    List<Risk> lateAndEarly() {
        return List.of(
                risk("early", answer.late().early(), NavelCalvesAsked.all(NavelGroup.EARLY)),
                risk("late", answer.late().late(), NavelCalvesAsked.all(NavelGroup.LATE)));
    }

    List<CareRow> products() {
        return care(answer.products(), NavelCalvesAsked::ofProduct);
    }

    List<CareRow> methods() {
        return care(answer.methods(), NavelCalvesAsked::ofMethod);
    }

    private List<CareRow> care(
            List<CareStratum> strata, BiFunction<NavelCalvesAsked, String, NavelCalvesAsked> narrowed) {
        return strata.stream()
                .map(stratum -> care(stratum, narrowed.apply(NavelCalvesAsked.all(NavelGroup.TREATED), stratum.name())))
                .toList();
    }

    private CareRow care(CareStratum stratum, NavelCalvesAsked treated) {
        Measured ratio = stratum.against().riskRatio();
        // a late calf of a product is one treated late: its group is narrowed by the product, which the untreated lack
        NavelCalvesAsked early = treated.of(NavelGroup.EARLY);
        NavelCalvesAsked late = treated.of(NavelGroup.TREATED_LATE);
        return new CareRow(
                risk(stratum.name(), stratum.risk(), treated),
                stratum.against().why() != null ? "the reference" : ratioText(ratio),
                links.count(stratum.early().cases(), early.casesOnly()),
                links.count(stratum.early().n(), early),
                links.count(stratum.late().cases(), late.casesOnly()),
                links.count(stratum.late().n(), late));
    }

    List<PartRow> parts() {
        return answer.strata().strata().stream().map(this::part).toList();
    }

    private PartRow part(NavelStratum part) {
        NavelCalvesAsked all = NavelCalvesAsked.all(NavelGroup.KNOWN).ofStratum(part.name());
        Measured ratio = part.against().riskRatio();
        return new PartRow(
                part.name(),
                risk("early", part.early(), all.of(NavelGroup.EARLY)),
                risk("late", part.late(), all.of(NavelGroup.LATE)),
                ratio.known() ? NavelMeasures.ratio(ratio.interval().value()) : "–",
                ratio.known() ? Plain.span(ratio.interval()) : "",
                p(part.adjustedP()),
                part.classes().stream()
                        .map(one -> risk(
                                one.delay().word(),
                                one.risk(),
                                all.ofDelay(one.delay().word())))
                        .toList());
    }

    /** Calves of unknown delay, by what was not written and by where they are placed. */
    List<Risk> missing() {
        MissingDelay missing = answer.missing();
        List<Risk> rows = new ArrayList<>();
        add(rows, "treated, hour not written", missing.treatmentHour(), NavelGroup.TREATMENT_HOUR);
        add(rows, "born, hour not written", missing.birthHour(), NavelGroup.BIRTH_HOUR);
        add(rows, "of all these early for certain", missing.placedEarly(), NavelGroup.PLACED_EARLY);
        add(rows, "of all these late or untreated for certain", missing.placedLate(), NavelGroup.PLACED_LATE);
        add(rows, "of all these either", missing.movable(), NavelGroup.MOVABLE);
        return rows;
    }

    private void add(List<Risk> rows, String name, MissingDelay.Calves calves, NavelGroup group) {
        NavelCalvesAsked all = NavelCalvesAsked.all(group);
        rows.add(new Risk(name, links.count(calves.cases(), all.casesOnly()), links.count(calves.n(), all), "", ""));
    }

    /** Who drops out on the way from all calves asked for to those at risk. */
    List<Lost> lost() {
        List<Lost> lost = new ArrayList<>();
        for (Estimate.Attrition step : answer.figure().attrition()) {
            String reason = step.reason().equals("pending")
                    ? "not 24 hours old yet"
                    : step.reason().replace('-', ' ');
            lost.add(new Lost(reason, new Count(step.lost(), links.lost(step.reason()))));
        }
        return lost;
    }

    private Risk risk(String name, GroupRisk group, NavelCalvesAsked calves) {
        return risk(name, group, links.count(group.cases(), calves.casesOnly()), links.count(group.n(), calves));
    }

    private static Risk risk(String name, GroupRisk group, Count cases, Count n) {
        boolean known = group.at21Days().known();
        return new Risk(
                name,
                cases,
                n,
                known ? Plain.percent(group.at21Days().interval().value(), group.n()) : "–",
                known ? Plain.span(group.at21Days().interval(), group.n()) : "");
    }

    private static String ratioText(Measured ratio) {
        return ratio.known()
                ? NavelMeasures.ratio(ratio.interval().value()) + " (" + Plain.span(ratio.interval()) + ")"
                : "–";
    }

    private static String p(double p) {
        return Double.isNaN(p) ? "–" : Plain.p(p);
    }
}
