package wisp.question;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import wisp.indicator.IntervalJson;
import wisp.statistics.TwoByTwoTable;

/** Writes what stands round the pens: places, weeks, bedding, stocking, months, seasons and illness. */
final class PensContextJson {
    private PensContextJson() {}

    static void put(ObjectNode json, PensAnswer answer) {
        places(json.putObject("places"), answer.places());
        weeks(json.putArray("weeks"), answer.weeks());
        Circumstances circumstances = answer.circumstances();
        IntervalJson.put(json, "days_since_bedding_median", circumstances.medianDays());
        shares(json.putArray("days_since_bedding"), circumstances.bedding());
        shares(json.putArray("calvings_in_last_7_days"), circumstances.stocking());
        shares(json.putArray("months"), circumstances.months());
        shares(json.putArray("seasons"), answer.seasons());
        ArrayNode terms = json.putArray("terms");
        circumstances.terms().forEach(term -> terms.add(term(term)));
        timeOfYear(json.putObject("time_of_year"), circumstances.timeOfYear());
        ArrayNode illness = json.putArray("illness");
        answer.illness().forEach(one -> illness.add(illness(one)));
    }

    private static void places(ObjectNode json, KeptPlaces places) {
        json.set("kept", share(places.kept()));
        json.set("elsewhere", share(places.elsewhere()));
        json.set("difference", IntervalJson.of(places.difference()));
        IntervalJson.put(json, "p", places.p());
        if (places.difference() == null) {
            json.put("why", "All scored calves are on one side.");
        }
    }

    private static void weeks(ArrayNode json, List<WeekShare> weeks) {
        for (WeekShare week : weeks) {
            ObjectNode one = share(week.share());
            one.remove("name");
            one.put("monday", week.monday().toString());
            IntervalJson.put(
                    one,
                    "centre",
                    week.limits() == null ? Double.NaN : week.limits().centre());
            IntervalJson.put(
                    one,
                    "limit_low",
                    week.limits() == null ? Double.NaN : week.limits().low());
            IntervalJson.put(
                    one,
                    "limit_high",
                    week.limits() == null ? Double.NaN : week.limits().high());
            one.put("outside", week.outside());
            json.add(one);
        }
    }

    private static void shares(ArrayNode json, List<DirtyShare> shares) {
        shares.forEach(share -> json.add(share(share)));
    }

    private static ObjectNode share(DirtyShare share) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("name", share.name()).put("n", share.n()).put("dirty", share.dirty());
        IntervalJson.put(json, "share", share.share());
        PensJson.limits(json, share.interval());
        return json;
    }

    private static ObjectNode term(DirtinessTerm term) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("name", term.name()).put("n", term.n());
        json.set("odds_ratio_crude", IntervalJson.of(term.crude()));
        json.set("odds_ratio_within_pens", IntervalJson.of(term.within()));
        IntervalJson.put(json, "p_adjusted", term.adjustedP());
        json.put("more_than_chance", term.moreThanChance());
        if (term.why() != null) {
            json.put("why", term.why());
        }
        return json;
    }

    private static void timeOfYear(ObjectNode json, TimeOfYear year) {
        json.put("in_the_model", year.allowedFor());
        IntervalJson.put(json, "chi_square", year.chiSquare());
        IntervalJson.put(json, "p", year.p());
        IntervalJson.put(json, "p_adjusted", year.adjustedP());
        json.put("more_than_chance", year.moreThanChance());
        if (year.why() != null) {
            json.put("why", year.why());
        }
    }

    private static ObjectNode illness(DirtyThenIll one) {
        TwoByTwoTable table = one.table();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("outcome", one.outcome());
        json.put("dirty_ill", table.exposedCases()).put("dirty", table.exposed());
        json.put("clean_ill", table.unexposedCases()).put("clean", table.unexposed());
        json.put("left_out", one.leftOut());
        json.set("risk_ratio", IntervalJson.of(one.crude()));
        json.set("risk_ratio_within_pens", IntervalJson.of(one.byPen()));
        IntervalJson.put(json, "p", one.p());
        IntervalJson.put(json, "p_adjusted", one.adjustedP());
        json.put("more_than_chance", one.moreThanChance());
        if (one.why() != null) {
            json.put("why", one.why());
        }
        return json;
    }
}
