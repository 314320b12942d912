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
import wisp.chart.Steps;
import wisp.question.season.BirthWeek;
import wisp.question.season.SeasonAnswer;
import wisp.question.season.SurvivalByAge;

/** The season's pictures beside that of its risks. */
final class SeasonPictures {
    /** The pictures that have an address of their own. */
    static final List<String> NAMES = List.of("risks", "survival", "births");

    /** A week less a gap between bars. */
    static final double BAR_DAYS = 6;

    private static final double MIDDLE_OF_WEEK = 3.5;

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

    /** Where a week's mark stands: in its middle. */
    static double middle(LocalDate monday) {
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
