package wisp.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiPredicate;
import wisp.chart.Lettering.Anchor;
import wisp.chart.Lettering.Role;

/** The layout of a picture whose vertical axis is a scale of numbers. */
final class UprightSheet {

    private static final int MOST_NAME_LINES = 3;
    private final Picture picture;
    private final Sheet sheet;
    private final Domain across;
    private final Domain up;
    private final List<Tick> upTicks;
    private final List<Tick> acrossTicks;
    private final double left;
    private final double right;
    private final List<String> names;
    private List<Mark> crowded = List.of();

    /**
     * A sheet with words under its axis.
     *
     * @param names what the numbers beside dots stand for; empty where dots carry their names, or have none
     */
    private UprightSheet(Picture picture, double width, List<String> names) {
        this.picture = picture;
        this.names = names;
        this.sheet = new Sheet(width);
        int mostUp = width < Layout.NARROW ? 6 : 7;
        this.up = Domain.of(picture, Along.Y, mostUp);
        this.upTicks = Ticks.of(picture.y(), up, mostUp);
        int mostAcross = Math.max(3, (int) ((width - 60) / (picture.x().scale() instanceof Scale.Dates ? 62 : 52)));
        this.across = Domain.of(picture, Along.X, mostAcross);
        boolean daysUnknown = picture.isEmpty() && picture.x().scale() == Scale.Dates.FREE;
        this.acrossTicks = daysUnknown ? List.of() : Ticks.of(picture.x(), across, mostAcross);
        this.left = left(upTicks);
        this.right = width - 14 - (picture.x().isCategories() ? 0 : overhang(acrossTicks));
    }

    private static double left(List<Tick> ticks) {
        return Math.max(
                18,
                8
                        + ticks.stream()
                                .mapToDouble(tick -> Lettering.width(tick.label()))
                                .max()
                                .orElse(0));
    }

    private static double overhang(List<Tick> ticks) {
        return ticks.isEmpty()
                ? 0
                : Math.max(0, Lettering.width(ticks.get(ticks.size() - 1).label()) / 2 - 12);
    }

    /** Whether the category names have room under the axis without running into each other. */
    static boolean namesFit(Picture picture, double width) {
        List<String> names = ((Scale.Categories) picture.x().scale()).names();
        return names.stream().allMatch(name -> fits(name, (width - 60) / Math.max(1, names.size())));
    }

    private static boolean fits(String name, double slot) {
        List<String> lines = Lettering.wrap(name, slot - 6);
        return lines.size() <= MOST_NAME_LINES && lines.stream().allMatch(line -> Lettering.width(line) <= slot - 6);
    }

    /** The layout with names around named dots, and numbers for those only whose names have no room. */
    static Layout layout(Picture picture, double width, OptionalDouble height) {
        Set<Mark> numbered = Collections.newSetFromMap(new IdentityHashMap<>());
        while (true) {
            Numbered some = Numbered.of(picture, numbered);
            UprightSheet sheet = new UprightSheet(some.picture(), width, some.names());
            Layout layout = sheet.layout(height);
            // where even a number has no room, the names of dots that do not stand out make some
            boolean more = number(numbered, picture, (layer, mark) -> sheet.crowded.contains(mark))
                    || !sheet.crowded.isEmpty() && number(numbered, picture, (layer, mark) -> layer.ink() != Ink.ALARM);
            if (!more) {
                return layout;
            }
        }
    }

    /** Gives numbers to the named dots that fit, and says whether any of them had none. */
    private static boolean number(Set<Mark> numbered, Picture picture, BiPredicate<Layer, Mark> fits) {
        boolean more = false;
        for (Layer layer : picture.layers()) {
            if (Numbered.named(layer)) {
                for (Mark mark : layer.marks()) {
                    more |= !mark.caption().isEmpty() && fits.test(layer, mark) && numbered.add(mark);
                }
            }
        }
        return more;
    }

    private Layout layout(OptionalDouble height) {
        sheet.writeKey(picture);
        sheet.write(0, sheet.width, Anchor.START, Role.AXIS, picture.y().label());
        Ruler x = new Ruler(across, left, right);
        sheet.writeUprightLimits(picture, x);
        sheet.skip(10);
        double top = sheet.reached();
        double below = under(x).reached();
        double plotHeight = height.isPresent() ? height.getAsDouble() - top - below - 2 : sheet.width < 520 ? 200 : 300;
        if (plotHeight < 40) {
            throw new IllegalArgumentException("The picture '" + picture.id() + "' does not fit a height of "
                    + Math.round(height.getAsDouble()) + " pixels: give it at least " + Math.round(top + below + 102)
                    + ".");
        }
        Box plot = new Box(left, top, right, top + plotHeight);
        Ruler y = new Ruler(up, plot.bottom(), plot.top());
        sheet.skip(plotHeight);
        setUnder(sheet, x);
        Layout bare = new Layout(
                picture,
                sheet.width,
                sheet.reached() + 2,
                plot,
                x,
                y,
                acrossTicks,
                upTicks,
                Dodge.of(picture),
                Double.POSITIVE_INFINITY,
                sheet.words,
                sheet.key,
                new ArrayList<>());
        upTicks.forEach(tick ->
                sheet.words.add(Lettering.of(left - 7, y.at(tick.value()) + 4.5, Anchor.END, Role.TICK, tick.label())));
        crowded = Captions.write(bare);
        return bare;
    }

    private Sheet under(Ruler x) {
        Sheet trial = new Sheet(sheet.width);
        setUnder(trial, x);
        return trial;
    }

    private void setUnder(Sheet target, Ruler x) {
        if (picture.x().isCategories()) {
            writeNames(target, x);
            target.writeAxisName(picture.x(), x);
        } else {
            target.writeHorizontalAxis(picture.x(), acrossTicks, x);
        }
        target.writeNumbersAtRisk(picture, x);
        target.writeNames(names);
    }

    private void writeNames(Sheet target, Ruler x) {
        double slot = (right - left) / Math.max(1, acrossTicks.size());
        boolean fit = acrossTicks.stream().allMatch(tick -> fits(tick.label(), slot));
        target.skip(6);
        double top = target.reached();
        double deepest = Lettering.LINE;
        for (Tick tick : acrossTicks) {
            double at = x.at(tick.value());
            if (!fit) {
                target.words.add(new Lettering(at + 4.5, top + 2, Anchor.END, Role.TICK, tick.label(), true));
                deepest = Math.max(deepest, Lettering.width(tick.label()) + 6);
                continue;
            }
            List<String> lines = Lettering.wrap(tick.label(), slot - 6);
            for (int i = 0; i < lines.size(); i++) {
                double base = top + Lettering.SIZE + i * (Lettering.LINE - 1);
                target.words.add(Lettering.of(at, base, Anchor.MIDDLE, Role.TICK, lines.get(i)));
            }
            deepest = Math.max(deepest, lines.size() * (Lettering.LINE - 1));
        }
        target.skip(deepest + 2);
    }
}
