package wisp.chart;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * The smallest and the largest of some values along one axis; the empty one runs from infinity to minus infinity.
 *
 * @param low smallest
 * @param high largest
 */
record Extent(double low, double high) {

    static Extent of(DoubleStream values) {
        double[] all = values.toArray();
        return new Extent(
                DoubleStream.of(all).min().orElse(Double.POSITIVE_INFINITY),
                DoubleStream.of(all).max().orElse(Double.NEGATIVE_INFINITY));
    }

    static Extent of(Picture picture, Layer.Reader<DoubleStream> reader) {
        return of(values(picture, reader));
    }

    /** Of the values above zero only, as a log axis shows no others. */
    static Extent aboveZero(Picture picture, Layer.Reader<DoubleStream> reader) {
        return of(values(picture, reader).filter(value -> value > 0));
    }

    private static DoubleStream values(Picture picture, Layer.Reader<DoubleStream> reader) {
        return picture.layers().stream().flatMapToDouble(layer -> layer.read(reader));
    }

    boolean isEmpty() {
        return low > high;
    }

    Extent and(Extent other) {
        return new Extent(Math.min(low, other.low), Math.max(high, other.high));
    }

    Extent including(OptionalDouble value) {
        return value.isEmpty()
                ? this
                : new Extent(Math.min(low, value.getAsDouble()), Math.max(high, value.getAsDouble()));
    }

    Extent orElse(double from, double to) {
        return isEmpty() ? new Extent(from, to) : this;
    }

    Extent widened(double room) {
        return low == high ? new Extent(low - room, high + room) : this;
    }

    /** What must lie inside the picture: dots, bars, curves, strokes and straight limits. */
    record Firm(Along axis) implements Layer.Reader<DoubleStream> {

        private DoubleStream places(List<Mark> marks) {
            return marks.stream().mapToDouble(axis == Along.X ? Mark::x : Mark::y);
        }

        private DoubleStream knots(List<Knot> knots) {
            return knots.stream().mapToDouble(axis == Along.X ? Knot::x : Knot::y);
        }

        @Override
        public DoubleStream points(Points layer) {
            return places(layer.marks());
        }

        @Override
        public DoubleStream steps(Steps layer) {
            return knots(layer.knots());
        }

        @Override
        public DoubleStream curve(Curve layer) {
            return knots(layer.knots());
        }

        @Override
        public DoubleStream bars(Bars layer) {
            if (layer.along() == axis) {
                return DoubleStream.concat(places(layer.marks()), DoubleStream.of(0));
            }
            double half = layer.width() / 2;
            return places(layer.marks()).flatMap(place -> DoubleStream.of(place - half, place + half));
        }

        @Override
        public DoubleStream limit(Limit layer) {
            return layer.along() == axis ? DoubleStream.of(layer.value()) : DoubleStream.empty();
        }

        @Override
        public DoubleStream limitCurve(LimitCurve layer) {
            return DoubleStream.empty();
        }

        @Override
        public DoubleStream rug(Rug layer) {
            return layer.along() == axis
                    ? layer.places().stream().mapToDouble(Double::doubleValue)
                    : DoubleStream.empty();
        }

        @Override
        public DoubleStream numbersAtRisk(NumbersAtRisk layer) {
            return axis == Along.X ? layer.counts().stream().mapToDouble(NumbersAtRisk.Count::x) : DoubleStream.empty();
        }
    }

    /** What may be cut at a fixed end: whiskers, bands and limit curves. */
    record Soft(Along axis) implements Layer.Reader<DoubleStream> {

        private DoubleStream whiskers(List<Mark> marks, Along along) {
            return along != axis
                    ? DoubleStream.empty()
                    : marks.stream()
                            .filter(Mark::hasInterval)
                            .flatMapToDouble(mark -> DoubleStream.of(
                                    mark.low().getAsDouble(), mark.high().getAsDouble()));
        }

        private DoubleStream bands(List<Knot> knots) {
            return axis == Along.X
                    ? DoubleStream.empty()
                    : knots.stream()
                            .filter(Knot::hasBand)
                            .flatMapToDouble(knot -> DoubleStream.of(
                                    knot.low().getAsDouble(), knot.high().getAsDouble()));
        }

        @Override
        public DoubleStream points(Points layer) {
            return whiskers(layer.marks(), layer.along());
        }

        @Override
        public DoubleStream steps(Steps layer) {
            return bands(layer.knots());
        }

        @Override
        public DoubleStream curve(Curve layer) {
            return bands(layer.knots());
        }

        @Override
        public DoubleStream bars(Bars layer) {
            return whiskers(layer.marks(), layer.along());
        }

        @Override
        public DoubleStream limit(Limit layer) {
            return DoubleStream.empty();
        }

        @Override
        public DoubleStream limitCurve(LimitCurve layer) {
            return layer.knots().stream().mapToDouble(axis == Along.X ? Knot::x : Knot::y);
        }

        @Override
        public DoubleStream rug(Rug layer) {
            return DoubleStream.empty();
        }

        @Override
        public DoubleStream numbersAtRisk(NumbersAtRisk layer) {
            return DoubleStream.empty();
        }
    }
}
