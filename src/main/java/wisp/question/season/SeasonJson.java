package wisp.question.season;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import wisp.indicator.EstimateJson;
import wisp.indicator.IntervalJson;
import wisp.indicator.Selection;
import wisp.indicator.SelectionWords;

/** Writes the answer as the JSON that the command line and the HTTP interface give out. */
public final class SeasonJson {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private SeasonJson() {}

    /**
     * Everything that the page shows.
     *
     * @param asked what was asked, for the addresses of the calves behind the figures
     */
    public static ObjectNode of(SeasonAnswer answer, Selection asked) {
        Selection selection = asked.by(null);
        ObjectNode json = JSON.objectNode();
        json.put("question", "season");
        json.put("season", answer.season());
        SelectionWords.filters(selection).forEach(json.putObject("filters")::put);
        json.put("before", answer.before().isEmpty() ? null : answer.before());
        json.put("as_of", answer.asOf().toString());
        json.put("calves", answer.calves());
        answer.sentences().forEach(json.putArray("sentences")::add);
        ArrayNode findings = json.putArray("findings");
        for (Finding finding : answer.findings()) {
            ObjectNode one = findings.addObject();
            one.put("figure", finding.figure());
            one.put("by", finding.by() == null ? null : finding.by().word());
            one.put("group", finding.by() == null ? null : finding.group());
            one.put("text", finding.text());
        }
        ArrayNode figures = json.putArray("figures");
        answer.figures().forEach(figure -> figures.add(figure(figure, selection)));
        json.set("passive_transfer", transfer(answer));
        ArrayNode births = json.putArray("births_by_week");
        for (BirthWeek week : answer.births()) {
            births.addObject()
                    .put("monday", week.monday().toString())
                    .put("born", week.born().count())
                    .put("born_dead", week.bornDead());
        }
        ArrayNode survival = json.putArray("survival");
        answer.survival().forEach(curve -> survival.add(survival(curve)));
        json.set("illness_by_age", hazards(answer.hazards()));
        json.set("illness_by_age_last_season", hazards(answer.hazardsBefore()));
        json.set("illness_by_week", calendars(answer.calendars()));
        json.set("illness_by_week_last_season", calendars(answer.calendarsBefore()));
        json.set("deaths", deaths(answer.deaths()));
        json.set("strata", strata(answer.strata(), selection));
        return json;
    }

    private static ObjectNode figure(SeasonFigure figure, Selection selection) {
        ObjectNode json = EstimateJson.of(figure.estimate(), selection);
        json.remove("strata");
        json.set("own_target", EstimateJson.target(figure.own(), figure.estimate()));
        Standardised mix = figure.standardised();
        if (mix == null) {
            json.putNull("standardised");
        } else {
            ObjectNode standardised = json.putObject("standardised");
            standardised.set("value", IntervalJson.of(mix.now()));
            standardised.set("before", IntervalJson.of(mix.before()));
            standardised.set("difference", IntervalJson.of(mix.difference()));
            mix.strata().forEach(standardised.putArray("groups")::add);
            standardised.put("counted", mix.counted());
            standardised.put("left_out", mix.leftOut());
            standardised.put("left_out_before", mix.leftOutBefore());
            if (!mix.why().isEmpty()) {
                standardised.put("why", mix.why());
            }
        }
        json.put("headline", figure.headline());
        IntervalJson.put(json, "p_adjusted", figure.adjustedP());
        json.put("chance", figure.chance().words());
        return json;
    }

    private static ObjectNode transfer(SeasonAnswer answer) {
        ObjectNode json = JSON.objectNode();
        json.put("source", TransferClass.SOURCE);
        json.put(
                "tested",
                answer.transfer().stream()
                        .mapToInt(share -> share.calves().count())
                        .sum());
        ArrayNode classes = json.putArray("classes");
        for (TransferClass.Share share : answer.transfer()) {
            ObjectNode one = classes.addObject();
            one.put("class", share.of().words());
            one.put("edges", share.of().edges());
            one.put("target", share.of().target());
            one.put("calves", share.calves().count());
            one.set("share", IntervalJson.of(share.share()));
        }
        return json;
    }

    private static ObjectNode survival(SurvivalByAge curve) {
        ObjectNode json = JSON.objectNode();
        json.put("season", curve.season());
        json.put("n", curve.n());
        ArrayNode steps = json.putArray("steps");
        for (SurvivalByAge.Step step : curve.steps()) {
            steps.addObject()
                    .put("age_days", step.ageDays())
                    .put("deaths", step.deaths())
                    .put("survival", step.survival())
                    .put("low", step.low())
                    .put("high", step.high());
        }
        ArrayNode atRisk = json.putArray("at_risk");
        curve.atRisk()
                .forEach(
                        one -> atRisk.addObject().put("age_days", one.ageDays()).put("calves", one.calves()));
        return json;
    }

    private static ArrayNode hazards(List<AgeHazard> hazards) {
        ArrayNode json = JSON.arrayNode();
        for (AgeHazard hazard : hazards) {
            ObjectNode one = json.addObject();
            one.put("condition", hazard.condition());
            one.put("title", hazard.title());
            one.put("unit", "per 1000 calf-days");
            ArrayNode weeks = one.putArray("weeks_of_life");
            for (AgeHazard.Week week : hazard.weeks()) {
                ObjectNode of = weeks.addObject();
                of.put("week", week.number());
                of.put("from_days", week.fromDays());
                of.put("to_days", week.toDays());
                of.put("episodes", week.episodes().count());
                of.put("calf_days", week.calfDays());
                of.set("hazard", IntervalJson.of(week.hazard()));
            }
        }
        return json;
    }

    private static ArrayNode calendars(List<IllnessCalendar> calendars) {
        ArrayNode json = JSON.arrayNode();
        for (IllnessCalendar calendar : calendars) {
            ObjectNode one = json.addObject();
            one.put("condition", calendar.condition());
            one.put("title", calendar.title());
            ArrayNode weeks = one.putArray("weeks");
            for (IllnessCalendar.Week week : calendar.weeks()) {
                ObjectNode of = weeks.addObject();
                of.put("monday", week.monday().toString());
                of.put("episodes", week.episodes().count());
                of.put("calf_days_present", week.calfDays());
                of.set("rate", IntervalJson.of(week.rate()));
            }
        }
        return json;
    }

    private static ObjectNode deaths(Deaths deaths) {
        ObjectNode json = JSON.objectNode();
        ArrayNode causes = json.putArray("causes");
        deaths.causes().forEach(cause -> causes.add(cause(cause)));
        json.set("all", cause(deaths.all()));
        return json;
    }

    private static ObjectNode cause(Deaths.Cause cause) {
        ObjectNode json = JSON.objectNode();
        if (!cause.cause().isEmpty()) {
            json.put("cause", cause.cause());
        }
        ObjectNode ages = json.putObject("by_age");
        cause.byAge().forEach((age, calves) -> ages.put(age.words(), calves.count()));
        json.put("total", cause.total().count());
        json.put("last_season", cause.allLastSeason());
        ObjectNode before = json.putObject("last_season_by_age");
        cause.lastSeason().forEach((age, calves) -> before.put(age.words(), calves));
        return json;
    }

    private static ObjectNode strata(StrataTable table, Selection selection) {
        ObjectNode json = JSON.objectNode();
        json.put("figure", table.figure().indicator().id());
        json.put("comparisons", table.comparisons());
        ArrayNode groups = json.putArray("groups");
        for (StrataTable.Line line : table.lines()) {
            ObjectNode one = groups.addObject();
            one.put("by", line.by().word());
            one.put("group", line.group().name());
            one.put("numerator", line.group().numerator());
            one.put("denominator", line.group().denominator());
            one.set("value", IntervalJson.of(line.group().interval()));
            boolean compared = line.group().comparison() != null;
            one.set(
                    "difference",
                    compared ? IntervalJson.of(line.group().comparison().difference()) : null);
            IntervalJson.put(one, "p_adjusted", line.adjustedP());
            one.put("chance", line.chance().words());
            one.put("calves", EstimateJson.calves(line.group(), StrataAddress.of(line, table, selection)));
        }
        return json;
    }
}
