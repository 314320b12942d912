package wisp.interchange;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A place in a mapping file, which knows its line, and the list of faults of the whole file, so that its writer hears
 * of all of them at once. Every scalar is text: {@code 1}, {@code true} and {@code 2026-03-01} are what they look like.
 */
final class Yaml {
    /** One thing wrong in the file; the sentence names file and line. */
    record Flaw(int line, String sentence) {}

    private final String file;
    private final Node node;
    private final List<Flaw> faults;

    private Yaml(String file, Node node, List<Flaw> faults) {
        this.file = file;
        this.node = node;
        this.faults = faults;
    }

    /** The top of a file. */
    static Yaml read(String file, String text, List<Flaw> faults) {
        try {
            LoadSettings settings = LoadSettings.builder().setLabel(file).build();
            Node top = new Compose(settings).composeString(text).orElse(null);
            if (top != null) {
                return new Yaml(file, top, faults);
            }
            faults.add(new Flaw(1, file + ": It is empty. Write the events that a row stands for."));
        } catch (MarkedYamlEngineException wrong) {
            int line = wrong.getProblemMark().map(mark -> mark.getLine() + 1).orElse(1);
            faults.add(new Flaw(
                    line,
                    file + ", line " + line + ": It is not YAML: " + wrong.getProblem()
                            + ". Check indentation, colons and quotation marks."));
        } catch (YamlEngineException wrong) {
            faults.add(new Flaw(
                    1, file + ": It is not YAML: " + wrong.getMessage() + " Check its letters and indentation."));
        }
        return null;
    }

    int line() {
        return node.getStartMark().map(mark -> mark.getLine() + 1).orElse(0);
    }

    void fault(String problem, String mend) {
        faults.add(new Flaw(line(), file + ", line " + line() + ": " + problem + " " + mend));
    }

    boolean isScalar() {
        return node instanceof ScalarNode;
    }

    boolean isList() {
        return node instanceof SequenceNode;
    }

    boolean isMap() {
        return node instanceof MappingNode;
    }

    /** The text of a scalar, null being empty text; a fault and empty text for anything else. */
    String text() {
        if (node instanceof ScalarNode scalar) {
            boolean nothing = scalar.getTag().getValue().endsWith(":null");
            return nothing ? "" : scalar.getValue();
        }
        fault("Here stands a list or a group where one word is wanted.", "Write one word or number.");
        return "";
    }

    /** The entries of a list; one scalar counts as a list of one. */
    List<Yaml> list() {
        if (isScalar()) {
            return List.of(this);
        }
        if (node instanceof SequenceNode sequence) {
            return sequence.getValue().stream().map(this::at).toList();
        }
        fault("Here a list is wanted.", "Begin each of its lines with a hyphen.");
        return List.of();
    }

    /** The entries of a group, in their order; a name that comes twice is a fault. */
    Map<String, Yaml> map() {
        Map<String, Yaml> map = new LinkedHashMap<>();
        if (!(node instanceof MappingNode group)) {
            fault("Here a group of names and values is wanted.", "Write name: value, one a line.");
            return map;
        }
        for (NodeTuple tuple : group.getValue()) {
            Yaml key = at(tuple.getKeyNode());
            if (map.putIfAbsent(key.text(), at(tuple.getValueNode())) != null) {
                key.fault("\"" + key.text() + "\" stands here twice.", "Take one of the two out.");
            }
        }
        return map;
    }

    /** A group that may have these names and no others. */
    Map<String, Yaml> map(Collection<String> allowed) {
        Map<String, Yaml> map = map();
        for (Map.Entry<String, Yaml> entry : new ArrayList<>(map.entrySet())) {
            if (!allowed.contains(entry.getKey())) {
                String near = Nearest.of(entry.getKey(), allowed);
                String mend =
                        near.isEmpty() ? "It takes: " + String.join(", ", allowed) + "." : "Did you mean " + near + "?";
                entry.getValue().fault("There is no \"" + entry.getKey() + "\" here.", mend);
                map.remove(entry.getKey());
            }
        }
        return map;
    }

    private Yaml at(Node other) {
        return new Yaml(file, other, faults);
    }
}
