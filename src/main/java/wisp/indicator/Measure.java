package wisp.indicator;

import java.util.Locale;

/** The measures of veterinary epidemiology that figures are given in. */
public enum Measure {
    RISK("proportion"),
    RATE("per 1000 calf-days"),
    INSIDE_LIMIT("proportion"),
    PROPORTION("proportion");

    private final String unit;

    Measure(String unit) {
        this.unit = unit;
    }

    /** The unit of its value. */
    public String unit() {
        return unit;
    }

    /** Its name in definitions. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
