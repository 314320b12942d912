package wisp.chart;

import java.util.List;
import java.util.Objects;

/**
 * A row of counts under a curve: how many were still followed at each place of the x axis.
 *
 * @param name whom the row counts, such as "Dipped within 15 min"
 * @param ink the ink of the curve that it belongs to
 * @param counts the counts, upwards in x
 */
public record NumbersAtRisk(String name, Ink ink, List<Count> counts) implements Layer {

    public NumbersAtRisk {
        Words.require(name, "a row of numbers at risk");
        Objects.requireNonNull(ink, "ink");
        counts = List.copyOf(counts);
    }

    @Override
    public <R> R read(Reader<R> reader) {
        return reader.numbersAtRisk(this);
    }

    /**
     * How many were at risk at one place.
     *
     * @param x place along the x axis
     * @param atRisk how many
     */
    public record Count(double x, long atRisk) {
        public Count {
            Words.finite(x, "x of a number at risk");
            if (atRisk < 0) {
                throw new IllegalArgumentException(
                        "There cannot be " + atRisk + " at risk at x = " + x + ": give a count from zero up.");
            }
        }
    }
}
