package wisp.question;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import wisp.indicator.EstimateJson;
import wisp.indicator.IntervalJson;
import wisp.indicator.Selection;
import wisp.indicator.SelectionWords;
import wisp.indicator.Stratum;
import wisp.statistics.FunnelLimits;
import wisp.statistics.Interval;

/** Writes the answer as the JSON that the command line and the HTTP interface give out. */
public final class PensJson {
    private PensJson() {}

    /**
     * The whole answer.
     *
     * @param selection what was asked, for the addresses of the calves behind the counts
     */
    public static ObjectNode of(PensAnswer answer, Selection selection) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("question", "pens");
        json.put("season", answer.season());
        SelectionWords.filters(selection).forEach(json.putObject("filters")::put);
        json.put("as_of", answer.asOf().toString());
        ArrayNode sentences = json.putArray("sentences");
        answer.sentences().forEach(sentences::add);
        ArrayNode pens = json.putArray("pens");
        answer.pens().forEach(pen -> pens.add(pen(pen, answer, selection)));
        DirtyShare all = answer.overall();
        ObjectNode overall = json.putObject("overall");
        overall.put("n", all.n()).put("dirty", all.dirty());
        IntervalJson.put(overall, "share", all.share());
        limits(overall, all.interval());
        json.put("no_pen", answer.noPen());
        ArrayNode unscored = json.putArray("pens_without_score");
        answer.unscored().forEach(unscored::add);
        spread(json.putObject("spread"), answer.spread());
        homogeneity(json.putObject("homogeneity"), answer.homogeneity());
        PensContextJson.put(json, answer);
        json.set("figure", EstimateJson.of(answer.figure(), selection.by(Stratum.PEN)));
        ArrayNode method = json.putArray("method");
        answer.method().forEach(method::add);
        ArrayNode cautions = json.putArray("cautions");
        answer.cautions().forEach(cautions::add);
        return json;
    }

    private static ObjectNode pen(PenShare pen, PensAnswer answer, Selection selection) {
        DirtyShare share = pen.share();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("pen", pen.pen());
        json.put("n", share.n());
        json.put("dirty", share.dirty());
        IntervalJson.put(json, "share", share.share());
        limits(json, share.interval());
        IntervalJson.put(json, "mean_score", pen.meanScore());
        IntervalJson.put(json, "z", pen.z());
        funnel(json, "limits_95", pen.limits95());
        funnel(json, "limits_998", pen.limits998());
        Interval shrunken = pen.shrunken();
        IntervalJson.put(json, "shrunken", shrunken == null ? Double.NaN : shrunken.value());
        IntervalJson.put(json, "shrunken_low", shrunken == null ? Double.NaN : shrunken.low());
        IntervalJson.put(json, "shrunken_high", shrunken == null ? Double.NaN : shrunken.high());
        IntervalJson.put(json, "probability_dirtiest", pen.probabilityDirtiest());
        IntervalJson.put(json, "probability_above_median", pen.probabilityAboveMedian());
        json.put("standing", pen.standing().name().toLowerCase(Locale.ROOT));
        json.put("too_few_to_rank", pen.tooFewToRank());
        json.put("bedding_or_cleaning_on_record", pen.kept());
        IntervalJson.put(json, "days_since_bedding_median", pen.daysSinceBedding());
        IntervalJson.put(json, "days_since_bedding_median_of_other_pens", pen.daysElsewhere());
        json.set("against_others", contrast(pen.others()));
        json.set("against_last_season", contrast(pen.before()));
        if (pen.limits95() == null) {
            json.put("why", "All scored calves are alike, so that chance has no limits to set.");
        } else if (!answer.spread().fitted()) {
            json.put("why", answer.spread().why());
        }
        Map<String, String> parameters =
                new LinkedHashMap<>(selection.by(Stratum.PEN).parameters());
        parameters.put("season", answer.season());
        parameters.put("stratum", pen.pen());
        json.put("calves", calves(pen, parameters, "denominator"));
        json.put("dirty_calves", calves(pen, parameters, "numerator"));
        return json;
    }

    /** The address of as many calves as the count says. */
    private static String calves(PenShare pen, Map<String, String> parameters, String part) {
        Map<String, String> all = new LinkedHashMap<>(parameters);
        all.put("part", part);
        return EstimateJson.calves(pen.figure(), all);
    }

    private static ObjectNode contrast(PenContrast contrast) {
        if (contrast == null) {
            return null;
        }
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("with", contrast.with().name());
        json.put("n", contrast.with().n());
        json.put("dirty", contrast.with().dirty());
        json.set("difference", IntervalJson.of(contrast.difference()));
        IntervalJson.put(json, "p", contrast.p());
        IntervalJson.put(json, "p_adjusted", contrast.adjustedP());
        json.put("comparisons", contrast.comparisons());
        json.put("more_than_chance", contrast.moreThanChance());
        return json;
    }

    private static void spread(ObjectNode json, PenSpread spread) {
        IntervalJson.put(json, "a", spread.a());
        IntervalJson.put(json, "b", spread.b());
        IntervalJson.put(json, "rho", spread.rho());
        if (spread.fitted()) {
            json.put("boundary", spread.boundary());
        } else {
            json.putNull("boundary");
        }
        if (spread.boundary()) {
            json.put(
                    "why",
                    "No spread beyond chance was found: a and b are infinite, and every shrunken share is that"
                            + " of all pens together.");
        } else if (spread.why() != null) {
            json.put("why", spread.why());
        }
    }

    private static void homogeneity(ObjectNode json, PenHomogeneity test) {
        IntervalJson.put(json, "chi_square", test.chiSquare());
        if (test.why() == null) {
            json.put("df", test.df());
            IntervalJson.put(json, "p", test.p());
            json.put("method", test.method());
        } else {
            json.putNull("df");
            json.putNull("p");
            json.put("why", test.why());
        }
    }

    private static void funnel(ObjectNode json, String name, FunnelLimits limits) {
        if (limits == null) {
            json.putNull(name);
        } else {
            json.putArray(name).add(limits.low()).add(limits.high());
        }
    }

    static void limits(ObjectNode json, Interval interval) {
        IntervalJson.put(json, "low", interval == null ? Double.NaN : interval.low());
        IntervalJson.put(json, "high", interval == null ? Double.NaN : interval.high());
    }
}
