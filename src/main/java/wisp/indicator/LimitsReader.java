package wisp.indicator;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a limits file. Its own limits hold from ever; {@code changes:} lists what is put over them for calves born from
 * a date on; {@code dairy:} and {@code beef:}, in the file and in a change, hold for one kind of herd. A later word on
 * a limit replaces the earlier one, and {@code none} takes it away.
 */
final class LimitsReader {
    private final String file;
    private final List<DefinitionFault> faults;

    LimitsReader(String file, List<DefinitionFault> faults) {
        this.file = file;
        this.faults = faults;
    }

    /** What is said from one date on: for all, for dairy and for beef; an empty limit is one that is taken away. */
    private record Version(
            LocalDate from,
            Map<String, Optional<Limit>> all,
            Map<String, Optional<Limit>> dairy,
            Map<String, Optional<Limit>> beef) {}

    Optional<Jurisdiction> read(String text) {
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
        LimitSections sections = new LimitSections(readOn);
        List<Version> versions = new ArrayList<>();
        versions.add(version(null, in, sections));
        for (YamlMap change : in.maps("changes")) {
            change.missing("from");
            Optional<LocalDate> from = change.date("from");
            Version version = change(from.orElse(null), change, sections, versions);
            if (from.isPresent()) {
                versions.add(version);
            }
            change.nothingElse();
        }
        in.nothingElse();
        versions.sort(Comparator.comparing(Version::from, Comparator.nullsFirst(Comparator.naturalOrder())));
        return faults.size() > before
                ? Optional.empty()
                : Optional.of(new Jurisdiction(
                        id,
                        title,
                        new ArrayList<>(aliases),
                        readOn,
                        laws(id, title, readOn, versions, false),
                        laws(id, title, readOn, versions, true)));
    }

    private static Version change(LocalDate from, YamlMap in, LimitSections sections, List<Version> others) {
        if (from != null && others.stream().anyMatch(other -> from.equals(other.from()))) {
            in.fault("from", "Two changes hold from " + from + ".", "Put both into one entry.");
        }
        return version(from, in, sections);
    }

    private static Version version(LocalDate from, YamlMap in, LimitSections sections) {
        return new Version(from, sections.read(in), herd(in, "dairy", sections), herd(in, "beef", sections));
    }

    private static Map<String, Optional<Limit>> herd(YamlMap in, String herd, LimitSections sections) {
        return in.map(herd)
                .map(own -> {
                    Map<String, Optional<Limit>> limits = sections.read(own);
                    own.nothingElse();
                    return limits;
                })
                .orElse(Map.of());
    }

    private static List<Law> laws(String id, String title, String readOn, List<Version> versions, boolean beef) {
        List<Law> laws = new ArrayList<>();
        Map<String, Limit> limits = new LinkedHashMap<>();
        for (Version version : versions) {
            over(version.all(), limits);
            over(beef ? version.beef() : version.dairy(), limits);
            laws.add(new Law(
                    id, title, readOn, version.from(), Collections.unmodifiableMap(new LinkedHashMap<>(limits))));
        }
        return laws;
    }

    private static void over(Map<String, Optional<Limit>> said, Map<String, Limit> limits) {
        said.forEach((name, limit) -> {
            limits.remove(name);
            limit.ifPresent(now -> limits.put(name, now));
        });
    }
}
