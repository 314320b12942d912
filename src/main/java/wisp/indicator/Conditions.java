package wisp.indicator;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The illnesses that events may name.
 *
 * @param titles each one's key and its name in a sentence
 * @param caseDefinitions each one's case definition in words
 */
public record Conditions(Map<String, String> titles, Map<String, String> caseDefinitions) {

    /** The keys. */
    public Set<String> keys() {
        return new TreeSet<>(titles.keySet());
    }

    /** A recorded cause or illness in words: the condition's title, or what was written where it is none of them. */
    public String named(String written) {
        String key = written.strip();
        return titles.getOrDefault(key.toLowerCase(Locale.ROOT), key);
    }

    /** Reads files in order; a later one adds conditions or replaces them by key. */
    static Conditions read(Map<String, String> textByFile, List<DefinitionFault> faults) {
        Map<String, String> titles = new TreeMap<>();
        Map<String, String> cases = new TreeMap<>();
        textByFile.forEach((file, text) -> YamlMap.parse(file, text, faults).ifPresent(in -> {
            for (String key : in.keys()) {
                in.map(key).ifPresent(map -> {
                    titles.put(key, map.text("title"));
                    cases.put(key, map.text("case"));
                    map.nothingElse();
                });
            }
        }));
        return new Conditions(titles, cases);
    }
}
