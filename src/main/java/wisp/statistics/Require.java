package wisp.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** The conditions that several estimators set on their input; each one throws {@link CannotEstimate} in a sentence. */
final class Require {

    /** Beyond this, or nearer 0 than its inverse, products and squares leave the range of numbers. */
    private static final double LARGEST = 1e100;

    /** Confidence so low is asked by nobody; quantiles so near 0 drown in rounding. */
    private static final double LEVEL_MIN = 1e-6;

    private Require() {}

    /** Cases among n, n at least 1. */
    static void share(String what, int cases, int n) {
        if (n < 0) {
            throw new CannotEstimate(what, "the number observed, " + n + ", is negative");
        }
        if (n == 0) {
            throw new CannotEstimate(what, "nobody was observed: n is 0");
        }
        if (cases < 0) {
            throw new CannotEstimate(what, "the number of cases, " + cases + ", is negative");
        }
        if (cases > n) {
            throw new CannotEstimate(what, "there are more cases, " + cases + ", than observed, " + n);
        }
    }

    /** Events over a time at risk above 0. */
    static void rate(String what, int events, double time) {
        count(what, events);
        positive(what, "the time at risk", time);
    }

    static void count(String what, int events) {
        if (events < 0) {
            throw new CannotEstimate(what, "the number of events, " + events + ", is negative");
        }
    }

    /** A confidence level strictly between 0 and 1. */
    static void level(String what, double level) {
        fraction(what, "the confidence level", level);
        if (level < LEVEL_MIN) {
            throw new CannotEstimate(what, "the confidence level, " + level + ", is too near 0 to reckon with");
        }
    }

    /** A number strictly between 0 and 1. */
    static void fraction(String what, String name, double fraction) {
        if (!(fraction > 0 && fraction < 1)) {
            throw new CannotEstimate(what, name + ", " + fraction + ", is not between 0 and 1");
        }
        size(what, name, fraction);
    }

    /** A finite number above 0. */
    static void positive(String what, String name, double number) {
        if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
            throw new CannotEstimate(what, name + ", " + number + ", is not a finite number above 0");
        }
        size(what, name, number);
    }

    /** A finite number. */
    static void finite(String what, String name, double number) {
        if (!Double.isFinite(number)) {
            throw new CannotEstimate(what, name + ", " + number + ", is not a finite number");
        }
        size(what, name, number);
    }

    /** A number whose squares and products can be reckoned with: 0, or between 1e-100 and 1e100 in size. */
    static void size(String what, String name, double number) {
        double size = Math.abs(number);
        if (size > LARGEST || size > 0 && size < 1 / LARGEST) {
            throw new CannotEstimate(
                    what, name + ", " + number + ", is too " + (size > 1 ? "large" : "near 0") + " to reckon with");
        }
    }

    /** Two arrays of one length, at least 1. */
    static void sameLength(String what, int first, int second) {
        if (first != second) {
            throw new CannotEstimate(
                    what, "there are " + first + " numbers in one row and " + second + " in the other");
        }
        if (first == 0) {
            throw new CannotEstimate(what, "there are no groups");
        }
    }

    /** The two-sided standard normal quantile of a confidence level, 1.96 for 0.95. */
    static double normalQuantile(String what, double level) {
        level(what, level);
        return NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - level) / 2);
    }
}
