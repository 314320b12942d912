package wisp.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Pictures of the kinds that pages and reports draw, with invented numbers. */
final class Examples {

    static final List<String> DELAYS = List.of("0–15 min", "15–60 min", "1–2 h", "2–6 h", "6–24 h", "none by 24 h");

    private Examples() {}

    /** Dots with whiskers for two seasons side by side, and a target. */
    static Picture seasons() {
        double[] now = {0.021, 0.034, 0.052, 0.081, 0.12, 0.19};
        double[] then = {0.03, 0.041, 0.048, 0.095, 0.105, 0.22};
        return Picture.of(
                "navel-delay",
                "Navel illness by delay to iodine",
                "Risk rises from 2.1% within 15 minutes to 19% where no iodine was given by 24 hours; last season was alike.",
                Axis.fromZero("Calves with navel illness by day 21 (%)", Format.PERCENT),
                Axis.categories("Delay to navel iodine", DELAYS),
                new Limit("target 5%", Ink.ALARM, Along.X, 0.05),
                new Points("This season", Ink.FIRST, Along.X, dots(now, "this season", true)),
                new Points("Last season", Ink.SECOND, Along.X, dots(then, "last season", false)));
    }

    private static List<Mark> dots(double[] risks, String season, boolean linked) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < risks.length; i++) {
            Mark mark = Mark.at(risks[i], i, DELAYS.get(i) + ", " + season)
                    .between(risks[i] * 0.5, risks[i] * 1.7 + 0.01)
                    .saying("%.1f%%, 95%% interval %.1f to %.1f"
                            .formatted(risks[i] * 100, risks[i] * 50, risks[i] * 170 + 1));
            marks.add(linked ? mark.to("/calves?delay=" + i + "&season=now") : mark);
        }
        return marks;
    }

    /** Two step curves with bands and the numbers at risk. */
    static Picture survival() {
        return Picture.of(
                "navel-free",
                "Calves free of navel illness",
                "After 60 days 96% of calves dipped within an hour and 84% of the others are free of navel illness.",
                Axis.linear("Age (days)", Format.COUNT),
                new Axis(
                        "Free of navel illness (% of calves)",
                        Scale.Linear.FREE.from(0.7).to(1), Format.PERCENT),
                new Steps("Iodine within 60 min", Ink.FIRST, survivors(0.0022)),
                new Steps("Later or none", Ink.SECOND, survivors(0.009)),
                new NumbersAtRisk("Iodine within 60 min", Ink.FIRST, atRisk(310, 3)),
                new NumbersAtRisk("Later or none", Ink.SECOND, atRisk(142, 5)));
    }

    private static List<Knot> survivors(double hazard) {
        List<Knot> knots = new ArrayList<>();
        for (int day = 0; day <= 60; day += 3) {
            double height = Math.exp(-hazard * Math.min(day, 21));
            double room = 0.004 * Math.sqrt(day) * (1 + hazard * 100);
            knots.add(Knot.at(day, height).between(height - room, Math.min(1, height + room)));
        }
        return knots;
    }

    private static List<NumbersAtRisk.Count> atRisk(long start, long lost) {
        return IntStream.rangeClosed(0, 6)
                .mapToObj(i -> new NumbersAtRisk.Count(i * 10, start - i * lost))
                .toList();
    }

    /** Bars by week, each opening its calves. */
    static Picture weeks() {
        int[] births = {3, 9, 17, 26, 31, 28, 22, 14, 9, 6, 2, 1};
        LocalDate monday = LocalDate.of(2026, 2, 2);
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < births.length; i++) {
            LocalDate week = monday.plusWeeks(i);
            marks.add(Mark.at(Axis.at(week) + 3.5, births[i], "Week of " + week)
                    .saying(births[i] + " calves")
                    .to("/calves?week=" + week));
        }
        return Picture.of(
                "births-by-week",
                "Births by week",
                "Births rise to 31 a week at the start of March and fall to 1 by the end of April.",
                Axis.dates("Week of birth"),
                Axis.fromZero("Calves born", Format.COUNT),
                new Bars("", Ink.FIRST, Along.Y, 7, marks),
                new Limit("one calf pen a week", Ink.MUTED, Along.Y, 20));
    }

    /** Ratios with their intervals on a log axis and a summary. */
    static Picture forest() {
        List<String> names = List.of("Spring 2023", "Spring 2024", "Spring 2025", "Spring 2026", "All seasons");
        double[] ratios = {1.52, 2.4, 0.93, 3.1};
        List<Mark> seasons = new ArrayList<>();
        for (int i = 0; i < ratios.length; i++) {
            seasons.add(Mark.at(ratios[i], i, names.get(i))
                    .between(ratios[i] / (1.6 + i * 0.4), ratios[i] * (1.6 + i * 0.4))
                    .saying("risk ratio " + ratios[i])
                    .captioned("%.2f (%.2f to %.2f)"
                            .formatted(ratios[i], ratios[i] / (1.6 + i * 0.4), ratios[i] * (1.6 + i * 0.4)))
                    .to("/season/" + (2023 + i)));
        }
        Mark all = Mark.at(1.74, 4, "All seasons").between(1.28, 2.36).captioned("1.74 (1.28 to 2.36)");
        return Picture.of(
                "late-iodine",
                "Late iodine against early, by season",
                "In three of four seasons calves dipped late had more navel illness; over all seasons 1.74 times as much.",
                new Axis("Risk ratio (log scale)", Scale.Log.FREE.within(0.3, 8), Format.NUMBER),
                Axis.categories("Season", names),
                new Limit("no difference", Ink.MUTED, Along.X, 1),
                new Points("", Ink.THIRD, Along.X, seasons),
                new Points("", Ink.SUMMARY, Along.X, List.of(all)));
    }

    /** Shares against group size with limit curves; what lies outside is named. */
    static Picture funnel() {
        int[] sizes = {8, 12, 15, 21, 26, 34, 40, 47, 55};
        double[] shares = {0.25, 0.08, 0.2, 0.14, 0.42, 0.15, 0.2, 0.13, 0.06};
        List<Mark> inside = new ArrayList<>();
        List<Mark> outside = new ArrayList<>();
        for (int i = 0; i < sizes.length; i++) {
            Mark mark = Mark.at(sizes[i], shares[i], "Pen " + (i + 1))
                    .saying("%.0f%% of %d dirty".formatted(shares[i] * 100, sizes[i]))
                    .to("/pens/" + (i + 1));
            (shares[i] > 0.4 ? outside : inside).add(shares[i] > 0.4 ? mark.captioned("Pen " + (i + 1)) : mark);
        }
        return Picture.of(
                "dirty-pens",
                "Dirty calves by pen",
                "Eight pens lie within the limits; pen 5, with 42% of 26 calves dirty, lies above them.",
                Axis.fromZero("Calves scored in the pen", Format.COUNT),
                new Axis("Dirty calves (%)", Scale.Linear.FREE.from(0).to(0.6), Format.PERCENT),
                new LimitCurve("95% limits", Ink.MUTED, false, funnelLimit(1.96)),
                new LimitCurve("", Ink.MUTED, false, funnelLimit(-1.96)),
                new LimitCurve("99.8% limits", Ink.THIRD, false, funnelLimit(3.09)),
                new LimitCurve("", Ink.THIRD, false, funnelLimit(-3.09)),
                new Limit("all pens 16%", Ink.FIRST, Along.Y, 0.16),
                new Points("Pen inside the limits", Ink.FIRST, Along.Y, inside),
                new Points("Pen outside", Ink.ALARM, Along.Y, outside));
    }

    private static List<Knot> funnelLimit(double z) {
        return IntStream.rangeClosed(2, 30)
                .mapToObj(i -> Knot.at(i * 2, 0.16 + z * Math.sqrt(0.16 * 0.84 / (i * 2))))
                .toList();
    }

    /** A p-chart: shares by week with stepped limits. */
    static Picture controlChart() {
        int[] sizes = {9, 17, 26, 31, 28, 22, 14, 9};
        double[] shares = {0.0, 0.06, 0.08, 0.03, 0.11, 0.27, 0.07, 0.11};
        List<Mark> marks = new ArrayList<>();
        List<Knot> limit = new ArrayList<>();
        for (int i = 0; i < sizes.length; i++) {
            marks.add(Mark.at(i + 1, shares[i], "Week " + (i + 1)));
            limit.add(Knot.at(i + 0.5, 0.08 + 3 * Math.sqrt(0.08 * 0.92 / sizes[i])));
        }
        limit.add(Knot.at(8.5, limit.get(7).y()));
        return Picture.of(
                "navel-weekly",
                "Navel illness by week of birth",
                "Week 6, with 27%, lies above its upper limit of 25%; all other weeks lie below theirs.",
                Axis.linear("Week of the season", Format.COUNT),
                Axis.fromZero("Calves with navel illness (%)", Format.PERCENT),
                new LimitCurve("Upper limit, 3 standard errors", Ink.ALARM, true, limit),
                new Limit("mean 8%", Ink.MUTED, Along.Y, 0.08),
                new Curve(
                        "Share by week",
                        Ink.FIRST,
                        marks.stream().map(m -> Knot.at(m.x(), m.y())).toList()),
                new Points("", Ink.FIRST, Along.Y, marks));
    }

    /** A smooth risk with its band, and the calves that it was read from. */
    static Picture riskCurve() {
        List<Knot> knots = IntStream.rangeClosed(0, 24)
                .mapToObj(h -> {
                    double risk = 0.02 + 0.15 * (1 - Math.exp(-h / 9.0));
                    return Knot.at(h, risk).between(risk * 0.6, risk * 1.5);
                })
                .toList();
        List<Double> calves =
                IntStream.range(0, 60).mapToObj(i -> i * i / 150.0).toList();
        return Picture.of(
                "risk-by-delay",
                "Risk by hours to iodine",
                "The risk rises steeply over the first nine hours and flattens after that.",
                Axis.linear("Delay to iodine (hours)", Format.NUMBER),
                Axis.fromZero("Risk of navel illness (%)", Format.PERCENT),
                new Curve("Risk with 95% band", Ink.FIRST, knots),
                new Rug("Calves", Ink.MUTED, Along.X, calves));
    }

    /** Twenty categories with long names given on the horizontal axis. */
    static Picture manyLongNames() {
        List<String> names = IntStream.rangeClosed(1, 20)
                .mapToObj(i -> "Straw yard number " + i + " behind the old milking parlour")
                .toList();
        List<Mark> marks = IntStream.range(0, 20)
                .mapToObj(i -> Mark.at(i, 0.1 + 0.01 * i, names.get(i))
                        .between(0.05 + 0.005 * i, 0.2 + 0.02 * i)
                        .captioned(i + " of 95"))
                .toList();
        return Picture.of(
                "many-names",
                "Dirty calves by yard",
                "Twenty yards, rising from 10% to 29%.",
                Axis.categories("Yard", names),
                Axis.fromZero("Dirty calves (%)", Format.PERCENT),
                new Points("", Ink.FIRST, Along.Y, marks));
    }

    /** Few short names on the horizontal axis, bars side by side. */
    static Picture pairedBars() {
        List<String> names = List.of("Heifer", "Second calf", "Older");
        return Picture.of(
                "parity",
                "Difficult calvings by parity of the dam",
                "Heifers have the most difficult calvings in both seasons.",
                Axis.categories("Parity of the dam", names),
                Axis.fromZero("Difficult calvings (%)", Format.PERCENT),
                new Bars("This season", Ink.FIRST, Along.Y, 0.9, bars(names, 0.2, 0.09, 0.07)),
                new Bars("Last season", Ink.SECOND, Along.Y, 0.9, bars(names, 0.24, 0.11, 0.05)));
    }

    private static List<Mark> bars(List<String> names, double... shares) {
        return IntStream.range(0, shares.length)
                .mapToObj(i -> Mark.at(i, shares[i], names.get(i))
                        .between(OptionalDouble.of(shares[i] * 0.6), OptionalDouble.of(shares[i] * 1.5)))
                .toList();
    }

    /** Bars in rows, two a row, with links and counts. */
    static Picture levelBars() {
        List<String> names = List.of("Respiratory disease", "Scours", "Navel illness", "Joint ill");
        int[] now = {14, 31, 9, 0};
        int[] then = {18, 26, 12, 3};
        List<Mark> here = new ArrayList<>();
        List<Mark> there = new ArrayList<>();
        for (int i = 0; i < now.length; i++) {
            here.add(Mark.at(now[i], i, names.get(i) + ", this season")
                    .captioned("" + now[i])
                    .to("/calves?condition=" + i));
            there.add(Mark.at(then[i], i, names.get(i) + ", last season").captioned("" + then[i]));
        }
        return Picture.of(
                "conditions",
                "Calves ill, by condition",
                "Scours leads with 31 calves this season and 26 last; joint ill fell from 3 to none.",
                Axis.fromZero("Calves", Format.COUNT),
                Axis.categories("Condition", names),
                new Bars("This season", Ink.FIRST, Along.X, 0.9, here),
                new Bars("Last season", Ink.SECOND, Along.X, 0.9, there));
    }

    static List<Picture> all() {
        return List.of(
                seasons(),
                survival(),
                weeks(),
                forest(),
                funnel(),
                controlChart(),
                riskCurve(),
                pairedBars(),
                levelBars(),
                manyLongNames());
    }
}
