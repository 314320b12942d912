package wisp.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import wisp.event.Fault;

/** CSV in Wisp's own columns: one row an event. */
final class CanonicalReading implements CsvReading {
    private final String source;
    private final boolean decimalComma;
    private final Times times;
    private final RowIdentity identity = new RowIdentity();
    private List<String> names = List.of();

    /**
     * A reading of one file.
     *
     * @param source stands in for a row's own source
     * @param zone the clock of times without an offset
     */
    CanonicalReading(String source, boolean decimalComma, ZoneId zone) {
        this.source = source;
        this.decimalComma = decimalComma;
        this.times = new Times(zone, List.of(), Times.AmbiguousHour.REFUSE);
    }

    @Override
    public List<Fault> header(List<String> header) {
        List<Fault> faults = new ArrayList<>();
        for (String name : header) {
            if (!Column.BY_NAME.containsKey(name)) {
                faults.add(new Fault(name, "There is no column of this name.", nearest(name)));
            }
        }
        for (String required : List.of("time", "type", "subject")) {
            if (!header.contains(required)) {
                String mend = "Add it: every event needs time, type and subject.";
                faults.add(new Fault(required, "The column is missing.", mend));
            }
        }
        names = header;
        return faults;
    }

    private static String nearest(String name) {
        String near = Nearest.of(name, Column.BY_NAME.keySet());
        return near.isEmpty()
                ? "Take the column out, or say with a mapping file what it means."
                : "Did you mean " + near + "? Else take the column out, or write a mapping file.";
    }

    @Override
    public Row row(long line, int index, List<String> cells) {
        List<Fault> faults = new ArrayList<>();
        SortedMap<String, String> filled = new TreeMap<>();
        for (int i = 0; i < names.size(); i++) {
            String text = Cell.trim(cells.get(i));
            if (!text.isEmpty()) {
                filled.put(names.get(i), text);
            }
        }
        ObjectNode event = filled.containsKey(Column.JSON) ? whole(filled, faults) : event(filled, faults);
        if (!faults.isEmpty()) {
            return Row.faulty(line, index, faults);
        }
        return new Row(line, index, List.of(event), List.of(), Column::ofField);
    }

    private ObjectNode event(SortedMap<String, String> filled, List<Fault> faults) {
        ObjectNode event = JsonNodeFactory.instance.objectNode();
        ObjectNode data = JsonNodeFactory.instance.objectNode();
        event.put("specversion", "1.0");
        Moment moment = null;
        for (Column column : Column.ALL) {
            String text = filled.get(column.name());
            BiConsumer<String, String> fault = (p, m) -> faults.add(new Fault(column.name(), p, m));
            if (text != null && column.kind() == Column.Kind.TIME) {
                Moment read = times.read(text, fault);
                moment = column.name().equals("time") ? read : moment;
                (column.data() ? data : event).put(column.field(), read == null ? null : read.rfc3339());
            } else if (text != null) {
                (column.data() ? data : event)
                        .set(column.field(), Cell.value(column.kind(), text, decimalComma, fault));
            }
        }
        dateOnly(moment, data, faults);
        if (!event.has("source")) {
            event.put("source", source);
        }
        if (!event.has("id")) {
            event.put("id", identity.name(filled));
        }
        event.set("data", data);
        return event;
    }

    private static void dateOnly(Moment moment, ObjectNode data, List<Fault> faults) {
        if (moment == null || moment.known()) {
            return;
        }
        if (data.path("time_known").booleanValue()) {
            String problem = "It is true, but time holds only a date.";
            faults.add(new Fault("time_known", problem, "Write the hour, or leave time_known empty."));
        }
        data.put("time_known", false);
    }

    /** The event of the json cell, if the other cells still say the same. */
    private static ObjectNode whole(SortedMap<String, String> filled, List<Fault> faults) {
        JsonNode node = Cell.value(
                Column.Kind.JSON, filled.get(Column.JSON), false, (p, m) -> faults.add(new Fault(Column.JSON, p, m)));
        if (!(node instanceof ObjectNode event)) {
            if (node != null) {
                faults.add(new Fault(Column.JSON, "It is not a JSON object.", "Write the whole event, or nothing."));
            }
            return null;
        }
        SortedMap<String, String> told = CsvCells.of(event);
        filled.forEach((name, text) -> {
            if (!name.equals(Column.JSON) && !text.equals(Cell.trim(told.getOrDefault(name, "")))) {
                String problem = "It says other than the event in the json column.";
                faults.add(new Fault(name, problem, "Empty the json cell to have the other cells count."));
            }
        });
        return event;
    }
}
