package wisp.indicator;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.event.EventType;

/** Reads the rule of a definition: the keys that each measure has. */
final class RuleReader {
    private static final String NAME_OUTCOME =
            "Write outcome: death, outcome: {condition: …} or outcome: {any_of: […]}.";

    private final YamlMap in;
    private final Conditions conditions;

    RuleReader(YamlMap in, Conditions conditions) {
        this.in = in;
        this.conditions = conditions;
    }

    Optional<Rule> read(Measure measure) {
        return switch (measure) {
            case RISK -> risk();
            case RATE -> window(in, "window").flatMap(w -> outcome().map(o -> new Rule.Rate(w, o)));
            case INSIDE_LIMIT -> insideLimit();
            case PROPORTION -> proportion();
        };
    }

    private Optional<Rule> risk() {
        Optional<Window> window = window(in, "window");
        Optional<Outcome> outcome = outcome();
        Map<String, Boolean> choices = new LinkedHashMap<>();
        choices.put("estimate", false);
        choices.put("leave-out", true);
        boolean leaveOut = in.has("censored") && in.choice("censored", choices).orElse(false);
        return window.flatMap(w -> outcome.map(o -> new Rule.Risk(w, o, leaveOut)));
    }

    private Optional<Rule> insideLimit() {
        if (in.has("castrated") && in.flag("castrated").orElse(false)) {
            return Optional.of(new Rule.CastratedLawfully());
        }
        String limit = in.text("limit");
        if (in.has("present_at_end")) {
            return in.map("present_at_end").flatMap(this::wholeMatch).map(m -> new Rule.DoneAtEnd(m, limit));
        }
        if (in.isMap("done")) {
            return in.map("done")
                    .flatMap(this::wholeMatch)
                    .map(match -> new Rule.DoneByLimit(new Rule.FirstEvent(match), limit));
        }
        Map<String, Rule.Done> words = Map.of("both-tags", new Rule.BothTags());
        return in.choice("done", words).map(done -> new Rule.DoneByLimit(done, limit));
    }

    private Optional<Rule> proportion() {
        if (in.has("case_fatality")) {
            return in.map("case_fatality").flatMap(this::caseFatality);
        }
        if (in.has("amount")) {
            return in.map("amount").flatMap(this::amount);
        }
        in.missing("record");
        return in.map("record").flatMap(this::feature);
    }

    private Optional<Rule> caseFatality(YamlMap map) {
        Optional<String> condition = condition(map);
        Optional<Age> within = requiredAge(map, "within");
        map.nothingElse();
        return condition.flatMap(c ->
                within.map(w -> new Rule.CaseFatality(c, conditions.titles().get(c), w)));
    }

    private Optional<Rule> amount(YamlMap map) {
        Optional<EventMatch> match = MatchReader.event(map);
        String field = map.text("field");
        match.filter(m -> !field.isEmpty()).ifPresent(m -> MatchReader.isAmount(map, m.type(), "field", field));
        Optional<Age> by = requiredAge(map, "by");
        double share = map.number("share_of_birth_weight").orElse(0.0);
        double otherwise = map.number("otherwise").orElse(0.0);
        if (otherwise <= 0) {
            map.fault("otherwise", "An amount of nothing is always reached.", "Give otherwise: with an amount over 0.");
        }
        map.nothingElse();
        return match.flatMap(m -> by.map(b -> new Rule.AmountByAge(m, field, b, share, otherwise)));
    }

    private Optional<Rule> feature(YamlMap map) {
        Optional<EventMatch> match = MatchReader.event(map);
        Optional<Window> window = window(map, "window");
        boolean ofRecord = map.flag("pen_of_record").orElse(false);
        map.nothingElse();
        in.missing("feature");
        List<FieldTest> tests = match.flatMap(m -> in.map("feature").map(f -> MatchReader.tests(f, m.type())))
                .orElse(List.of());
        return match.flatMap(m -> window.map(w -> new Rule.Feature(m, w, tests, ofRecord)));
    }

    private Optional<EventMatch> wholeMatch(YamlMap map) {
        Optional<EventMatch> match = MatchReader.event(map);
        map.nothingElse();
        return match;
    }

    private Optional<Outcome> outcome() {
        if (!in.isMap("outcome")) {
            if (in.optionalText("outcome").filter("death"::equals).isPresent()) {
                return Optional.of(new Outcome.Death());
            }
            in.fault("outcome", "The outcome is not named.", NAME_OUTCOME);
            return Optional.empty();
        }
        YamlMap map = in.map("outcome").orElseThrow();
        Optional<Outcome> outcome;
        if (map.has("condition")) {
            outcome = condition(map)
                    .map(key -> new Outcome.Illness(key, conditions.titles().get(key)));
        } else {
            if (!map.has("any_of")) {
                in.fault("outcome", "The outcome is not named.", NAME_OUTCOME);
            }
            List<EventMatch> matches = map.maps("any_of").stream()
                    .map(this::wholeMatch)
                    .flatMap(Optional::stream)
                    .peek(match -> knownConditions(map, match))
                    .toList();
            outcome = matches.isEmpty() ? Optional.empty() : Optional.of(new Outcome.Happening(matches));
        }
        map.nothingElse();
        return outcome;
    }

    private void knownConditions(YamlMap map, EventMatch match) {
        boolean ill = match.type() == EventType.ILLNESS_FOUND || match.type() == EventType.RECOVERED;
        for (FieldTest test : match.where()) {
            if (ill && test instanceof FieldTest.OneOf oneOf && test.field().equals("condition")) {
                oneOf.values().forEach(value -> known(map, "any_of", value));
            }
        }
    }

    private Optional<String> condition(YamlMap map) {
        String key = map.text("condition");
        return key.isEmpty() || !known(map, "condition", key) ? Optional.empty() : Optional.of(key);
    }

    private boolean known(YamlMap map, String at, String key) {
        if (!conditions.keys().contains(key)) {
            String all = String.join(", ", conditions.keys());
            map.fault(
                    at,
                    "No event can have the condition " + key + ".",
                    "Write one of: " + all + "; or add it to conditions.yaml.");
            return false;
        }
        return true;
    }

    private Optional<Window> window(YamlMap map, String key) {
        map.missing(key);
        Optional<YamlMap> window = map.map(key);
        if (window.isEmpty()) {
            return Optional.empty();
        }
        YamlMap ages = window.get();
        boolean open = ages.has("after");
        Optional<Age> start = requiredAge(ages, open ? "after" : "from");
        Optional<Age> end = requiredAge(ages, "to");
        ages.nothingElse();
        if (start.isPresent() && end.isPresent() && end.get().compareTo(start.get()) <= 0) {
            String span = "from " + start.get().text() + " to " + end.get().text();
            ages.fault("to", "The window " + span + " can never hold.", "Let it end later than it begins.");
            return Optional.empty();
        }
        return start.flatMap(s -> end.map(e -> new Window(s, open, e)));
    }

    private static Optional<Age> requiredAge(YamlMap map, String key) {
        map.missing(key);
        return map.age(key);
    }
}
