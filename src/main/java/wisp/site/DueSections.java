package wisp.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.due.DueItem;
import wisp.due.DueList;
import wisp.report.DueWords;

/** What is due in parts: by when it ends, or by pen for walking round. */
final class DueSections {
    /** A part of the list by when it ends. */
    enum Part {
        OVERDUE("overdue", "Overdue"),
        TODAY("today", "Closes today"),
        NEXT("next", "Due now, closes after today"),
        SOON("soon", "Soon"),
        CLOSED("closed", "Impossible now in the usual way");

        private final String id;
        private final String title;

        Part(String id, String title) {
            this.id = id;
            this.title = title;
        }

        String id() {
            return id;
        }

        String title() {
            return title;
        }
    }

    private DueSections() {}

    /** The part that an item belongs to. */
    static Part part(DueItem item, DueList list) {
        return switch (item.state()) {
            case OVERDUE -> Part.OVERDUE;
            case IMPOSSIBLE_NOW -> Part.CLOSED;
            case DUE_NOW -> {
                boolean ended = DueWords.lastDay(item) != null
                        && !DueWords.lastDay(item)
                                .isAfter(list.at().atZone(list.zone()).toLocalDate());
                yield ended ? Part.TODAY : Part.NEXT;
            }
            case SOON, LATER, DONE, NOT_NEEDED -> Part.SOON;
        };
    }

    static List<DueItem> of(Part part, DueList list) {
        return list.items().stream().filter(item -> part(item, list) == part).toList();
    }

    /** The items under their headings in the order asked for; headings without items are left out. */
    static Map<String, List<DueItem>> inOrder(DueAsked asked) {
        DueList list = asked.list();
        if (asked.byPen()) {
            Map<String, List<DueItem>> pens = new LinkedHashMap<>();
            list.byPen().forEach((pen, items) -> pens.put(pen.isEmpty() ? "No pen on record" : pen, items));
            return pens;
        }
        Map<String, List<DueItem>> parts = new LinkedHashMap<>();
        for (Part part : Part.values()) {
            List<DueItem> items = of(part, list);
            if (!items.isEmpty()) {
                parts.put(part.title(), items);
            }
        }
        return parts;
    }

    /** The anchors of the items in the order in which the page shows them. */
    static List<String> anchors(DueAsked asked) {
        List<String> anchors = new ArrayList<>();
        inOrder(asked).values().forEach(items -> items.forEach(item -> anchors.add(DueRow.anchor(item))));
        return anchors;
    }
}
