package wisp.question.navels;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import wisp.cohort.NavelDelay;
import wisp.indicator.EstimateJson;
import wisp.indicator.IntervalJson;
import wisp.indicator.Selection;
import wisp.indicator.SelectionWords;
import wisp.indicator.Stratum;

/** Writes the answer of the navels question as JSON. */
public final class NavelsJson {
    private final NavelsAnswer answer;
    private final Selection selection;

    private NavelsJson(NavelsAnswer answer, Selection selection) {
        this.answer = answer;
        this.selection = selection.by(null);
    }

    /** Everything that the page shows. */
    public static ObjectNode of(NavelsAnswer answer, Selection selection) {
        return new NavelsJson(answer, selection).json();
    }

    private ObjectNode json() {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("season", answer.season());
        SelectionWords.filters(selection).forEach(json.putObject("filters")::put);
        json.put("as_of", answer.asOf().toString());
        json.put("sentence", NavelsWords.answer(answer).plain());
        json.set("sentences", sentences());
        DelayClass reference = answer.reference();
        json.put("reference", reference == null ? null : reference.delay().word());
        ArrayNode classes = json.putArray("classes");
        answer.classes().forEach(one -> classes.add(delayClass(one)));
        json.put("delay_unknown", answer.delayUnknown());
        json.put("delay_unknown_calves", calves(NavelDelay.UNKNOWN));
        json.set("trend", MeasuresJson.of(answer.trend(), "z"));
        json.set("late", late());
        json.set("dose_response", dose());
        json.set("missing_delay", missing());
        json.set("avoidable", avoidable());
        json.set("calves_needed", needed());
        json.set("products", NavelGroupsJson.care(answer.products()));
        json.set("methods", NavelGroupsJson.care(answer.methods()));
        ArrayNode cautions = json.putArray("cautions");
        NavelsWords.cautions(answer).forEach(caution -> cautions.add(caution.plain()));
        json.set("strata", NavelStrataJson.parts(answer.strata(), this::calves));
        json.set("over_strata", NavelStrataJson.together(answer.strata()));
        json.set("figure", EstimateJson.of(answer.figure(), selection));
        return json;
    }

    private ObjectNode sentences() {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("observational", NavelsWords.observational());
        json.put("landmark", NavelsWords.landmark());
        json.put("trend", NavelsWords.trend(answer));
        json.put("doubling", NavelsWords.doubling(answer).plain());
        json.put("ratios", RatioWords.of(answer).plain());
        json.put("e_value", NavelsWords.eValue(answer));
        json.put("avoidable", NavelsWords.avoidable(answer).plain());
        json.put("calves_needed", NavelsWords.needed(answer).plain());
        json.put("missing_delay", MissingDelayWords.of(answer.missing()).plain());
        return json;
    }

    private ObjectNode delayClass(DelayClass one) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("delay", one.delay().word());
        NavelGroupsJson.risk(json, one.risk());
        NavelGroupsJson.against(json, one.against());
        IntervalJson.put(json, "fisher_p_adjusted", one.adjustedP());
        json.put("calves", calves(one.delay()));
        return json;
    }

    /** The address of the calves of a class: stratum and filters as those of the figure. */
    private String calves(NavelDelay delay) {
        Map<String, String> parameters = new LinkedHashMap<>(selection.parameters());
        parameters.put("season", answer.season());
        parameters.put("by", Stratum.NAVEL_DELAY.word());
        parameters.put("stratum", delay.word());
        return EstimateJson.calves(answer.figure(), parameters);
    }

    private String calves(NavelStratum stratum) {
        Map<String, String> parameters =
                new LinkedHashMap<>(selection.by(answer.strata().by()).parameters());
        parameters.put("season", answer.season());
        parameters.put("stratum", stratum.name());
        return EstimateJson.calves(answer.figure(), parameters);
    }

    private ObjectNode late() {
        LateTreatment late = answer.late();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("delay", "more than 60 min or none by 24 h, against 60 min or less");
        NavelGroupsJson.risk(json, late.late());
        NavelGroupsJson.risk(json.putObject("early"), late.early());
        NavelGroupsJson.against(json, late.against());
        json.set("adjusted", NavelGroupsJson.adjusted(late.adjusted()));
        ObjectNode ratio = MeasuresJson.of(late.adjustedRatio().riskRatio());
        ratio.put("n", late.adjustedRatio().calves());
        ratio.set("crude", MeasuresJson.of(late.adjustedRatio().crude()));
        ArrayNode allowed = ratio.putArray("allowed_for");
        late.adjustedRatio().covariates().forEach(allowed::add);
        ObjectNode notAllowed = ratio.putObject("dropped");
        late.adjustedRatio().dropped().forEach(notAllowed::put);
        json.set("adjusted_risk_ratio", ratio);
        json.set("within_seasons", MeasuresJson.of(late.withinSeasons()));
        json.set("within_night", MeasuresJson.of(late.withinNight()));
        ObjectNode e = json.putObject("e_value");
        IntervalJson.put(
                e,
                "estimate",
                late.eValue() == null ? Double.NaN : late.eValue().estimate());
        IntervalJson.put(
                e, "limit", late.eValue() == null ? Double.NaN : late.eValue().limit());
        if (late.eValue() == null) {
            e.put("why", "There is no finite risk ratio.");
        }
        return json;
    }

    private ObjectNode dose() {
        DoseResponse dose = answer.dose();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("n", dose.minutes().length);
        ArrayNode knots = json.putArray("knots_minutes");
        for (double knot : dose.knots()) {
            knots.add(knot);
        }
        ArrayNode points = json.putArray("points");
        for (DoseResponse.Point point : dose.points()) {
            points.addObject()
                    .put("minutes", point.minutes())
                    .put("risk", point.risk())
                    .put("low", point.low())
                    .put("high", point.high());
        }
        json.set("bend", MeasuresJson.of(dose.bent(), "chi_square"));
        if (dose.why() != null) {
            json.put("why", dose.why());
        }
        return json;
    }

    private ObjectNode missing() {
        MissingDelay missing = answer.missing();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("n", missing.calves());
        json.put("cases", missing.cases());
        json.set("treatment_hour_unknown", counts(missing.treatmentHour()));
        json.set("birth_hour_unknown", counts(missing.birthHour()));
        json.set("early_either_way", counts(missing.placedEarly()));
        json.set("late_either_way", counts(missing.placedLate()));
        json.set("movable", counts(missing.movable()));
        json.set("least_harmful", MeasuresJson.of(missing.least()));
        json.set("most_harmful", MeasuresJson.of(missing.most()));
        json.set("untreated", counts(missing.untreated()));
        json.set("untreated_left_out", MeasuresJson.of(missing.untreatedLeftOut()));
        return json;
    }

    private static ObjectNode counts(MissingDelay.Calves calves) {
        return JsonNodeFactory.instance.objectNode().put("n", calves.n()).put("cases", calves.cases());
    }

    private ObjectNode avoidable() {
        AvoidableRisk avoidable = answer.avoidable();
        ObjectNode json = MeasuresJson.of(avoidable.avoided());
        json.set("risk_as_it_was", MeasuresJson.of(avoidable.asItWas()));
        json.set("risk_if_early", MeasuresJson.of(avoidable.ifEarly()));
        IntervalJson.put(json, "minutes", avoidable.minutes());
        json.put("n", avoidable.calves());
        return json;
    }

    private ObjectNode needed() {
        CalvesNeeded needed = answer.needed();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("power", CalvesNeeded.POWER);
        json.put("settled", Withstanding.whole(answer));
        if (needed.why() == null) {
            json.put("in_all", needed.inAll());
            json.put("more", needed.more());
        } else {
            json.putNull("in_all").putNull("more").put("why", needed.why());
        }
        return json;
    }
}
