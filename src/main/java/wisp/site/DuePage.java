package wisp.site;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wisp.due.DueItem;
import wisp.due.DueList;
import wisp.due.DueRule;
import wisp.indicator.Definitions;
import wisp.indicator.Selection;
import wisp.report.DueWords;

/**
 * What is due, as a stock person works from it: the answer in words, the list, how it was worked out, cautions.
 *
 * @param counts what is overdue, closes today and so on; each opens its items
 * @param first the first thing to close, null where nothing does
 * @param moment what it is judged at, in words
 * @param narrowed which calves alone are listed, empty where all are
 * @param parts the list under its headings
 * @param recorded what the last tick recorded, null where this page came without one
 * @param rules each limit in use
 * @param ticks whether anything can be recorded here
 * @param token lets this page's forms record something
 * @param action where its forms are sent
 * @param alert what stopped the last tick, empty where nothing did
 */
public record DuePage(
        Frame frame,
        List<Count> counts,
        First first,
        String moment,
        String day,
        String narrowed,
        String wholeHref,
        List<Part> parts,
        Recorded recorded,
        List<Rule> rules,
        List<String> notices,
        List<String> pens,
        String order,
        String worker,
        boolean ticks,
        String token,
        String action,
        String zone,
        String alert,
        Map<String, String> hrefs) {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy, HH:mm", Locale.UK);

    /** So many things in one state. */
    public record Count(int number, String one, String many, String href, boolean pressing) {
        /** The count in words. */
        public String words() {
            return number + " " + (number == 1 ? one : many);
        }
    }

    /** The first thing to close. */
    public record First(String when, String what, String calf, String href) {}

    /** Items under one heading. */
    public record Part(String id, String title, List<DueRow> rows) {}

    /** What a tick recorded, and before which item it stood. */
    public record Recorded(List<Line> lines, String before) {
        /** One event. */
        public record Line(String what, String calf, String href, String when, String undoHref) {}
    }

    /** One limit and what it stands on. */
    public record Rule(
            String step,
            String limit,
            String kind,
            String place,
            String source,
            String status,
            String read,
            String remarks) {}

    /** What the page knows of the last tick. */
    record Last(Optional<DueRow.Returned> returned, Recorded recorded, String open, String alert) {
        static final Last NONE = new Last(Optional.empty(), null, "", "");
    }

    static DuePage of(DueAsked asked, Definitions definitions, String token, Last last) {
        DueList list = asked.list();
        Frame frame = Frame.of(asked.asked(), "Due", "/due", asked.kept()).ofOne();
        List<Part> parts = new ArrayList<>();
        DueSections.inOrder(asked)
                .forEach((title, items) -> parts.add(new Part(
                        id(title, asked),
                        title,
                        items.stream()
                                .map(item -> DueRow.of(item, asked, definitions, last.open(), last.returned()))
                                .toList())));
        return new DuePage(
                frame,
                counts(asked),
                first(asked),
                MOMENT.format(list.at().atZone(list.zone())),
                asked.kept().getOrDefault(DueAsked.ON, ""),
                narrowed(asked),
                whole(asked),
                parts,
                last.recorded(),
                rules(list),
                list.notices(),
                asked.pens(),
                asked.byPen() ? DueAsked.PEN : "time",
                asked.worker(),
                asked.ticks(),
                token,
                asked.to(Map.of()),
                list.zone().getId(),
                last.alert(),
                hrefs(asked));
    }

    private static Map<String, String> hrefs(DueAsked asked) {
        Map<String, String> hrefs = new LinkedHashMap<>();
        hrefs.put("time", asked.to(Map.of(DueAsked.ORDER, "")));
        hrefs.put("pen", asked.to(Map.of(DueAsked.ORDER, DueAsked.PEN)));
        hrefs.put("pdf", asked.to("/due.pdf", Map.of(DueAsked.WORKER, "", DueAsked.ORDER, "")));
        hrefs.put("csv", asked.to("/due.csv", Map.of(DueAsked.WORKER, "", DueAsked.ORDER, "")));
        return hrefs;
    }

    private static String id(String title, DueAsked asked) {
        for (DueSections.Part part : DueSections.Part.values()) {
            if (!asked.byPen() && part.title().equals(title)) {
                return part.id();
            }
        }
        return "pen-" + title.replaceAll("[^\\p{L}\\p{N}]+", "-");
    }

    /** In the order by pen the counts lead to the order by time, where their items stand together. */
    private static List<Count> counts(DueAsked asked) {
        String page = asked.byPen() ? asked.to(Map.of(DueAsked.ORDER, "")) : "";
        List<Count> counts = new ArrayList<>();
        for (DueSections.Part part : DueSections.Part.values()) {
            int number = DueSections.of(part, asked.list()).size();
            String href = page + "#" + part.id();
            if (number > 0) {
                counts.add(
                        switch (part) {
                            case OVERDUE -> new Count(number, "thing is overdue", "things are overdue", href, true);
                            case TODAY -> new Count(number, "closes today", "close today", href, true);
                            case NEXT -> new Count(number, "more is due now", "more are due now", href, false);
                            case SOON -> new Count(number, "is due soon", "are due soon", href, false);
                            case CLOSED ->
                                new Count(
                                        number,
                                        "can no longer be done in the usual way",
                                        "can no longer be done in the usual way",
                                        href,
                                        false);
                        });
            }
        }
        return counts;
    }

    private static First first(DueAsked asked) {
        DueList list = asked.list();
        return list.items().stream()
                .filter(item -> item.span().closes() != null)
                .filter(item -> DueSections.part(item, list) != DueSections.Part.OVERDUE
                        && DueSections.part(item, list) != DueSections.Part.CLOSED)
                .findFirst()
                .map(item -> new First(
                        at(DueWords.end(item, list.at())),
                        item.title(),
                        DueWords.name(item.life()),
                        "#" + DueRow.anchor(item)))
                .orElse(null);
    }

    private static String at(DueWords end) {
        String line = end.line();
        return line.startsWith("end of") ? "at the " + line : line.matches("\\d\\d:.*") ? "at " + line : "on " + line;
    }

    /** Which calves alone are listed, so that nobody takes a part for the whole. */
    private static String narrowed(DueAsked asked) {
        Map<String, String> use = inUse(asked);
        return use.entrySet().stream()
                .map(one -> switch (one.getKey()) {
                    case "season" -> "born in season " + one.getValue();
                    case "pen" -> "standing in " + one.getValue();
                    case "from" -> "born from " + one.getValue() + " on";
                    case "to" -> "born before " + one.getValue();
                    default -> one.getKey() + " " + one.getValue();
                })
                .collect(Collectors.joining(", "));
    }

    private static Map<String, String> inUse(DueAsked asked) {
        Map<String, String> use = new LinkedHashMap<>(asked.asked().parameters());
        use.keySet().removeAll(Set.of("as-of", "by"));
        use.values().removeIf(value -> value.equals(Selection.ALL));
        return use;
    }

    private static String whole(DueAsked asked) {
        Map<String, String> none = new LinkedHashMap<>();
        inUse(asked).keySet().forEach(name -> none.put(name, ""));
        return asked.to(none);
    }

    /** Each limit once, in the order of the steps. */
    private static List<Rule> rules(DueList list) {
        Map<String, Rule> rules = new LinkedHashMap<>();
        Set<String> titles = new TreeSet<>();
        for (DueItem item : list.items()) {
            String title = item.title().replaceAll(", \\d+ days?$", "");
            titles.add(title);
            rules.putIfAbsent(title + item.rule(), rule(title, item.rule()));
        }
        return titles.stream()
                .flatMap(title ->
                        rules.values().stream().filter(rule -> rule.step().equals(title)))
                .toList();
    }

    private static Rule rule(String title, DueRule rule) {
        return new Rule(
                title,
                rule.limit(),
                rule.basis().kind().word(),
                rule.place(),
                rule.basis().source(),
                rule.basis().status(),
                rule.basis().readOn(),
                rule.basis().remarks());
    }

    /** What is overdue or closes today. */
    public List<Count> pressing() {
        return counts.stream().filter(Count::pressing).toList();
    }

    /** The other counts. */
    public List<Count> resting() {
        return counts.stream().filter(count -> !count.pressing()).toList();
    }

    /** Whether the last tick's line stands at the end of the list, as nothing follows it any more. */
    public boolean recordedAtEnd() {
        return recorded != null
                && parts.stream()
                        .flatMap(part -> part.rows().stream())
                        .noneMatch(row -> row.anchor().equals(recorded.before()));
    }
}
