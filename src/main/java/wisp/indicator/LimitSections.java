package wisp.indicator;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import wisp.event.Castrated;

/** Reads the sections of a limits file, of one of its changes, or of what it says for dairy or beef alone. */
final class LimitSections {
    private static final Set<String> HOURS = Set.of(Law.FIRST_TAG);
    private static final Set<String> AFTER = new TreeSet<>(Set.of("sample-sent", "registration"));
    private static final Set<String> METHODS = new TreeSet<>(Set.of("cautery", "chemical", "other"));

    private final String readOn;
    private Map<String, Optional<Limit>> limits = new LinkedHashMap<>();

    LimitSections(String readOn) {
        this.readOn = readOn;
    }

    /** The limits by section and name; an empty one is taken away. */
    Map<String, Optional<Limit>> read(YamlMap in) {
        limits = new LinkedHashMap<>();
        section(in, "days", DayLimit.NAMES, this::day);
        section(in, "hours", HOURS, this::hours);
        section(in, "after", AFTER, this::span);
        section(in, "castration", castrationMethods(), this::procedure);
        section(in, "disbudding", METHODS, this::procedure);
        one(in, "lost_tag", "lost_tag", this::span);
        one(in, "tag_count", "tag_count", map -> duty(map, "number", List.of()));
        one(in, "movement", "movement", map -> duty(map, null, List.of()));
        one(in, "medicine_record", "medicine_record", map -> duty(map, "years", map.texts("fields")));
        for (YamlMap note : in.maps("notes")) {
            Limit.Duty duty = duty(note, null, List.of());
            limits.put("notes." + duty.text(), Optional.of(duty));
            note.nothingElse();
        }
        return limits;
    }

    private void section(YamlMap in, String section, Set<String> names, Function<YamlMap, Limit> reader) {
        in.map(section).ifPresent(map -> {
            for (String name : map.keys()) {
                if (!names.contains(name)) {
                    map.fault(
                            name, "There is no limit " + name + ".", "Write one of: " + String.join(", ", names) + ".");
                }
                one(map, name, section + "." + name, reader);
            }
        });
    }

    private void one(YamlMap in, String key, String name, Function<YamlMap, Limit> reader) {
        if (!in.has(key)) {
            in.mayHave(key);
        } else if (in.isWord(key, "none")) {
            limits.put(name, Optional.empty());
        } else {
            in.map(key).ifPresent(map -> {
                limits.put(name, Optional.ofNullable(reader.apply(map)));
                map.nothingElse();
            });
        }
    }

    private Limit day(YamlMap in) {
        Optional<Integer> day = required(in, "by_day");
        boolean deadToo = in.flag("dead_too").orElse(false);
        Basis basis = basis(in);
        return day.map(d -> new DayLimit(d, deadToo, basis)).orElse(null);
    }

    private Limit hours(YamlMap in) {
        Optional<Integer> before = required(in, "before_hours");
        Basis basis = basis(in);
        return before.map(hours -> new Limit.Hours(hours, basis)).orElse(null);
    }

    private Limit span(YamlMap in) {
        Optional<Integer> days = required(in, "within_days");
        Basis basis = basis(in);
        return days.map(d -> new Limit.Span(d, basis)).orElse(null);
    }

    private Limit procedure(YamlMap in) {
        return new ProcedureLimit(
                in.flag("allowed").orElse(true),
                notNegative(in, "by_day").orElse(null),
                ageFrom(in, "anaesthetic"),
                ageFrom(in, "pain_relief"),
                ageFrom(in, "vet"),
                basis(in));
    }

    private Limit.Duty duty(YamlMap in, String number, List<String> fields) {
        int count = number == null ? 0 : required(in, number).orElse(0);
        return new Limit.Duty(count, in.text("text"), fields, basis(in));
    }

    private static AgeFrom ageFrom(YamlMap in, String what) {
        return new AgeFrom(
                notNegative(in, what + "_from_day").orElse(null),
                notNegative(in, what + "_from_months").orElse(null));
    }

    private Basis basis(YamlMap in) {
        Basis.Kind kind = in.has("kind") ? in.choice("kind", kinds()).orElse(Basis.Kind.LAW) : Basis.Kind.LAW;
        in.mayHave("kind");
        return new Basis(
                kind,
                in.text("source"),
                in.text("status"),
                in.optionalText("read_on").orElse(readOn),
                in.optionalText("remarks").orElse(""));
    }

    static Map<String, Basis.Kind> kinds() {
        Map<String, Basis.Kind> kinds = new LinkedHashMap<>();
        for (Basis.Kind kind : Basis.Kind.values()) {
            kinds.put(kind.word(), kind);
        }
        return kinds;
    }

    private static Optional<Integer> required(YamlMap in, String key) {
        in.missing(key);
        return notNegative(in, key);
    }

    private static Optional<Integer> notNegative(YamlMap in, String key) {
        Optional<Integer> number = in.whole(key);
        number.filter(n -> n < 0).ifPresent(n -> in.fault(key, "\"" + n + "\" is below 0.", "Write 0 or more."));
        return number;
    }

    private static Set<String> castrationMethods() {
        Set<String> words = new TreeSet<>();
        for (Castrated.Method method : Castrated.Method.values()) {
            words.add(method.word());
        }
        return words;
    }
}
