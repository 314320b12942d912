package wisp.indicator;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * One mapping of a YAML file, read key by key. Every fault is noted with the file and line; a key that nobody asked for
 * is a fault too.
 */
final class YamlMap {
    private final String file;
    private final int line;
    private final Map<String, Node> entries = new LinkedHashMap<>();
    private final Map<String, Integer> keyLines = new LinkedHashMap<>();
    private final List<String> asked = new ArrayList<>();
    private final List<DefinitionFault> faults;

    private YamlMap(String file, MappingNode node, List<DefinitionFault> faults) {
        this.file = file;
        this.line = lineOf(node);
        this.faults = faults;
        for (NodeTuple tuple : node.getValue()) {
            String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "?";
            if (entries.put(key, tuple.getValueNode()) != null) {
                fault(lineOf(tuple.getKeyNode()), "The key " + key + " stands twice.", "Keep one of them.");
            }
            keyLines.put(key, lineOf(tuple.getKeyNode()));
        }
    }

    /** Reads a file's text; empty with a fault where it is no YAML mapping. */
    static Optional<YamlMap> parse(String file, String text, List<DefinitionFault> faults) {
        try {
            LoadSettings settings = LoadSettings.builder().setLabel(file).build();
            Node node = new Compose(settings).composeString(text).orElse(null);
            if (node instanceof MappingNode mapping) {
                return Optional.of(new YamlMap(file, mapping, faults));
            }
            faults.add(new DefinitionFault(file, 1, "It is not a list of keys and values.", "Begin with id: …"));
        } catch (MarkedYamlEngineException wrong) {
            int at = wrong.getProblemMark().map(Mark::getLine).orElse(0) + 1;
            faults.add(new DefinitionFault(
                    file,
                    at,
                    "It is not YAML: " + wrong.getProblem() + ".",
                    "Check brackets, quotation marks and indent there."));
        }
        return Optional.empty();
    }

    boolean has(String key) {
        return entries.containsKey(key);
    }

    List<String> keys() {
        return List.copyOf(entries.keySet());
    }

    int line(String key) {
        return keyLines.getOrDefault(key, line);
    }

    void fault(int atLine, String problem, String mend) {
        faults.add(new DefinitionFault(file, atLine, problem, mend));
    }

    void fault(String key, String problem, String mend) {
        fault(line(key), problem, mend);
    }

    /** A required text. */
    String text(String key) {
        return optionalText(key).orElseGet(() -> {
            missing(key);
            return "";
        });
    }

    Optional<String> optionalText(String key) {
        Node node = ask(key);
        if (node == null) {
            return Optional.empty();
        }
        if (node instanceof ScalarNode scalar && !scalar.getValue().isBlank()) {
            return Optional.of(scalar.getValue().strip());
        }
        fault(key, "The key " + key + " has no plain value.", "Write a word or a sentence after " + key + ":.");
        return Optional.empty();
    }

    /** A list of texts; a single text is a list of one. */
    List<String> texts(String key) {
        if (entries.get(key) instanceof SequenceNode sequence) {
            asked.add(key);
            return sequence.getValue().stream()
                    .map(node -> node instanceof ScalarNode scalar ? scalar.getValue() : "")
                    .toList();
        }
        return optionalText(key).map(List::of).orElse(List.of());
    }

    Optional<Double> number(String key) {
        return parsed(key, "a number", text -> Double.valueOf(text));
    }

    Optional<Integer> whole(String key) {
        return parsed(key, "a whole number", text -> Integer.valueOf(text));
    }

    Optional<Boolean> flag(String key) {
        return parsed(key, "true or false", text -> {
            if (!text.equals("true") && !text.equals("false")) {
                throw new IllegalArgumentException(text);
            }
            return text.equals("true");
        });
    }

    Optional<LocalDate> date(String key) {
        return parsed(key, "a date such as 2027-01-01", text -> LocalDate.parse(text));
    }

    Optional<Age> age(String key) {
        return parsed(key, "an age such as 24 h or 60 d", text -> Age.read(text).orElseThrow());
    }

    /** A required choice among words. */
    <T> Optional<T> choice(String key, Map<String, T> choices) {
        String all = String.join(", ", choices.keySet());
        if (!entries.containsKey(key)) {
            asked.add(key);
            fault(line, "The key " + key + " is missing.", "Add " + key + ": with one of: " + all + ".");
            return Optional.empty();
        }
        String word = text(key);
        if (word.isEmpty() || choices.containsKey(word)) {
            return Optional.ofNullable(choices.get(word));
        }
        fault(key, "\"" + word + "\" is no value of " + key + ".", "Write one of: " + all + ".");
        return Optional.empty();
    }

    /** A mapping under a key. */
    Optional<YamlMap> map(String key) {
        Node node = ask(key);
        if (node == null) {
            return Optional.empty();
        }
        if (node instanceof MappingNode mapping) {
            return Optional.of(new YamlMap(file, mapping, faults));
        }
        fault(key, "The key " + key + " must hold keys of its own.", "Write them indented below it or in braces.");
        return Optional.empty();
    }

    /** A list of mappings under a key. */
    List<YamlMap> maps(String key) {
        if (entries.get(key) instanceof SequenceNode sequence) {
            asked.add(key);
            List<YamlMap> maps = new ArrayList<>();
            for (Node node : sequence.getValue()) {
                if (node instanceof MappingNode mapping) {
                    maps.add(new YamlMap(file, mapping, faults));
                } else {
                    fault(lineOf(node), "An entry of " + key + " has no keys.", "Write each as - key: value.");
                }
            }
            return maps;
        }
        return map(key).map(List::of).orElse(List.of());
    }

    /** Notes a key as known that is not looked into. */
    void mayHave(String key) {
        asked.add(key);
    }

    /** Whether a plain value is just this word; the key then counts as asked for. */
    boolean isWord(String key, String word) {
        boolean is = entries.get(key) instanceof ScalarNode scalar
                && scalar.getValue().strip().equals(word);
        if (is) {
            asked.add(key);
        }
        return is;
    }

    boolean isMap(String key) {
        return entries.get(key) instanceof MappingNode;
    }

    void missing(String key) {
        if (!entries.containsKey(key)) {
            fault(line, "The key " + key + " is missing.", "Add " + key + ": with its value.");
        }
    }

    /** Notes a fault for every key that nobody asked for. */
    void nothingElse() {
        for (String key : entries.keySet()) {
            if (!asked.contains(key)) {
                String known = String.join(", ", asked);
                fault(key, "There is no key " + key + " here.", "Keys that may stand here: " + known + ".");
            }
        }
    }

    private <T> Optional<T> parsed(String key, String what, Function<String, T> reader) {
        return optionalText(key).flatMap(text -> {
            try {
                return Optional.of(reader.apply(text));
            } catch (RuntimeException notSo) {
                fault(key, "\"" + text + "\" is not " + what + ".", "Write " + key + ": with " + what + ".");
                return Optional.empty();
            }
        });
    }

    private Node ask(String key) {
        asked.add(key);
        return entries.get(key);
    }

    private static int lineOf(Node node) {
        return node.getStartMark().map(Mark::getLine).orElse(0) + 1;
    }
}
