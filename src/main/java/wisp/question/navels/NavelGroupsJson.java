package wisp.question.navels;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import wisp.indicator.IntervalJson;

/** Writes groups of calves, comparisons and models of the navels question as JSON. */
final class NavelGroupsJson {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private NavelGroupsJson() {}

    /** Puts a group's counts and risks into an object. */
    static void risk(ObjectNode json, GroupRisk group) {
        json.put("n", group.n());
        json.put("cases", group.cases());
        json.put("censored", group.censored());
        three(json, "risk", "low", "high", group.share());
        three(json, "risk_at_21d", "risk_at_21d_low", "risk_at_21d_high", group.at21Days());
        json.put(
                "risk_at_21d_method",
                group.at21Days().known() ? group.interval().method() : null);
        if (!group.at21Days().known()) {
            json.put("risk_why", group.at21Days().why());
        }
    }

    private static void three(ObjectNode json, String value, String low, String high, Measured measured) {
        IntervalJson.put(json, value, measured.known() ? measured.interval().value() : Double.NaN);
        IntervalJson.put(json, low, measured.known() ? measured.interval().low() : Double.NaN);
        IntervalJson.put(json, high, measured.known() ? measured.interval().high() : Double.NaN);
    }

    /** Puts a comparison into an object. */
    static void against(ObjectNode json, TwoGroups against) {
        json.set("risk_ratio", MeasuresJson.of(against.riskRatio()));
        json.set("risk_difference", MeasuresJson.of(against.riskDifference()));
        json.set("odds_ratio", MeasuresJson.of(against.oddsRatio()));
        json.set("risk_ratio_at_21d", MeasuresJson.of(against.ratioAt21Days()));
        json.set("risk_difference_at_21d", MeasuresJson.of(against.differenceAt21Days()));
        IntervalJson.put(json, "fisher_p", against.fisher().p());
        IntervalJson.put(json, "mid_p", against.midP().p());
        if (!against.fisher().known()) {
            json.put("p_why", against.fisher().why());
        }
        json.put("more_than_chance", against.why() == null ? against.moreThanChance() : null);
        json.set("mantel_haenszel", pens(against.mantelHaenszel()));
        if (against.why() != null) {
            json.put("why", against.why());
        }
    }

    private static ObjectNode pens(OverPens over) {
        ObjectNode json = JSON.objectNode();
        json.put("pens", over.pens());
        json.put("seasons", over.seasons());
        json.put("no_pen", over.withoutPen());
        json.set("risk_ratio", MeasuresJson.of(over.riskRatio()));
        json.set("odds_ratio", MeasuresJson.of(over.oddsRatio()));
        json.set("risk_difference", MeasuresJson.of(over.riskDifference()));
        IntervalJson.put(json, "chi_square", over.test().statistic());
        IntervalJson.put(json, "p", over.test().p());
        json.put(
                over.test().known() ? "test" : "why",
                over.test().known() ? over.test().method() : over.test().why());
        IntervalJson.put(json, "homogeneity_p", over.homogeneity().p());
        if (over.homogeneity().known()) {
            json.put("homogeneity_test", over.homogeneity().method());
            json.put("homogeneity_sparse", over.sparse());
        } else {
            json.put("homogeneity_why", over.homogeneity().why());
        }
        return json;
    }

    /** The logistic model of the delay. */
    static ObjectNode adjusted(AdjustedDose model) {
        ObjectNode json = JSON.objectNode();
        ArrayNode terms = json.putArray("terms");
        for (AdjustedDose.Term term : model.terms()) {
            ObjectNode one = terms.addObject();
            one.put("name", term.name());
            IntervalJson.put(one, "estimate", term.wald().value());
            IntervalJson.put(one, "standard_error", term.standardError());
            IntervalJson.put(one, "low", term.wald().low());
            IntervalJson.put(one, "high", term.wald().high());
            IntervalJson.put(one, "clustered_standard_error", term.clusteredStandardError());
            IntervalJson.put(
                    one,
                    "clustered_low",
                    term.clustered() == null ? Double.NaN : term.clustered().low());
            IntervalJson.put(
                    one,
                    "clustered_high",
                    term.clustered() == null ? Double.NaN : term.clustered().high());
            one.set("odds_ratio", MeasuresJson.of(new Measured(term.oddsRatio(), null)));
        }
        json.put("scale", "log odds");
        json.put("n", model.calves());
        json.put("cases", model.cases());
        json.put("clusters", model.clusters());
        json.put("method", model.method());
        ObjectNode leftOut = json.putObject("left_out");
        model.leftOut().forEach((name, count) -> leftOut.put(name + " not recorded", count));
        ObjectNode dropped = json.putObject("dropped");
        model.dropped().forEach(dropped::put);
        if (model.why() != null) {
            json.put("why", model.why());
        }
        return json;
    }

    /** Treated calves by product or by method. */
    static ArrayNode care(Iterable<CareStratum> strata) {
        ArrayNode all = JSON.arrayNode();
        for (CareStratum stratum : strata) {
            ObjectNode json = all.addObject();
            json.put("name", stratum.name());
            risk(json, stratum.risk());
            json.set("risk_ratio", MeasuresJson.of(stratum.against().riskRatio()));
            IntervalJson.put(json, "fisher_p", stratum.against().fisher().p());
            risk(json.putObject("early"), stratum.early());
            risk(json.putObject("late"), stratum.late());
            json.set("late_risk_ratio", MeasuresJson.of(stratum.lateRatio()));
        }
        return all;
    }
}
