package wisp.indicator;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A number written as a reader would work it out: {@code 1/3}, {@code 1000*2/119}, {@code 1-(1/2)^exp(0.3)}. Functions:
 * {@code exp}, {@code log}, {@code sqrt}, {@code z} (the normal quantile of a level), {@code wilson_low(x, n)} and
 * {@code wilson_high(x, n)} (Wilson 1927, roots of (p - x/n)² = z² p (1 - p) / n), {@code garwood_low(x)} and
 * {@code garwood_high(x)} (Garwood 1936: half the chi-squared quantiles, in events).
 */
final class Expression {
    private static final double Z = NormalDistribution.of(0, 1).inverseCumulativeProbability(0.975);

    private final String text;
    private int at;

    private Expression(String text) {
        this.text = text.replace(" ", "");
    }

    static double value(String text) {
        Expression expression = new Expression(text);
        double value = expression.sum();
        if (expression.at != expression.text.length()) {
            throw new IllegalArgumentException(text + " is no number at character " + expression.at);
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (at < text.length() && "+-".indexOf(text.charAt(at)) >= 0) {
            value += text.charAt(at++) == '+' ? product() : -product();
        }
        return value;
    }

    private double product() {
        double value = power();
        while (at < text.length() && "*/".indexOf(text.charAt(at)) >= 0) {
            boolean times = text.charAt(at++) == '*';
            double next = power();
            value = times ? value * next : value / next;
        }
        return value;
    }

    private double power() {
        double base = atom();
        if (at < text.length() && text.charAt(at) == '^') {
            at++;
            return Math.pow(base, power());
        }
        return base;
    }

    private double atom() {
        if (text.charAt(at) == '-') {
            at++;
            return -atom();
        }
        if (text.charAt(at) == '(') {
            return arguments().get(0);
        }
        int from = at;
        if (Character.isLetter(text.charAt(at))) {
            while (at < text.length() && (Character.isLetter(text.charAt(at)) || text.charAt(at) == '_')) {
                at++;
            }
            return function(text.substring(from, at), arguments());
        }
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        return Double.parseDouble(text.substring(from, at));
    }

    private List<Double> arguments() {
        List<Double> values = new ArrayList<>();
        do {
            at++;
            values.add(sum());
        } while (text.charAt(at) == ',');
        at++;
        return values;
    }

    private static double function(String name, List<Double> a) {
        return switch (name) {
            case "exp" -> Math.exp(a.get(0));
            case "log" -> Math.log(a.get(0));
            case "sqrt" -> Math.sqrt(a.get(0));
            case "z" -> NormalDistribution.of(0, 1).inverseCumulativeProbability(0.5 + a.get(0) / 2);
            case "wilson_low" -> wilson(a.get(0), a.get(1), -1);
            case "wilson_high" -> wilson(a.get(0), a.get(1), 1);
            case "garwood_low" ->
                a.get(0) == 0 ? 0 : ChiSquaredDistribution.of(2 * a.get(0)).inverseCumulativeProbability(0.025) / 2;
            case "garwood_high" -> ChiSquaredDistribution.of(2 * a.get(0) + 2).inverseCumulativeProbability(0.975) / 2;
            default -> throw new IllegalArgumentException("There is no function " + name + ".");
        };
    }

    /** The smaller or larger root p of (n + z²) p² - (2 x + z²) p + x² / n = 0. */
    private static double wilson(double x, double n, int side) {
        double a = n + Z * Z;
        double b = 2 * x + Z * Z;
        return (b + side * Math.sqrt(b * b - 4 * a * x * x / n)) / (2 * a);
    }
}
