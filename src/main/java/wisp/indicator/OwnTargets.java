package wisp.indicator;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads the targets that a farm sets itself: {@code targets.yaml} in the {@code analytics} folder of its data, one
 * figure a line, such as {@code preweaning-mortality: {below: 0.04}}. They stand beside the published ones and replace
 * none.
 */
final class OwnTargets {
    static final String FILE = "targets.yaml";

    private OwnTargets() {}

    static Map<String, Target> read(
            Map<String, String> files, Map<String, Indicator> indicators, List<DefinitionFault> faults) {
        Map<String, Target> targets = new LinkedHashMap<>();
        files.forEach((file, text) -> YamlMap.parse(file, text, faults).ifPresent(in -> {
            for (String id : in.keys()) {
                Indicator indicator = indicators.get(id);
                if (indicator == null) {
                    in.fault(
                            id,
                            "There is no figure " + id + " to set a target for.",
                            "Write an id as it stands in the figure's address; wisp figures prints them all.");
                } else {
                    in.map(id).flatMap(one -> target(one, indicator)).ifPresent(target -> targets.put(id, target));
                }
            }
        }));
        return targets;
    }

    private static Optional<Target> target(YamlMap in, Indicator indicator) {
        Optional<Double> below = in.number("below");
        Optional<Double> atLeast = in.number("at_least");
        String source = in.optionalText("source").orElse("the farm's own target");
        in.nothingElse();
        boolean both = below.isPresent() && atLeast.isPresent();
        if (both || !in.has("below") && !in.has("at_least")) {
            in.fault("below", "A target needs one of below and at_least.", "Write below: 0.05 or at_least: 0.9.");
        }
        if (both || below.isEmpty() && atLeast.isEmpty()) {
            return Optional.empty();
        }
        double value = below.orElseGet(atLeast::get);
        boolean share = indicator.measure() != Measure.RATE;
        if (!(value > 0) || Double.isInfinite(value) || (share && value > 1)) {
            in.fault(
                    below.isPresent() ? "below" : "at_least",
                    "A target of " + Plain.number(value) + " can never be missed or never be met.",
                    share ? "Give a share between 0 and 1." : "Give a rate over 0.");
            return Optional.empty();
        }
        return Optional.of(new Target(below.isPresent(), value, source));
    }
}
