package wisp.question.navels;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Function;
import wisp.indicator.IntervalJson;

/** Writes late against early in each part of the calves as JSON. */
final class NavelStrataJson {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private NavelStrataJson() {}

    /**
     * One object a part.
     *
     * @param calves the address of a part's calves
     */
    static ArrayNode parts(NavelStrata strata, Function<NavelStratum, String> calves) {
        ArrayNode all = JSON.arrayNode();
        for (NavelStratum stratum : strata.strata()) {
            ObjectNode json = all.addObject();
            json.put("name", stratum.name());
            ArrayNode classes = json.putArray("classes");
            for (NavelStratum.ClassRisk one : stratum.classes()) {
                ObjectNode of = classes.addObject().put("delay", one.delay().word());
                NavelGroupsJson.risk(of, one.risk());
            }
            NavelGroupsJson.risk(json.putObject("early"), stratum.early());
            NavelGroupsJson.risk(json.putObject("late"), stratum.late());
            TwoGroups against = stratum.against();
            json.set("risk_ratio", MeasuresJson.of(against.riskRatio()));
            json.set("risk_difference", MeasuresJson.of(against.riskDifference()));
            json.set("odds_ratio", MeasuresJson.of(against.oddsRatio()));
            json.set("risk_ratio_at_21d", MeasuresJson.of(against.ratioAt21Days()));
            IntervalJson.put(json, "fisher_p", against.fisher().p());
            IntervalJson.put(json, "fisher_p_adjusted", stratum.adjustedP());
            json.put("more_than_chance", stratum.moreThanChance());
            json.put("calves", calves.apply(stratum));
        }
        return all;
    }

    /** What the parts say together; null where nothing divides. */
    static ObjectNode together(NavelStrata strata) {
        if (strata.by() == null) {
            return null;
        }
        ObjectNode json = JSON.objectNode();
        json.put("by", strata.by().word());
        json.put("sentence", NavelStrataSentence.of(strata));
        json.put("comparisons", strata.comparisons());
        json.set("risk_ratio", MeasuresJson.of(strata.pooled()));
        json.set("homogeneity", MeasuresJson.of(strata.homogeneity(), "chi_square"));
        json.put("homogeneity_sparse", strata.sparse());
        if (strata.why() != null) {
            json.put("why", strata.why());
        }
        return json;
    }
}
