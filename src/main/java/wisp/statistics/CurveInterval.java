package wisp.statistics;

/**
 * The pointwise interval of a survival probability S with standard error s, on one of five scales.
 *
 * <p>Each is S carried to the scale, plus and minus z standard errors by the delta method, and carried back (Borgan and
 * Liestol 1990, Scand J Statist 17:35; Kalbfleisch and Prentice 2002, section 1.4.1). Same formulas as R's
 * {@code survfit}. None exists at S = 0 or S = 1, where the standard error is 0: there every curve uses the Wilson
 * score interval instead, R gives S itself (plain, log) or no interval.
 */
public enum CurveInterval {
    /** log(-log S): keeps inside 0 and 1, the recommended one for small samples. */
    LOG_LOG("log(-log)") {
        @Override
        double[] limits(double s, double se, double z) {
            double centre = Math.log(-Math.log(s));
            double half = z * se / (s * Math.abs(Math.log(s)));
            return new double[] {Math.exp(-Math.exp(centre + half)), Math.exp(-Math.exp(centre - half))};
        }
    },
    /** S itself, cut at 0 and 1. */
    PLAIN("plain") {
        @Override
        double[] limits(double s, double se, double z) {
            return new double[] {Math.max(0, s - z * se), Math.min(1, s + z * se)};
        }
    },
    /** log S, cut at 1. */
    LOG("log") {
        @Override
        double[] limits(double s, double se, double z) {
            double factor = Math.exp(z * se / s);
            return new double[] {s / factor, Math.min(1, s * factor)};
        }
    },
    /** log(S / (1 - S)). */
    LOGIT("logit") {
        @Override
        double[] limits(double s, double se, double z) {
            double factor = Math.exp(z * se / (s * (1 - s)));
            double odds = s / (1 - s);
            return new double[] {odds / (odds + factor), odds * factor / (1 + odds * factor)};
        }
    },
    /** arcsin of the square root of S. */
    ARCSINE("arcsine") {
        @Override
        double[] limits(double s, double se, double z) {
            double centre = Math.asin(Math.sqrt(s));
            double half = z * se / (2 * Math.sqrt(s * (1 - s)));
            double low = Math.sin(Math.max(0, centre - half));
            double high = Math.sin(Math.min(Math.PI / 2, centre + half));
            return new double[] {low * low, high * high};
        }
    };

    private final String label;

    CurveInterval(String label) {
        this.label = label;
    }

    abstract double[] limits(double s, double se, double z);

    /** The interval of a survival probability; at 0 and 1, and only there, Wilson's on {@code known} lives. */
    Interval ofSurvival(double s, double se, int known, double level, String curve) {
        double z = TwoSided.quantile(level);
        if (s <= 0 || s >= 1) {
            if (known <= 0) {
                throw new CannotEstimate(
                        "The " + curve + " curve", "no life was followed that far and no event came before");
            }
            double tail = WilsonInterval.of(0, known, level).high();
            String wilson = curve + ", " + WilsonInterval.METHOD + " on " + known + " of known state";
            return s <= 0 ? new Interval(0, 0, tail, level, wilson) : new Interval(1, 1 - tail, 1, level, wilson);
        }
        double[] limits = limits(s, se, z);
        return new Interval(s, limits[0], limits[1], level, curve + ", " + label);
    }

    /** The interval of an incidence F: that of 1 - F, turned over. */
    Interval ofIncidence(double f, double se, int known, double level, String curve) {
        Interval rest = ofSurvival(1 - f, se, known, level, curve);
        String method = rest.method().endsWith(label) ? rest.method() + " of 1 - F" : rest.method();
        return new Interval(f, 1 - rest.high(), 1 - rest.low(), level, method);
    }
}
