package wisp.site;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wisp.chart.Along;
import wisp.chart.Axis;
import wisp.chart.Format;
import wisp.chart.Ink;
import wisp.chart.Knot;
import wisp.chart.Layer;
import wisp.chart.Limit;
import wisp.chart.LimitCurve;
import wisp.chart.Mark;
import wisp.chart.Picture;
import wisp.chart.Points;
import wisp.question.DirtyShare;
import wisp.question.PenShare;
import wisp.question.PensAnswer;
import wisp.question.WeekShare;
import wisp.statistics.FunnelLimits;

/** Draws the pens in their funnel, the weeks on their chart, and shares by class. */
final class PensPictures {
    private static final int STEPS = 60;

    private PensPictures() {}

    /** Pens by size and share, with the limits between which chance alone would keep them. */
    static Picture funnel(PensAnswer answer, Links links) {
        List<Mark> inside = new ArrayList<>();
        List<Mark> outside = new ArrayList<>();
        for (PenShare pen : answer.pens()) {
            DirtyShare share = pen.share();
            Mark bare = Mark.at(share.n(), share.share(), pen.pen())
                    .saying(share.dirty() + " of " + share.n() + " dirty, " + PenRow.percent(share.share()));
            Count dirty = new PensLinks(links).dirty(share, "", pen.pen());
            Mark mark = dirty.href().isEmpty() ? bare : bare.to(dirty.href());
            boolean within = pen.standing() == PenShare.Standing.WITHIN;
            (within ? inside : outside).add(mark.captioned(name(pen, answer.pens())));
        }
        List<Layer> layers = new ArrayList<>();
        DirtyShare all = answer.overall();
        if (all.dirty() > 0 && all.dirty() < all.n() && answer.pens().size() > 1) {
            limits(layers, answer, 0.95, Ink.MUTED);
            limits(layers, answer, 0.998, Ink.THIRD);
            layers.add(new Limit("all pens", Ink.FIRST, Along.Y, all.share()));
        }
        layers.add(Points.named("chance could explain it", Ink.FIRST, Along.Y, inside));
        if (!outside.isEmpty()) {
            layers.add(Points.named("more than chance", Ink.ALARM, Along.Y, outside));
        }
        return new Picture(
                "funnel",
                "Dirty calves by pen, with the room that chance takes",
                words(answer),
                Axis.fromZero("Calves scored in the pen", Format.COUNT),
                Axis.fromZero("Dirty calves (%)", Format.PERCENT),
                layers);
    }

    /** The names of all pens at a pen's place, at the first of them; nothing at the others, whose dots it hides. */
    private static String name(PenShare pen, List<PenShare> pens) {
        List<PenShare> here = at(pen, pens);
        return here.get(0) == pen ? here.stream().map(PenShare::pen).collect(Collectors.joining(", ")) : "";
    }

    private static List<PenShare> at(PenShare pen, List<PenShare> pens) {
        return pens.stream()
                .filter(other -> other.share().n() == pen.share().n()
                        && other.share().dirty() == pen.share().dirty())
                .toList();
    }

    /** A mark opens its dirty calves; one without any has none to open. */
    private static Mark opening(Mark mark, DirtyShare share, PensLinks links) {
        Count dirty = links.count(share.dirtyCalves());
        return dirty.href().isEmpty() ? mark : mark.to(dirty.href());
    }

    private static void limits(List<Layer> layers, PensAnswer answer, double probability, Ink ink) {
        int largest =
                answer.pens().stream().mapToInt(pen -> pen.share().n()).max().orElse(1);
        TreeSet<Integer> sizes = new TreeSet<>();
        answer.pens().forEach(pen -> sizes.add(pen.share().n()));
        for (int i = 0; i <= STEPS; i++) {
            sizes.add(Math.max(1, (int) Math.round(largest * 1.05 * Math.pow((double) i / STEPS, 2))));
        }
        List<Knot> low = new ArrayList<>();
        List<Knot> high = new ArrayList<>();
        for (int n : sizes) {
            FunnelLimits at = FunnelLimits.of(
                    n, answer.overall().share(), probability, FunnelLimits.Method.EXACT_BINOMIAL_INTERPOLATED);
            low.add(Knot.at(n, at.low()));
            high.add(Knot.at(n, at.high()));
        }
        String name = probability == 0.95 ? "95% limits" : "99.8% limits";
        layers.add(new LimitCurve(name, ink, false, high));
        layers.add(new LimitCurve("", ink, false, low));
    }

    private static String words(PensAnswer answer) {
        StringBuilder words = new StringBuilder("A funnel: each dot a pen, by how many calves were scored in"
                + " it, its name beside it or at the end of a thin line or, where names have no room, a number"
                + " explained under the picture. ");
        for (PenShare pen : answer.pens()) {
            words.append(pen.pen())
                    .append(": ")
                    .append(pen.share().dirty())
                    .append(" of ")
                    .append(pen.share().n())
                    .append(
                            switch (pen.standing()) {
                                case DIRTIER -> ", above its limits. ";
                                case CLEANER -> ", below its limits. ";
                                case WITHIN -> ". ";
                            });
        }
        for (PenShare pen : answer.pens()) {
            List<PenShare> here = at(pen, answer.pens());
            if (here.size() > 1 && here.get(0) == pen) {
                words.append(here.stream().map(PenShare::pen).collect(Collectors.joining(", ")))
                        .append(" share one dot. ");
            }
        }
        return words.toString().strip();
    }

    /** Shares by week of birth, with limits of three standard errors. */
    static Picture weeks(PensAnswer answer, PensLinks links) {
        List<Mark> inside = new ArrayList<>();
        List<Mark> outside = new ArrayList<>();
        List<Knot> high = new ArrayList<>();
        List<Knot> low = new ArrayList<>();
        for (WeekShare week : answer.weeks()) {
            DirtyShare share = week.share();
            double middle = Axis.at(week.monday()) + 3;
            Mark bare = Mark.at(middle, share.share(), "Week of " + Shown.date(week.monday()))
                    .saying(share.dirty() + " of " + share.n() + " dirty");
            Mark mark = opening(bare, share, links);
            (week.outside() ? outside : inside).add(mark);
            if (week.limits() != null) {
                high.add(Knot.at(Axis.at(week.monday()), week.limits().high()));
                low.add(Knot.at(Axis.at(week.monday()), week.limits().low()));
            }
        }
        List<Layer> layers = new ArrayList<>();
        if (!high.isEmpty()) {
            double end = Axis.at(answer.weeks().get(answer.weeks().size() - 1).monday()) + 7;
            high.add(Knot.at(end, high.get(high.size() - 1).y()));
            low.add(Knot.at(end, low.get(low.size() - 1).y()));
            layers.add(new LimitCurve("limits, 3 standard errors", Ink.MUTED, true, high));
            layers.add(new LimitCurve("", Ink.MUTED, true, low));
            layers.add(
                    new Limit("all weeks", Ink.FIRST, Along.Y, answer.overall().share()));
        }
        layers.add(new Points("week", Ink.FIRST, Along.Y, inside));
        if (!outside.isEmpty()) {
            layers.add(new Points("week outside its limits", Ink.ALARM, Along.Y, outside));
        }
        return new Picture(
                "weeks",
                "Dirty calves by week of birth",
                outside.isEmpty()
                        ? "A chart of " + (inside.size() == 1 ? "one week" : inside.size() + " weeks")
                                + "; none lies outside its limits."
                        : "A chart of weeks; " + outside.size() + " of "
                                + answer.weeks().size()
                                + (outside.size() == 1 ? " lies outside its limits." : " lie outside their limits."),
                Axis.dates("Week of birth"),
                Axis.fromZero("Dirty calves (%)", Format.PERCENT),
                layers);
    }

    /** Shares by days since the pen was bedded. */
    static Picture bedding(List<DirtyShare> classes, PensLinks links) {
        return classes(
                "bedding", "Dirty calves by days since the pen was bedded", "Days since bedding", classes, links);
    }

    /** Shares by class as dots with whiskers, classes without a calf left out. */
    private static Picture classes(String id, String title, String axis, List<DirtyShare> classes, PensLinks links) {
        List<DirtyShare> held = classes.stream().filter(one -> one.n() > 0).toList();
        List<Mark> marks = new ArrayList<>();
        StringBuilder words = new StringBuilder("Dots with whiskers. ");
        for (int i = 0; i < held.size(); i++) {
            DirtyShare one = held.get(i);
            String counts = one.dirty() + " of " + one.n();
            Mark mark = Mark.at(one.share(), i, one.name())
                    .between(one.interval().low(), one.interval().high())
                    .saying(counts + ", " + PenRow.percent(one.share()) + " (" + PenRow.span(one.interval()) + ")")
                    .captioned(counts);
            marks.add(opening(mark, one, links));
            words.append(one.name()).append(": ").append(counts).append(" dirty. ");
        }
        List<String> names = held.isEmpty()
                ? List.of("none")
                : held.stream().map(DirtyShare::name).toList();
        return Picture.of(
                id,
                title,
                words.toString().strip(),
                Axis.fromZero("Dirty calves (%), with 95 % interval", Format.PERCENT),
                Axis.categories(axis, names),
                new Points("", Ink.FIRST, Along.X, marks));
    }
}
