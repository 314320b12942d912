package wisp.chart;

import java.util.List;

/** One kind of thing drawn in a picture. */
public sealed interface Layer permits Points, Steps, Curve, Bars, Limit, LimitCurve, Rug, NumbersAtRisk {

    /** What the layer stands for; it is written in the key unless empty. */
    String name();

    /** The part that the layer plays. */
    Ink ink();

    /** The marks that can carry a link; empty for lines and limits. */
    default List<Mark> marks() {
        return List.of();
    }

    /** Answers with what the reader says of this kind of layer. */
    <R> R read(Reader<R> reader);

    /** One answer for every kind of layer, so that no painter can forget one. */
    interface Reader<R> {
        /** Says something of dots with whiskers. */
        R points(Points layer);

        /** Says something of a step curve. */
        R steps(Steps layer);

        /** Says something of a curve. */
        R curve(Curve layer);

        /** Says something of bars. */
        R bars(Bars layer);

        /** Says something of a straight reference line. */
        R limit(Limit layer);

        /** Says something of a curved limit. */
        R limitCurve(LimitCurve layer);

        /** Says something of a rug. */
        R rug(Rug layer);

        /** Says something of a row of numbers at risk. */
        R numbersAtRisk(NumbersAtRisk layer);
    }

    /** Refuses knots that do not go upwards in x. */
    static List<Knot> upwards(List<Knot> knots, String name) {
        for (int i = 1; i < knots.size(); i++) {
            if (knots.get(i).x() < knots.get(i - 1).x()) {
                throw new IllegalArgumentException("The curve '" + name + "' goes back from x = "
                        + knots.get(i - 1).x() + " to " + knots.get(i).x() + ": sort its knots by x.");
            }
        }
        return List.copyOf(knots);
    }
}
