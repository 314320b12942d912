package wisp.indicator;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wisp.event.Castrated;

/**
 * The limits that the law of one place sets; one file each.
 *
 * @param id the file's name, as a farm's description names it
 * @param aliases other names, such as ISO 3166 codes
 * @param readOn when the sources were last read
 * @param days limits in days of life by name
 * @param castration what holds for each method that the law speaks of
 */
public record Jurisdiction(
        String id,
        String title,
        List<String> aliases,
        String readOn,
        Map<String, DayLimit> days,
        Map<Castrated.Method, CastrationLimit> castration) {

    /** The names by which a farm's description may mean this place, in plain form. */
    List<String> names() {
        List<String> names = new ArrayList<>(aliases);
        names.add(0, id);
        return names;
    }

    /** A name as it is compared: small letters, hyphens for spaces. */
    static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    static Optional<Jurisdiction> read(String file, String text, List<DefinitionFault> faults) {
        int before = faults.size();
        Optional<YamlMap> parsed = YamlMap.parse(file, text, faults);
        if (parsed.isEmpty()) {
            return Optional.empty();
        }
        YamlMap in = parsed.get();
        String id = in.text("id");
        String title = in.text("title");
        List<String> aliases = in.texts("aliases").stream()
                .map(alias -> alias.toLowerCase(Locale.ROOT))
                .toList();
        String readOn = in.text("read_on");
        Map<String, DayLimit> days = new LinkedHashMap<>();
        in.map("days").ifPresent(map -> {
            for (String name : map.keys()) {
                if (!DayLimit.NAMES.contains(name)) {
                    map.fault(
                            name,
                            "There is no limit " + name + ".",
                            "Write one of: " + String.join(", ", DayLimit.NAMES) + ".");
                }
                map.map(name).ifPresent(limit -> dayLimit(limit).ifPresent(read -> days.put(name, read)));
            }
        });
        Map<Castrated.Method, CastrationLimit> castration = new LinkedHashMap<>();
        in.map("castration").ifPresent(map -> {
            for (Castrated.Method method : Castrated.Method.values()) {
                map.map(method.word()).ifPresent(limit -> castration.put(method, castrationLimit(limit)));
            }
            map.nothingElse();
        });
        in.nothingElse();
        return faults.size() > before
                ? Optional.empty()
                : Optional.of(new Jurisdiction(id, title, new ArrayList<>(aliases), readOn, days, castration));
    }

    private static Optional<DayLimit> dayLimit(YamlMap in) {
        in.missing("by_day");
        Optional<Integer> day = in.whole("by_day");
        String source = in.text("source");
        String status = in.text("status");
        in.nothingElse();
        return day.map(d -> new DayLimit(d, source, status));
    }

    private static CastrationLimit castrationLimit(YamlMap in) {
        CastrationLimit limit = new CastrationLimit(
                in.flag("allowed").orElse(true),
                in.whole("by_day").orElse(null),
                in.whole("anaesthetic_from_day").orElse(null),
                in.whole("anaesthetic_from_months").orElse(null),
                in.text("source"),
                in.text("status"));
        in.nothingElse();
        return limit;
    }
}
