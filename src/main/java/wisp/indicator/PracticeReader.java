package wisp.indicator;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.event.FarmDescribed.Enterprise;

/** Reads {@code practice.yaml}: the shipped one, and one of the data folder that replaces steps or takes them away. */
final class PracticeReader {
    static final String FILE = "practice.yaml";

    private PracticeReader() {}

    static Practice read(Map<String, String> files, List<DefinitionFault> faults) {
        Map<String, PracticeStep> steps = new LinkedHashMap<>();
        files.forEach((file, text) -> YamlMap.parse(file, text, faults).ifPresent(in -> {
            for (String id : in.keys()) {
                if (!Practice.IDS.contains(id)) {
                    in.fault(
                            id,
                            "There is no step " + id + ".",
                            "Write one of: " + String.join(", ", Practice.IDS) + ".");
                } else if (in.isWord(id, "none")) {
                    steps.remove(id);
                } else {
                    in.map(id).ifPresent(map -> steps.put(id, step(id, map)));
                }
            }
        }));
        return new Practice(Map.copyOf(steps));
    }

    private static PracticeStep step(String id, YamlMap in) {
        Optional<Age> by = in.age("by");
        Optional<Integer> byDay = in.whole("by_day");
        if (by.isPresent() == byDay.isPresent()) {
            in.fault("text", "A step needs one of by and by_day.", "Write by: 30 min or by_day: 3.");
        }
        PracticeStep step = new PracticeStep(
                id,
                in.text("text"),
                in.age("from").orElse(Age.BIRTH),
                in.age("best").orElse(null),
                by.orElse(null),
                in.age("until").orElse(null),
                in.whole("from_day").orElse(by.isPresent() ? null : 0),
                byDay.orElse(null),
                in.whole("until_day").orElse(null),
                in.number("share_of_birth_weight").orElse(null),
                in.number("otherwise").orElse(null),
                herds(in),
                new Basis(
                        Basis.Kind.GOOD_PRACTICE,
                        in.text("source"),
                        in.text("status"),
                        in.text("read_on"),
                        in.optionalText("remarks").orElse("")));
        if (step.by() != null && step.by().compareTo(step.from()) <= 0
                || step.byDay() != null && step.byDay() < step.fromDay()) {
            in.fault(by.isPresent() ? "by" : "by_day", "The step ends before it begins.", "Write a later age.");
        }
        boolean amount = id.equals(Practice.COLOSTRUM_FIRST) || id.equals(Practice.COLOSTRUM_TOTAL);
        if (amount && (step.shareOfBirthWeight() == null || step.otherwise() == null)) {
            in.fault("text", "It asks for no amount.", "Write share_of_birth_weight: 0.10 and otherwise: 3.");
        }
        in.nothingElse();
        return step;
    }

    private static List<Enterprise> herds(YamlMap in) {
        Map<String, List<Enterprise>> herds = new LinkedHashMap<>();
        herds.put("all", List.of(Enterprise.values()));
        herds.put("dairy", List.of(Enterprise.DAIRY));
        herds.put("beef", List.of(Enterprise.BEEF));
        return in.has("herds") ? in.choice("herds", herds).orElse(List.of()) : mayHave(in, herds.get("all"));
    }

    private static List<Enterprise> mayHave(YamlMap in, List<Enterprise> all) {
        in.mayHave("herds");
        return all;
    }
}
