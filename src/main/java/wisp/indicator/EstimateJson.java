package wisp.indicator;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import wisp.statistics.Interval;

/** Writes estimates as the JSON that the command line and the HTTP interface give out. */
public final class EstimateJson {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private EstimateJson() {}

    /**
     * One figure.
     *
     * @param selection what was asked, for the address of the calves behind the figure
     */
    public static ObjectNode of(Estimate estimate, Selection selection) {
        Map<String, String> parameters = new LinkedHashMap<>(selection.parameters());
        parameters.put("season", estimate.season());
        ObjectNode json = whole(estimate, parameters);
        ArrayNode strata = json.putArray("strata");
        for (Estimate stratum : estimate.strata()) {
            Map<String, String> narrowed = new LinkedHashMap<>(parameters);
            narrowed.put("stratum", stratum.name());
            ObjectNode one = strata.addObject();
            one.put("name", stratum.name());
            one.setAll(whole(stratum, narrowed));
            one.set("comparison", comparison(stratum.comparison()));
        }
        json.set("comparison", comparison(estimate.comparison()));
        return json;
    }

    /** One figure with the farm's own target beside the published one. */
    public static ObjectNode of(Estimate estimate, Selection selection, Definitions definitions) {
        ObjectNode json = of(estimate, selection);
        json.set(
                "own_target",
                target(definitions.ownTarget(estimate.indicator().id()).orElse(null), estimate));
        return json;
    }

    /** The address of the list of calves behind a figure. */
    public static String calves(Estimate estimate, Map<String, String> parameters) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("figure", estimate.indicator().id());
        all.putAll(parameters);
        return "/api/v1/calves?"
                + all.entrySet().stream()
                        .map(entry ->
                                entry.getKey() + "=" + URLEncoder.encode(entry.getValue(), StandardCharsets.UTF_8))
                        .collect(Collectors.joining("&"));
    }

    private static ObjectNode whole(Estimate estimate, Map<String, String> parameters) {
        Indicator indicator = estimate.indicator();
        ObjectNode json = JSON.objectNode();
        json.put("id", indicator.id());
        json.put("version", indicator.version());
        json.put("title", indicator.title());
        json.put("measure", indicator.measure().word());
        json.put("unit", indicator.measure().unit());
        json.put("season", estimate.season());
        json.put("numerator", estimate.numerator());
        if (indicator.measure() == Measure.RATE) {
            json.put("denominator", estimate.denominator());
        } else {
            json.put("denominator", (long) estimate.denominator());
        }
        interval(json, estimate.interval());
        if (estimate.why() != null) {
            json.put("why", estimate.why());
        }
        json.put("pending", estimate.pending());
        ObjectNode excluded = json.putObject("excluded");
        estimate.excluded().forEach(excluded::put);
        ArrayNode attrition = json.putArray("attrition");
        for (Estimate.Attrition step : estimate.attrition()) {
            attrition
                    .addObject()
                    .put("reason", step.reason())
                    .put("before", step.before())
                    .put("lost", step.lost());
        }
        json.set("target", target(indicator.target(), estimate));
        json.put("definition", IndicatorSentence.of(indicator));
        json.put("source", indicator.source());
        if (!indicator.remarks().isEmpty()) {
            json.put("remarks", indicator.remarks());
        }
        json.put("calves", calves(estimate, parameters));
        return json;
    }

    private static void interval(ObjectNode json, Interval interval) {
        if (interval == null) {
            json.putNull("value");
            json.putNull("low");
            json.putNull("high");
            json.put("level", Estimator.LEVEL);
            json.putNull("method");
        } else {
            IntervalJson.put(json, "value", interval.value());
            IntervalJson.put(json, "low", interval.low());
            IntervalJson.put(json, "high", interval.high());
            json.put("level", interval.level());
            json.put("method", interval.method());
        }
    }

    /** A target and how a figure stands to it, null where there is none. */
    public static ObjectNode target(Target target, Estimate estimate) {
        if (target == null) {
            return null;
        }
        ObjectNode json = JSON.objectNode();
        json.put(target.below() ? "below" : "at_least", target.value());
        json.put("source", target.source());
        if (estimate.interval() != null) {
            json.put("standing", estimate.standing(target).name().toLowerCase(Locale.ROOT));
        }
        return json;
    }

    private static ObjectNode comparison(Comparison comparison) {
        if (comparison == null) {
            return null;
        }
        ObjectNode json = JSON.objectNode();
        json.put("with", comparison.with());
        ObjectNode other = json.putObject("other");
        other.put("numerator", comparison.other().numerator());
        other.put("denominator", comparison.other().denominator());
        interval(other, comparison.other().interval());
        json.set("difference", IntervalJson.of(comparison.difference()));
        json.set("ratio", IntervalJson.of(comparison.ratio()));
        IntervalJson.put(json, "p", comparison.p());
        IntervalJson.put(json, "p_adjusted", comparison.adjustedP());
        json.put("comparisons", comparison.comparisons());
        json.put("words", comparison.words());
        return json;
    }
}
