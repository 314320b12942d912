package wisp.interchange;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import wisp.event.Fault;

/**
 * One event that a row of a spreadsheet stands for.
 *
 * @param when all of these must hold for the row to say it
 * @param attributes column of Wisp's own CSV to what fills it: time, type, subject and what else is given
 * @param data the same for the fields of the data
 * @param byTag whether what fills the subject is a tag number, by which the animal is found
 */
record EventTemplate(List<Condition> when, Map<Column, Filling> attributes, Map<Column, Filling> data, boolean byTag) {

    Set<String> columns(Set<String> header) {
        Set<String> columns = new LinkedHashSet<>();
        when.forEach(condition -> columns.addAll(condition.columns(header)));
        attributes.values().forEach(filling -> columns.addAll(filling.columns()));
        data.values().forEach(filling -> columns.addAll(filling.columns()));
        return columns;
    }

    boolean applies(Map<String, String> cells, Set<String> known) {
        return when.stream().allMatch(condition -> condition.holds(cells, known));
    }

    /** The event that a row says. */
    ObjectNode event(Map<String, String> cells, Times times, boolean decimalComma, List<Fault> faults) {
        ObjectNode event = JsonNodeFactory.instance.objectNode();
        event.put("specversion", "1.0");
        ObjectNode fields = JsonNodeFactory.instance.objectNode();
        attributes.forEach((column, filling) -> fill(column, filling, cells, times, decimalComma, event, faults));
        data.forEach((column, filling) -> fill(column, filling, cells, times, decimalComma, fields, faults));
        if (event.remove("date only") != null) {
            fields.put("time_known", false);
        }
        event.set("data", fields);
        return event;
    }

    private static void fill(
            Column column,
            Filling filling,
            Map<String, String> cells,
            Times times,
            boolean decimalComma,
            ObjectNode into,
            List<Fault> faults) {
        String field = column.name() + from(filling);
        BiConsumer<String, String> fault = (problem, mend) -> faults.add(new Fault(field, problem, mend));
        String text = filling.text(cells, fault);
        if (text == null) {
            return;
        }
        if (text.isEmpty()) {
            emptyTime(column, fault);
        } else if (column.kind() == Column.Kind.TIME) {
            Moment moment = times.read(text, fault);
            if (moment != null) {
                into.put(column.field(), moment.rfc3339());
            }
            if (moment != null && !moment.known() && column.name().equals("time")) {
                into.put("date only", true);
            }
        } else {
            into.set(column.field(), Cell.value(column.kind(), text, decimalComma, fault));
        }
    }

    private static void emptyTime(Column column, BiConsumer<String, String> fault) {
        if (column.name().equals("time") || column.name().equals("subject")) {
            fault.accept(
                    "The cell is empty, and no event can do without it.",
                    "Fill it, or say in the mapping when the event applies, as: when: COLUMN filled.");
        }
    }

    private static String from(Filling filling) {
        Set<String> columns = filling.columns();
        return columns.isEmpty() ? "" : " (column " + String.join(", ", columns) + ")";
    }

    /** What a fault in this field is called: with the columns that fill it. */
    String naming(String field) {
        String name = Column.ofField(field);
        Column column = Column.BY_NAME.get(name);
        Filling filling = column == null ? null : data.getOrDefault(column, attributes.get(column));
        return filling == null ? name : name + from(filling);
    }
}
