package wisp.site;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wisp.indicator.Comparison;
import wisp.indicator.Estimate;
import wisp.indicator.Target;
import wisp.question.season.AgeHazard;
import wisp.question.season.BirthWeek;
import wisp.question.season.DeathAge;
import wisp.question.season.Deaths;
import wisp.question.season.IllnessCalendar;
import wisp.question.season.SeasonAnswer;
import wisp.question.season.SeasonFigure;
import wisp.question.season.StrataTable;
import wisp.question.season.SurvivalByAge;
import wisp.question.season.TransferClass;
import wisp.statistics.Interval;

/** The season's tables as CSV: full numbers, shares as fractions, nothing where there is no value. */
final class SeasonCsv {
    /** The tables that there are. */
    static final List<String> TABLES = List.of(
            "figures", "deaths", "groups", "survival", "illness-by-age", "illness-by-week", "transfer", "births");

    private final StringWriter text = new StringWriter();
    private final CsvWriter out =
            CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text);

    private SeasonCsv() {}

    /** A table; empty where there is none of that name. */
    static Optional<String> of(String table, SeasonAnswer answer) {
        if (!TABLES.contains(table)) {
            return Optional.empty();
        }
        SeasonCsv csv = new SeasonCsv();
        switch (table) {
            case "figures" -> csv.figures(answer);
            case "deaths" -> csv.deaths(answer.deaths());
            case "groups" -> csv.groups(answer.strata());
            case "survival" -> csv.survival(answer);
            case "illness-by-age" -> csv.hazards(answer);
            case "illness-by-week" -> csv.calendars(answer);
            case "transfer" -> csv.transfer(answer);
            default -> csv.births(answer);
        }
        return Optional.of(csv.written());
    }

    private String written() {
        try {
            out.close();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private void row(Object... cells) {
        List<String> written = new ArrayList<>();
        for (Object cell : cells) {
            if (cell instanceof Interval interval) {
                written.add(number(interval.value()));
                written.add(number(interval.low()));
                written.add(number(interval.high()));
            } else if (cell instanceof None) {
                written.addAll(List.of("", "", ""));
            } else {
                written.add(cell instanceof Double value ? number(value) : cell == null ? "" : cell.toString());
            }
        }
        out.writeRecord(written);
    }

    /** Stands for an interval that there is none of. */
    private enum None {
        INTERVAL
    }

    private static Object three(Interval interval) {
        return interval == null ? None.INTERVAL : interval;
    }

    private static String number(double value) {
        if (!Double.isFinite(value)) {
            return "";
        }
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    private void figures(SeasonAnswer answer) {
        String heads =
                "id,title,unit,numerator,denominator,value,low,high,pending,left_out,target,target_source,own_target,"
                        + "before_season,before_value,before_low,before_high,difference,difference_low,difference_high,"
                        + "p,p_adjusted,chance,same_mix_difference,same_mix_low,same_mix_high,same_mix_left_out,"
                        + "definition_source";
        row((Object[]) heads.split(","));
        for (SeasonFigure figure : answer.figures()) {
            Estimate estimate = figure.estimate();
            Comparison comparison = estimate.comparison();
            Target target = estimate.indicator().target();
            row(
                    estimate.indicator().id(),
                    estimate.indicator().title(),
                    estimate.indicator().measure().unit(),
                    estimate.numerator(),
                    estimate.denominator(),
                    three(estimate.interval()),
                    estimate.pending(),
                    estimate.excluded().values().stream().mapToInt(n -> n).sum(),
                    target(target),
                    target == null ? "" : target.source(),
                    target(figure.own()),
                    comparison == null ? "" : comparison.with(),
                    three(comparison == null ? null : comparison.other().interval()),
                    three(comparison == null ? null : comparison.difference()),
                    comparison == null ? Double.NaN : comparison.p(),
                    figure.adjustedP(),
                    figure.chance().words(),
                    three(
                            figure.standardised() == null
                                    ? null
                                    : figure.standardised().difference()),
                    figure.standardised() == null ? "" : figure.standardised().leftOut(),
                    estimate.indicator().source());
        }
    }

    private static String target(Target target) {
        return target == null ? "" : (target.below() ? "below " : "at least ") + target.value();
    }

    private void deaths(Deaths deaths) {
        List<Object> head = new ArrayList<>(List.of("cause"));
        for (DeathAge age : DeathAge.values()) {
            head.add(age.words());
        }
        head.add("total");
        head.add("last_season");
        for (DeathAge age : DeathAge.values()) {
            head.add("last_season " + age.words());
        }
        row(head.toArray());
        deaths.causes().forEach(cause -> death(cause.cause(), cause));
        death("all", deaths.all());
    }

    private void death(String name, Deaths.Cause cause) {
        List<Object> cells = new ArrayList<>(List.of(name));
        cause.byAge().values().forEach(calves -> cells.add(calves.count()));
        cells.add(cause.total().count());
        cells.add(cause.allLastSeason());
        cells.addAll(cause.lastSeason().values());
        row(cells.toArray());
    }

    private void groups(StrataTable table) {
        String heads = "figure,by,group,numerator,denominator,value,low,high,difference,difference_low,difference_high,"
                + "p_adjusted,chance";
        row((Object[]) heads.split(","));
        for (StrataTable.Line line : table.lines()) {
            Estimate group = line.group();
            row(
                    group.indicator().id(),
                    line.by().word(),
                    group.name(),
                    group.numerator(),
                    group.denominator(),
                    three(group.interval()),
                    three(group.comparison() == null ? null : group.comparison().difference()),
                    line.adjustedP(),
                    line.chance().words());
        }
    }

    private void survival(SeasonAnswer answer) {
        row("season", "age_days", "deaths", "survival", "low", "high");
        for (SurvivalByAge curve : answer.survival()) {
            curve.steps()
                    .forEach(step -> row(
                            curve.season(), step.ageDays(), step.deaths(), step.survival(), step.low(), step.high()));
        }
    }

    private void hazards(SeasonAnswer answer) {
        row("condition", "week_of_life", "episodes", "calf_days", "per_1000_calf_days", "low", "high", "season");
        hazards(answer.hazards(), answer.season());
        hazards(answer.hazardsBefore(), answer.before());
    }

    private void hazards(List<AgeHazard> hazards, String season) {
        for (AgeHazard hazard : hazards) {
            hazard.weeks()
                    .forEach(week -> row(
                            hazard.condition(),
                            week.number(),
                            week.episodes().count(),
                            week.calfDays(),
                            three(week.hazard()),
                            season));
        }
    }

    private void calendars(SeasonAnswer answer) {
        row("condition", "monday", "episodes", "calf_days_present", "per_1000_calf_days", "low", "high", "season");
        calendars(answer.calendars(), answer.season());
        calendars(answer.calendarsBefore(), answer.before());
    }

    private void calendars(List<IllnessCalendar> calendars, String season) {
        for (IllnessCalendar calendar : calendars) {
            calendar.weeks()
                    .forEach(week -> row(
                            calendar.condition(),
                            week.monday(),
                            week.episodes().count(),
                            week.calfDays(),
                            three(week.rate()),
                            season));
        }
    }

    private void transfer(SeasonAnswer answer) {
        row("class", "edges", "calves", "tested", "share", "low", "high", "target", "source");
        for (TransferClass.Share share : answer.transfer()) {
            row(
                    share.of().words(),
                    share.of().edges(),
                    share.calves().count(),
                    share.tested(),
                    three(share.share()),
                    share.of().target(),
                    TransferClass.SOURCE);
        }
    }

    private void births(SeasonAnswer answer) {
        row("monday", "born", "born_dead");
        for (BirthWeek week : answer.births()) {
            row(week.monday(), week.born().count(), week.bornDead());
        }
    }
}
