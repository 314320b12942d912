package wisp.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import wisp.chart.Lettering.Anchor;
import wisp.chart.Lettering.Role;

/**
 * The layout of a picture whose categories run down the side, a row each.
 *
 * <p>On wide paper the names stand left of the rows, on narrow paper above them. Captions stand in a column at the
 * right, or on narrow paper with one mark a row, on the line of the name.
 */
final class LevelSheet {

    private static final double FINGER = 24;
    private final Picture picture;
    private final Sheet sheet;
    private final Dodge dodge;
    private final List<String> names;
    private final boolean narrow;
    private final double captionRoom;
    private final List<List<String>> nameLines = new ArrayList<>();
    private final double left;
    private final double right;

    LevelSheet(Picture picture, double width) {
        this.picture = picture;
        this.sheet = new Sheet(width);
        this.dodge = Dodge.of(picture);
        this.names = ((Scale.Categories) picture.y().scale()).names();
        this.narrow = width < Layout.NARROW;
        this.captionRoom = captionRoom();
        double longest = names.stream().mapToDouble(Lettering::width).max().orElse(0);
        double column = Math.min(longest + 2, width * 0.36);
        double room = narrow ? width - (captionsOnNameLine() ? captionRoom : 0) : column;
        names.forEach(name -> nameLines.add(Lettering.wrap(name, room)));
        double widest = nameLines.stream()
                .flatMap(List::stream)
                .mapToDouble(Lettering::width)
                .max()
                .orElse(0);
        this.left = narrow ? 14 : Math.max(20, widest + 14);
        this.right = width - 18 - (captionsOnNameLine() ? 0 : captionRoom);
    }

    private double captionRoom() {
        double widest = picture.layers().stream()
                .flatMap(layer -> layer.marks().stream())
                .mapToDouble(mark -> mark.caption().isEmpty() ? 0 : Lettering.width(mark.caption()) + 8)
                .max()
                .orElse(0);
        return widest;
    }

    private boolean captionsOnNameLine() {
        return narrow && dodge.abreast() == 1;
    }

    Layout layout(OptionalDouble height) {
        int most = Math.max(3, (int) ((right - left) / 56));
        Domain across = Domain.of(picture, Along.X, most);
        List<Tick> ticks = Ticks.of(picture.x(), across, most);
        Ruler x = new Ruler(across, left, right);
        sheet.writeKey(picture);
        sheet.write(0, sheet.width, Anchor.START, Role.AXIS, picture.y().label());
        sheet.writeUprightLimits(picture, x);
        sheet.skip(4);
        double top = sheet.reached();
        Sheet trial = new Sheet(sheet.width);
        trial.writeHorizontalAxis(picture.x(), ticks, x);
        trial.writeNumbersAtRisk(picture, x);
        int rows = Math.max(1, names.size());
        double tall = rowsHeight(rows, top + trial.reached() + 2, height);
        Box plot = new Box(left, top, right, top + tall);
        Domain down = Domain.of(picture, Along.Y, rows);
        Ruler y = new Ruler(down, top + nameHeight() / 2, plot.bottom() + nameHeight() / 2);
        writeNames(y, tall / rows);
        sheet.skip(tall);
        sheet.writeHorizontalAxis(picture.x(), ticks, x);
        sheet.writeNumbersAtRisk(picture, x);
        Layout layout = new Layout(
                picture,
                sheet.width,
                sheet.reached() + 2,
                plot,
                x,
                y,
                ticks,
                Ticks.of(picture.y(), down, rows),
                dodge,
                tall / rows - nameHeight(),
                sheet.words,
                sheet.key,
                List.of());
        writeCaptions(layout, tall / rows);
        Captions.writeLevelLimits(layout);
        return layout;
    }

    private double rowsHeight(int rows, double around, OptionalDouble height) {
        double natural = rows * (nameHeight() + rowHeight());
        double tall = height.isPresent() ? height.getAsDouble() - around : natural;
        if (tall < rows * (nameHeight() + 12)) {
            throw new IllegalArgumentException("The picture '" + picture.id() + "' with its " + rows
                    + " rows does not fit a height of " + Math.round(height.getAsDouble())
                    + " pixels: give it at least " + Math.round(natural + around) + ".");
        }
        return tall;
    }

    private int mostLines() {
        return nameLines.stream().mapToInt(List::size).max().orElse(1);
    }

    private double nameHeight() {
        return narrow ? mostLines() * Lettering.LINE : 0;
    }

    private double rowHeight() {
        double marks = onePointOpens() ? Math.max(FINGER + 4, 12 * dodge.abreast() + 8) : FINGER / dodge.step();
        return Math.max(marks, narrow ? FINGER : mostLines() * 16 + 6);
    }

    /** Where of several dots abreast only one opens a page, the others need no finger's room. */
    private boolean onePointOpens() {
        long linked = dodge.beside().stream()
                .filter(layer ->
                        layer.marks().stream().anyMatch(mark -> mark.link().isPresent()))
                .count();
        boolean bare = dodge.beside().stream()
                .allMatch(layer -> layer instanceof Points
                        && layer.marks().stream()
                                .allMatch(mark -> mark.caption().isEmpty()));
        return dodge.abreast() == 1 || (linked == 1 && bare);
    }

    private void writeNames(Ruler y, double pitch) {
        for (int i = 0; i < nameLines.size(); i++) {
            List<String> lines = nameLines.get(i);
            double first = narrow ? nameBase(y, i, pitch) : y.at(i) + 4.5 - (lines.size() - 1) * 8;
            for (int k = 0; k < lines.size(); k++) {
                Anchor anchor = narrow ? Anchor.START : Anchor.END;
                double x = narrow ? 0 : left - 12;
                sheet.words.add(Lettering.of(x, first + k * 16, anchor, Role.TICK, lines.get(k)));
            }
        }
    }

    /** The base line of a name above its row; nearer to its own row than to the row before. */
    private double nameBase(Ruler y, int row, double pitch) {
        return y.at(row) - nameHeight() / 2 - pitch / 2 + Lettering.SIZE + 6;
    }

    private void writeCaptions(Layout layout, double pitch) {
        for (Layer layer : picture.layers()) {
            for (Mark mark : layer.marks()) {
                if (!mark.caption().isEmpty()) {
                    double base = captionsOnNameLine()
                            ? nameBase(layout.y(), (int) Math.round(mark.y()), pitch)
                            : layout.markY(layer, mark) + 4.5;
                    sheet.words.add(Lettering.of(sheet.width - 1, base, Anchor.END, Role.CAPTION, mark.caption()));
                }
            }
        }
    }
}
