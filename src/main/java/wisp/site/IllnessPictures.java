package wisp.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import wisp.chart.Along;
import wisp.chart.Axis;
import wisp.chart.Bars;
import wisp.chart.Curve;
import wisp.chart.Format;
import wisp.chart.Ink;
import wisp.chart.Knot;
import wisp.chart.Layer;
import wisp.chart.LimitCurve;
import wisp.chart.Mark;
import wisp.chart.Picture;
import wisp.chart.Points;
import wisp.chart.SmallMultiples;
import wisp.question.season.AgeHazard;
import wisp.question.season.IllnessCalendar;
import wisp.question.season.SeasonAnswer;

/** Each illness by week of life and by calendar week, the season before muted behind this one. */
final class IllnessPictures {
    /** Fewer episodes than this are told in words and not drawn. */
    static final int FEW_EPISODES = 5;

    private static final int DAYS = 7;

    /** Last season's weeks lie so many days earlier, and are drawn on this season's. */
    private static final int DAYS_OF_52_WEEKS = 364;

    private IllnessPictures() {}

    /** Each illness that occurred by week of life, on one scale. */
    static List<Picture> hazards(SeasonAnswer answer, SeasonLinks links) {
        List<Picture> pictures = new ArrayList<>();
        for (int i = 0; i < answer.hazards().size(); i++) {
            if (answer.hazards().get(i).episodes() >= FEW_EPISODES) {
                pictures.add(hazard(i, answer, links));
            }
        }
        return pictures.isEmpty() ? pictures : SmallMultiples.onOneScale(pictures);
    }

    private static Picture hazard(int i, SeasonAnswer answer, SeasonLinks links) {
        AgeHazard hazard = answer.hazards().get(i);
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
        List<Layer> layers = new ArrayList<>();
        List<Knot> before = answer.before().isEmpty()
                ? List.of()
                : knots(answer.hazardsBefore().get(i));
        if (before.size() > 1) {
            layers.add(new Curve(answer.before(), Ink.MUTED, before));
        }
        layers.add(new Points("", Ink.FIRST, Along.Y, marks));
        return new Picture(
                "age-" + hazard.condition(),
                hazard.title(),
                hazard.title() + " by week of life, episodes per 1000 calf-days: "
                        + Shown.decimals(worst.hazard().value(), 1) + " in week " + worst.number()
                        + ", its highest"
                        + (before.size() > 1 ? "; " + answer.before() + " behind it, muted." : "."),
                Axis.linear("Week of life", Format.COUNT),
                Axis.fromZero("Per 1000 calf-days", Format.NUMBER),
                layers);
    }

    private static List<Knot> knots(AgeHazard before) {
        return before.weeks().stream()
                .filter(week -> week.hazard() != null)
                .map(week -> Knot.at(week.number(), week.hazard().value())
                        .between(week.hazard().low(), week.hazard().high()))
                .toList();
    }

    /** Each illness that occurred by calendar week, on one scale. */
    private static List<Picture> calendars(SeasonAnswer answer, SeasonLinks links) {
        List<Picture> pictures = new ArrayList<>();
        for (int i = 0; i < answer.calendars().size(); i++) {
            if (answer.calendars().get(i).episodes() >= FEW_EPISODES) {
                pictures.add(calendar(i, answer, links));
            }
        }
        return pictures.isEmpty() ? pictures : SmallMultiples.onOneScale(pictures);
    }

    /** The births, and the illnesses below them on the same weeks. */
    static List<Picture> byWeek(SeasonAnswer answer, SeasonLinks links) {
        List<Picture> pictures = new ArrayList<>();
        pictures.add(SeasonPictures.births(answer, links));
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

    private static Picture calendar(int i, SeasonAnswer answer, SeasonLinks links) {
        IllnessCalendar calendar = answer.calendars().get(i);
        List<Mark> marks = new ArrayList<>();
        IllnessCalendar.Week worst = calendar.weeks().get(0);
        for (IllnessCalendar.Week week : calendar.weeks()) {
            int count = week.episodes().count();
            worst = count > worst.episodes().count() ? week : worst;
            if (count > 0) {
                marks.add(Mark.at(SeasonPictures.middle(week.monday()), count, Shown.date(week.monday()))
                        .saying(count + " found")
                        .to(links.calves(week.episodes())));
            }
        }
        List<Layer> layers = new ArrayList<>();
        List<Knot> before = answer.before().isEmpty()
                ? List.of()
                : knots(answer.calendarsBefore().get(i), calendar);
        if (!before.isEmpty()) {
            layers.add(new LimitCurve(answer.before(), Ink.MUTED, true, before));
        }
        layers.add(
                new Bars(before.isEmpty() ? "" : answer.season(), Ink.FIRST, Along.Y, SeasonPictures.BAR_DAYS, marks));
        return new Picture(
                "week-" + calendar.condition(),
                calendar.title(),
                calendar.title() + " by calendar week, " + calendar.episodes() + " in all; most, "
                        + worst.episodes().count() + ", in the week from " + Shown.date(worst.monday())
                        + (before.isEmpty() ? "." : "; " + answer.before() + " behind it, muted, 52 weeks later."),
                Axis.dates("Week in which it was found"),
                Axis.fromZero("Episodes", Format.COUNT),
                layers);
    }

    /** Last season's weeks on this season's, none where it had no episode in them. */
    private static List<Knot> knots(IllnessCalendar before, IllnessCalendar now) {
        LocalDate first = now.weeks().get(0).monday();
        LocalDate last = now.weeks().get(now.weeks().size() - 1).monday();
        List<Knot> knots = new ArrayList<>();
        double highest = 0;
        for (IllnessCalendar.Week week : before.weeks()) {
            LocalDate monday = week.monday().plusDays(DAYS_OF_52_WEEKS);
            if (!monday.isBefore(first) && !monday.isAfter(last)) {
                knots.add(Knot.at(Axis.at(monday), week.episodes().count()));
                highest = Math.max(highest, week.episodes().count());
            }
        }
        if (highest == 0) {
            return List.of();
        }
        Knot end = knots.get(knots.size() - 1);
        knots.add(Knot.at(end.x() + DAYS, end.y()));
        return knots;
    }
}
