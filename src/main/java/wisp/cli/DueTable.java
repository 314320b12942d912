package wisp.cli;

import java.io.PrintWriter;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import wisp.due.DueItem;
import wisp.due.DueList;
import wisp.due.DueState;

/** Prints what is due as a table for people. */
final class DueTable {
    private static final String ROW = "%-18s %-15s %-14s %-16s %-14s %s%n";
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d MMM yyyy HH:mm", Locale.UK);

    private DueTable() {}

    static void print(DueList list, PrintWriter out) {
        out.println(
                "Due at " + list.at().atZone(list.zone()) + ": " + list.items().size());
        list.notices().forEach(out::println);
        out.printf(ROW, "closes", "state", "pen", "calf", "law", "what");
        for (DueItem item : list.items()) {
            out.printf(
                    ROW,
                    moment(item.span().closes(), item.life().farm().zone()),
                    item.state().word(),
                    item.pen() == null ? "–" : item.pen(),
                    item.tag() == null ? item.life().key() : item.tag(),
                    item.rule().basis().kind().word(),
                    item.title());
            if (item.state() == DueState.IMPOSSIBLE_NOW) {
                item.ways().forEach(way -> out.println("    " + way));
            }
        }
    }

    private static String moment(Instant moment, ZoneId zone) {
        return moment == null ? "–" : MOMENT.format(moment.atZone(zone));
    }
}
