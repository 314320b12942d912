package wisp.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A picture with its axes exchanged, so that long category names get a line each; not every layer can be turned. */
final class Turned implements Layer.Reader<Optional<Layer>> {

    private Turned() {}

    /** The turned picture; empty where a layer, such as a curve, only reads from left to right. */
    static Optional<Picture> of(Picture picture) {
        List<Layer> layers = new ArrayList<>();
        for (Layer layer : picture.layers()) {
            Optional<Layer> turned = layer.read(new Turned());
            if (turned.isEmpty()) {
                return Optional.empty();
            }
            layers.add(turned.get());
        }
        return Optional.of(
                new Picture(picture.id(), picture.title(), picture.alternative(), picture.y(), picture.x(), layers));
    }

    private static Along other(Along along) {
        return along == Along.X ? Along.Y : Along.X;
    }

    private static List<Mark> turn(List<Mark> marks) {
        return marks.stream()
                .map(m -> new Mark(m.y(), m.x(), m.low(), m.high(), m.label(), m.hover(), m.caption(), m.link()))
                .toList();
    }

    @Override
    public Optional<Layer> points(Points p) {
        return Optional.of(new Points(p.name(), p.ink(), other(p.along()), turn(p.marks())));
    }

    @Override
    public Optional<Layer> bars(Bars b) {
        return Optional.of(new Bars(b.name(), b.ink(), other(b.along()), b.width(), turn(b.marks())));
    }

    @Override
    public Optional<Layer> limit(Limit l) {
        return Optional.of(new Limit(l.name(), l.ink(), other(l.along()), l.value()));
    }

    @Override
    public Optional<Layer> rug(Rug r) {
        return Optional.of(new Rug(r.name(), r.ink(), other(r.along()), r.places()));
    }

    @Override
    public Optional<Layer> steps(Steps layer) {
        return Optional.empty();
    }

    @Override
    public Optional<Layer> curve(Curve layer) {
        return Optional.empty();
    }

    @Override
    public Optional<Layer> limitCurve(LimitCurve layer) {
        return Optional.empty();
    }

    @Override
    public Optional<Layer> numbersAtRisk(NumbersAtRisk layer) {
        return Optional.empty();
    }
}
