package wisp.indicator;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.event.Birth.Sex;

/** Reads indicator definitions. A file with {@code for_each: condition} stands for one indicator a condition. */
final class DefinitionReader {
    private final Conditions conditions;
    private final List<DefinitionFault> faults;

    DefinitionReader(Conditions conditions, List<DefinitionFault> faults) {
        this.conditions = conditions;
        this.faults = faults;
    }

    /** The indicators of one file; what is wrong goes to the list of faults. */
    List<Indicator> read(String file, String text) {
        int before = faults.size();
        Optional<YamlMap> whole = YamlMap.parse(file, text, faults);
        if (whole.isEmpty()) {
            return List.of();
        }
        if (!whole.get().has("for_each")) {
            return one(file, whole.get()).stream().toList();
        }
        whole.get().choice("for_each", Map.of("condition", true));
        List<Indicator> indicators = new ArrayList<>();
        for (Map.Entry<String, String> condition : conditions.titles().entrySet()) {
            String title = condition.getValue().replace("\\", "\\\\").replace("\"", "\\\"");
            String filled = text.replace("{condition}", condition.getKey()).replace("{Condition}", title);
            if (faults.size() == before) {
                YamlMap.parse(file, filled, faults).ifPresent(map -> {
                    map.text("for_each");
                    one(file, map).ifPresent(indicators::add);
                });
            }
        }
        if (faults.size() == before) {
            targetsMeant(whole.get(), indicators);
        }
        return indicators;
    }

    /** A target of an id that the file does not define would be passed over in silence. */
    private static void targetsMeant(YamlMap in, List<Indicator> defined) {
        List<String> ids = defined.stream().map(Indicator::id).toList();
        in.map("targets").ifPresent(targets -> {
            for (String id : targets.keys()) {
                if (!ids.contains(id)) {
                    targets.fault(
                            id,
                            "This file defines no figure " + id + ".",
                            "Write one of: " + String.join(", ", ids) + ".");
                }
            }
        });
    }

    private Optional<Indicator> one(String file, YamlMap in) {
        int before = faults.size();
        String id = in.text("id");
        if (!id.isEmpty() && !id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            in.fault("id", "The id " + id + " cannot stand in an address.", "Use small letters, digits and hyphens.");
        }
        int version = in.whole("version").orElse(1);
        String title = in.text("title");
        Optional<Measure> measure = in.choice("measure", measures());
        boolean hours = in.choice("clock", clocks()).orElse(false);
        Population population = in.has("population")
                ? in.map("population").map(this::population).orElse(everyone())
                : everyone();
        Optional<Rule> rule = measure.flatMap(m -> new RuleReader(in, conditions).read(m));
        Target target = target(in, id);
        String source = in.text("source");
        String remarks = in.optionalText("remarks").orElse("");
        // without a measure nobody knows which keys belong here
        if (measure.isPresent()) {
            in.nothingElse();
        }
        if (faults.size() > before || measure.isEmpty() || rule.isEmpty()) {
            return Optional.empty();
        }
        Indicator indicator = new Indicator(
                id, version, title, measure.get(), hours, population, rule.get(), target, source, remarks, file);
        IndicatorCheck.check(indicator, in);
        return faults.size() > before ? Optional.empty() : Optional.of(indicator);
    }

    private static Population everyone() {
        return new Population(false, null, null, false);
    }

    private Population population(YamlMap in) {
        Map<String, Boolean> born = new LinkedHashMap<>();
        born.put("alive", false);
        born.put("any", true);
        boolean deadToo = in.has("born") && in.choice("born", born).orElse(false);
        Map<String, Sex> sexes = new LinkedHashMap<>();
        sexes.put("male", Sex.MALE);
        sexes.put("female", Sex.FEMALE);
        Sex sex = in.has("sex") ? in.choice("sex", sexes).orElse(null) : null;
        Age presentAt = in.age("present_at").orElse(null);
        boolean leaveOutEntire = in.flag("leave_out_entire").orElse(false);
        in.nothingElse();
        return new Population(deadToo, sex, presentAt, leaveOutEntire);
    }

    /** {@code target:}, or {@code targets:} with one for each id of a file that stands for several. */
    private static Target target(YamlMap in, String id) {
        Optional<YamlMap> own = in.map("target");
        Optional<YamlMap> several = in.map("targets");
        if (several.isPresent()) {
            YamlMap byId = several.get();
            Optional<YamlMap> found = byId.has(id) ? byId.map(id) : Optional.empty();
            return found.map(DefinitionReader::oneTarget).orElse(null);
        }
        return own.map(DefinitionReader::oneTarget).orElse(null);
    }

    private static Target oneTarget(YamlMap in) {
        Optional<Double> below = in.number("below");
        Optional<Double> atLeast = in.number("at_least");
        String source = in.text("source");
        in.nothingElse();
        if (below.isPresent() == atLeast.isPresent()) {
            in.fault("source", "A target needs one of below and at_least.", "Write below: 0.05 or at_least: 0.9.");
            return null;
        }
        return new Target(below.isPresent(), below.orElseGet(atLeast::get), source);
    }

    private static Map<String, Measure> measures() {
        Map<String, Measure> measures = new LinkedHashMap<>();
        for (Measure measure : Measure.values()) {
            measures.put(measure.word(), measure);
        }
        return measures;
    }

    private static Map<String, Boolean> clocks() {
        Map<String, Boolean> clocks = new LinkedHashMap<>();
        clocks.put("hours", true);
        clocks.put("days", false);
        return clocks;
    }
}
