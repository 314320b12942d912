package wisp.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wisp.chart.Along;
import wisp.chart.Axis;
import wisp.chart.Bars;
import wisp.chart.Format;
import wisp.chart.Ink;
import wisp.chart.Knot;
import wisp.chart.Layer;
import wisp.chart.Mark;
import wisp.chart.NumbersAtRisk;
import wisp.chart.Picture;
import wisp.chart.Points;
import wisp.chart.SmallMultiples;
import wisp.chart.Steps;
import wisp.question.season.AgeHazard;
import wisp.question.season.BirthWeek;
import wisp.question.season.IllnessCalendar;
import wisp.question.season.SeasonAnswer;
import wisp.question.season.SurvivalByAge;

/** The season's pictures beside that of its risks. */
final class SeasonPictures {
    /** The pictures that have an address of their own. */
    static final List<String> NAMES = List.of("risks", "survival", "births");

    /** Fewer episodes than this are told in words and not drawn. */
    static final int FEW_EPISODES = 3;

    /** A week less a gap between bars. */
    private static final double BAR_DAYS = 6;

    private static final double MIDDLE_OF_WEEK = 3.5;

    private static final double DAYS = 7;

    private SeasonPictures() {}

    /** Births by week, each bar opening its calves. */
    static Picture births(SeasonAnswer answer, SeasonLinks links) {
        List<Mark> marks = new ArrayList<>();
        int most = 0;
        String busiest = "";
        for (BirthWeek week : answer.births()) {
            int born = week.born().count();
            String monday = Shown.date(week.monday());
            if (born > most) {
                most = born;
                busiest = monday;
            }
            if (born > 0) {
                String dead = week.bornDead() == 0 ? "" : ", " + week.bornDead() + " of them dead";
                marks.add(Mark.at(middle(week.monday()), born, monday)
                        .saying(born + " born" + dead)
                        .to(links.calves(week.born())));
            }
        }
        String words = marks.isEmpty()
                ? "No calf was born."
                : "Bars by week, " + answer.calves() + " calves in all; most, " + most + ", in the week from " + busiest
                        + ".";
        return Picture.of(
                "births",
                "Births by week",
                words,
                Axis.dates("Week of birth"),
                Axis.fromZero("Calves born", Format.COUNT),
                new Bars("", Ink.FIRST, Along.Y, BAR_DAYS, marks));
    }

    /** Survival with its band and the numbers at risk, last season's behind this one's. */
    static Picture survival(SeasonAnswer answer) {
        List<Layer> layers = new ArrayList<>();
        List<Layer> rows = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (int i = 0; i < answer.survival().size(); i++) {
            SurvivalByAge curve = answer.survival().get(i);
            if (curve.n() > 0) {
                Ink ink = i == 0 ? Ink.FIRST : Ink.SECOND;
                layers.add(0, new Steps(curve.season(), ink, knots(curve)));
                rows.add(new NumbersAtRisk(curve.season(), ink, counts(curve)));
                SurvivalByAge.Step last = curve.steps().get(curve.steps().size() - 1);
                words.add("Of " + curve.n() + " calves of " + curve.season() + " alive at "
                        + Shown.decimals(curve.steps().get(0).ageDays(), 0) + " d, "
                        + Shown.decimals(100 * last.survival(), 1) + " % live at "
                        + Shown.decimals(last.ageDays(), 0) + " d.");
            }
        }
        layers.addAll(rows);
        return new Picture(
                "survival",
                "Share of calves still alive, by age",
                words.isEmpty() ? "No calf has been followed past its first day." : String.join(" ", words),
                Axis.fromZero("Age (days)", Format.COUNT),
                Axis.linear("Alive (% of calves), with 95 % band", Format.PERCENT),
                layers);
    }

    private static List<Knot> knots(SurvivalByAge curve) {
        return curve.steps().stream()
                .map(step -> Knot.at(step.ageDays(), step.survival()).between(step.low(), step.high()))
                .toList();
    }

    private static List<NumbersAtRisk.Count> counts(SurvivalByAge curve) {
        return curve.atRisk().stream()
                .map(at -> new NumbersAtRisk.Count(at.ageDays(), at.calves()))
                .toList();
    }

    /** Each illness that occurred by week of life, on one scale. */
    static List<Picture> hazards(SeasonAnswer answer, SeasonLinks links) {
        List<Picture> pictures = new ArrayList<>();
        for (AgeHazard hazard : answer.hazards()) {
            if (hazard.episodes() >= FEW_EPISODES) {
                pictures.add(hazard(hazard, links));
            }
        }
        return pictures.isEmpty() ? pictures : SmallMultiples.onOneScale(pictures);
    }

    private static Picture hazard(AgeHazard hazard, SeasonLinks links) {
        List<Mark> marks = new ArrayList<>();
        AgeHazard.Week worst = null;
        for (AgeHazard.Week week : hazard.weeks()) {
            if (week.hazard() == null) {
                continue;
            }
            worst = worst == null || week.hazard().value() > worst.hazard().value() ? week : worst;
            Mark mark = Mark.at(week.number(), week.hazard().value(), "Week " + week.number())
                    .between(week.hazard().low(), week.hazard().high())
                    .saying(week.episodes().count() + " in " + Math.round(week.calfDays()) + " days");
            String calves = links.calves(week.episodes());
            marks.add(calves.isEmpty() ? mark : mark.to(calves));
        }
        return Picture.of(
                "age-" + hazard.condition(),
                hazard.title(),
                hazard.title() + " by week of life, episodes per 1000 calf-days: "
                        + Shown.decimals(worst.hazard().value(), 1) + " in week " + worst.number()
                        + ", its highest.",
                Axis.linear("Week of life", Format.COUNT),
                Axis.fromZero("Per 1000 calf-days", Format.NUMBER),
                new Points("", Ink.FIRST, Along.Y, marks));
    }

    /** Each illness that occurred by calendar week, on one scale. */
    private static List<Picture> calendars(SeasonAnswer answer, SeasonLinks links) {
        List<Picture> pictures = new ArrayList<>();
        for (IllnessCalendar calendar : answer.calendars()) {
            if (calendar.episodes() >= FEW_EPISODES) {
                pictures.add(calendar(calendar, links));
            }
        }
        return pictures.isEmpty() ? pictures : SmallMultiples.onOneScale(pictures);
    }

    /** The births, and the illnesses below them on the same weeks. */
    static List<Picture> byWeek(SeasonAnswer answer, SeasonLinks links) {
        List<Picture> pictures = new ArrayList<>();
        pictures.add(births(answer, links));
        pictures.addAll(calendars(answer, links));
        if (answer.births().isEmpty()) {
            return pictures;
        }
        double first = Axis.at(answer.births().get(0).monday());
        double last = answer.births().get(answer.births().size() - 1).monday().toEpochDay();
        for (IllnessCalendar calendar : answer.calendars()) {
            for (IllnessCalendar.Week week : calendar.weeks()) {
                last = week.episodes().count() > 0 ? Math.max(last, Axis.at(week.monday())) : last;
            }
        }
        double end = last + DAYS;
        return pictures.stream()
                .map(picture -> new Picture(
                        picture.id(),
                        picture.title(),
                        picture.alternative(),
                        picture.x().within(first, end),
                        picture.y(),
                        picture.layers()))
                .toList();
    }

    private static Picture calendar(IllnessCalendar calendar, SeasonLinks links) {
        List<Mark> marks = new ArrayList<>();
        IllnessCalendar.Week worst = calendar.weeks().get(0);
        for (IllnessCalendar.Week week : calendar.weeks()) {
            int count = week.episodes().count();
            worst = count > worst.episodes().count() ? week : worst;
            if (count > 0) {
                marks.add(Mark.at(middle(week.monday()), count, Shown.date(week.monday()))
                        .saying(count + " found")
                        .to(links.calves(week.episodes())));
            }
        }
        return new Picture(
                "week-" + calendar.condition(),
                calendar.title(),
                calendar.title() + " by calendar week, " + calendar.episodes() + " in all; most, "
                        + worst.episodes().count() + ", in the week from " + Shown.date(worst.monday()) + ".",
                Axis.dates("Week in which it was found"),
                Axis.fromZero("Episodes", Format.COUNT),
                List.of(new Bars("", Ink.FIRST, Along.Y, BAR_DAYS, marks)));
    }

    private static double middle(LocalDate monday) {
        return Axis.at(monday) + MIDDLE_OF_WEEK;
    }

    /** The picture of a name as asked for in an address. */
    static Optional<Picture> named(String name, SeasonAnswer answer, Links links) {
        return switch (name) {
            case "risks" -> Optional.of(SeasonPicture.of(answer, links));
            case "survival" -> Optional.of(survival(answer));
            case "births" -> Optional.of(births(answer, new SeasonLinks(links)));
            default -> Optional.empty();
        };
    }
}
