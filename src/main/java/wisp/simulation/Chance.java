package wisp.simulation;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/**
 * Random draws that are the same on every platform: 64-bit words of SplitMix64 (Steele, Lea and Flood 2014, "Fast
 * splittable pseudorandom number generators"), everything else worked out here with {@link StrictMath}.
 */
final class Chance {
    private final SplittableRandom words;

    Chance(long seed) {
        this.words = new SplittableRandom(seed);
    }

    long word() {
        return words.nextLong();
    }

    /** Uniform on [0, 1), a multiple of 2⁻⁵³. */
    double uniform() {
        return (words.nextLong() >>> 11) * 0x1.0p-53;
    }

    double uniform(double from, double to) {
        return from + (to - from) * uniform();
    }

    /** A whole number from {@code from} to {@code to}, both included. */
    int whole(int from, int to) {
        return from + (int) ((to - from + 1) * uniform());
    }

    boolean happens(double probability) {
        return uniform() < probability;
    }

    /** Exponential with mean 1. */
    double exponential() {
        return -StrictMath.log(1 - uniform());
    }

    /** Standard normal, by the polar method (Marsaglia and Bray 1964). */
    double normal() {
        while (true) {
            double x = 2 * uniform() - 1;
            double y = 2 * uniform() - 1;
            double square = x * x + y * y;
            if (square > 0 && square < 1) {
                return x * Math.sqrt(-2 * StrictMath.log(square) / square);
            }
        }
    }

    double lognormal(double median, double sigma) {
        return median * StrictMath.exp(sigma * normal());
    }

    /** Index drawn with these shares, which need not add up to one. */
    int index(List<Double> shares) {
        double left = uniform() * sum(shares);
        for (int i = 0; i < shares.size() - 1; i++) {
            left -= shares.get(i);
            if (left < 0) {
                return i;
            }
        }
        return shares.size() - 1;
    }

    /** One of these, drawn with the shares that they name. */
    <T> T one(List<T> of, ToDoubleFunction<T> share) {
        double total = 0;
        for (T each : of) {
            total += share.applyAsDouble(each);
        }
        double left = uniform() * total;
        for (T each : of) {
            left -= share.applyAsDouble(each);
            if (left < 0) {
                return each;
            }
        }
        return of.get(of.size() - 1);
    }

    private static double sum(List<Double> shares) {
        double total = 0;
        for (double share : shares) {
            total += share;
        }
        return total;
    }
}
