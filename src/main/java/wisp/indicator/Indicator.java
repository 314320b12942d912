package wisp.indicator;

/**
 * One figure's definition.
 *
 * @param id its name in addresses and files
 * @param version goes up when the meaning changes
 * @param measure risk, rate, inside-limit or proportion
 * @param needsHours true: calves whose hour of birth is unknown are left out
 * @param population whom it is about
 * @param rule how it is worked out
 * @param target null where none is published
 * @param source where the definition comes from
 * @param remarks what it simplifies or does not say; may be empty
 * @param file the file that it was read from
 */
public record Indicator(
        String id,
        int version,
        String title,
        Measure measure,
        boolean needsHours,
        Population population,
        Rule rule,
        Target target,
        String source,
        String remarks,
        String file) {}
