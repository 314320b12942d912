package wisp.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import wisp.event.Fault;

/** CSV in somebody's own columns, read by a mapping. */
final class MappedReading implements CsvReading {
    private final Mapping mapping;
    private final TagMatching matching;
    private final String source;
    private final Times times;
    private final boolean decimalComma;
    private final RowIdentity identity = new RowIdentity();
    private List<String> names = List.of();
    private Set<String> known = Set.of();

    MappedReading(Mapping mapping, TagMatching matching, String source, Times times, boolean decimalComma) {
        this.mapping = mapping;
        this.matching = matching;
        this.source = source;
        this.times = times;
        this.decimalComma = decimalComma;
    }

    @Override
    public List<Fault> header(List<String> header) {
        names = header;
        known = new LinkedHashSet<>(header);
        List<Fault> faults = new ArrayList<>();
        Set<String> used = mapping.columns(known);
        for (String column : used) {
            if (!known.contains(column)) {
                String near = Nearest.of(column, header);
                String mend = near.isEmpty()
                        ? "The file has: " + String.join(", ", header) + "."
                        : "Did you mean " + near + "?";
                faults.add(new Fault(column, "The mapping names a column that the file does not have.", mend));
            }
        }
        for (String column : header) {
            if (!used.contains(column) && !mapping.ignored().contains(column)) {
                String problem = "The mapping does not say what the column is.";
                faults.add(new Fault(column, problem, "Use it there, or list it under ignore."));
            }
        }
        mapping.repeat().ifPresent(repeat -> {
            if (known.contains(repeat.as())) {
                String problem = "The counter of repeat has the name of a column.";
                faults.add(new Fault(repeat.as(), problem, "Call the counter otherwise."));
            }
            known.add(repeat.as());
        });
        return faults;
    }

    @Override
    public List<String> notes() {
        return matching == null ? List.of() : matching.notes();
    }

    @Override
    public Row row(long line, int index, List<String> cells) {
        Map<String, String> texts = new HashMap<>();
        SortedMap<String, String> naming = new TreeMap<>();
        for (int i = 0; i < names.size(); i++) {
            String text = Cell.trim(cells.get(i));
            texts.put(names.get(i), text);
            if (!text.isEmpty() && !mapping.ignored().contains(names.get(i))) {
                naming.put(names.get(i), text);
            }
        }
        String name = identity.name(naming);
        List<Fault> faults = new ArrayList<>();
        List<JsonNode> events = new ArrayList<>();
        if (mapping.repeat().isEmpty()) {
            events(line, texts, name, "", events, faults);
        } else {
            Repeat repeat = mapping.repeat().get();
            int count = repeat.times(texts, (p, m) -> faults.add(new Fault(repeat.count(), p, m)));
            for (int n = 1; n <= count && faults.isEmpty(); n++) {
                texts.put(repeat.as(), Integer.toString(n));
                events(line, texts, name, "." + n, events, faults);
            }
        }
        return faults.isEmpty()
                ? new Row(line, index, events, List.of(), mapping::naming)
                : Row.faulty(line, index, faults);
    }

    private void events(
            long line,
            Map<String, String> texts,
            String name,
            String counter,
            List<JsonNode> events,
            List<Fault> faults) {
        int number = 0;
        for (EventTemplate template : mapping.events()) {
            number++;
            if (template.applies(texts, known)) {
                ObjectNode event = template.event(texts, times, decimalComma, faults);
                event.put("source", source);
                if (!event.has("id")) {
                    event.put("id", name + "." + number + counter);
                }
                if (template.byTag() && faults.isEmpty()) {
                    matching.match(event, line);
                }
                events.add(event);
            }
        }
    }
}
