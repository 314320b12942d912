package wisp.site;

import java.util.function.Function;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import wisp.due.DueItem;
import wisp.due.DueList;

/** What is due as a table, a line a step with a calf. */
final class DueCsv {
    private DueCsv() {}

    static Table of(DueList list) {
        Table table = Table.create("due");
        add(table, "calf", list, item -> item.life().key());
        add(table, "tag", list, DueItem::tag);
        add(table, "pen", list, DueItem::pen);
        add(table, "step", list, DueItem::step);
        add(table, "title", list, DueItem::title);
        add(table, "event", list, item -> item.event().wireName());
        add(table, "state", list, item -> item.state().word());
        add(
                table,
                "opens",
                list,
                item -> CalfJson.time(item.span().opens(), item.life().farm().zone()));
        add(
                table,
                "closes",
                list,
                item -> item.span().closes() == null
                        ? ""
                        : CalfJson.time(item.span().closes(), item.life().farm().zone()));
        add(table, "limit", list, item -> item.rule().limit());
        add(table, "kind", list, item -> item.rule().basis().kind().word());
        add(table, "place", list, item -> item.rule().place());
        add(table, "source", list, item -> item.rule().basis().source());
        add(table, "status", list, item -> item.rule().basis().status());
        add(table, "read_on", list, item -> item.rule().basis().readOn());
        add(table, "why", list, DueItem::why);
        add(table, "ways_left", list, item -> String.join(" | ", item.ways()));
        add(table, "cautions", list, item -> String.join(" | ", item.cautions()));
        return table;
    }

    private static void add(Table table, String name, DueList list, Function<DueItem, String> cell) {
        StringColumn column = StringColumn.create(name);
        for (DueItem item : list.items()) {
            String text = cell.apply(item);
            column.append(text == null ? "" : text);
        }
        table.addColumns(column);
    }
}
