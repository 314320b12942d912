package wisp.cli;

import java.io.PrintWriter;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import wisp.due.DueItem;
import wisp.due.DueList;
import wisp.due.DueState;
import wisp.report.DueSheet;
import wisp.report.DueWords;

/** Prints what is due as a table for people, and below it what each limit stands on. */
final class DueTable {
    private static final String ROW = "%-18s %-14s %-16s %-17s %-13s %s%n";
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm", Locale.UK);

    private DueTable() {}

    static void print(DueList list, PrintWriter out) {
        out.println("Due on " + MOMENT.format(list.at().atZone(list.zone())) + " (" + list.zone() + "): "
                + list.items().size());
        list.notices().forEach(out::println);
        if (list.items().isEmpty()) {
            return;
        }
        out.printf(ROW, "ends", "state", "pen", "calf", "asked by", "what");
        for (DueItem item : list.items()) {
            out.printf(
                    ROW,
                    DueWords.end(item, list.at()).line(),
                    item.state().word(),
                    item.pen() == null ? "–" : item.pen(),
                    item.tag() == null ? item.life().key() : item.tag(),
                    item.rule().basis().kind().word(),
                    item.title());
            if (item.state() == DueState.IMPOSSIBLE_NOW) {
                item.ways().forEach(way -> out.println("    " + way));
            }
        }
        out.println("What these limits stand on:");
        DueSheet.sources(list.items()).forEach(source -> out.println("    " + source));
    }
}
