package wisp.report;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import wisp.cohort.Cohort;
import wisp.due.DueItem;
import wisp.due.DueList;
import wisp.due.DueState;
import wisp.indicator.Basis;
import wisp.log.DayHeads;

/**
 * What is due, on paper to take round: pen by pen, each step with a box to tick and room for hour and initials.
 *
 * @param farm the farm's name, empty where it was never described
 * @param moment the moment that it is judged at
 * @param sequence the newest event that is taken into account
 * @param asOf what the list knows of, in words, empty where it knows everything recorded
 * @param pens the pens in order
 * @param sources what each limit stands on
 * @param notices what a reader must know of the whole
 */
public record DueSheet(
        String farm,
        String moment,
        long sequence,
        String asOf,
        List<Pen> pens,
        List<String> sources,
        List<String> notices) {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy HH:mm", Locale.UK);

    /** What is due in one pen. */
    public record Pen(String name, List<Row> rows) {}

    /**
     * One step with one calf.
     *
     * @param boxed whether it can be done, and so has a box to tick
     */
    public record Row(
            String calf,
            String age,
            String title,
            String state,
            String end,
            String limit,
            String note,
            boolean boxed,
            boolean late) {}

    /** The sheet of a list. */
    public static DueSheet of(DueList list, Cohort cohort, String asOf) {
        boolean named = cohort.farm().latest().described();
        List<Pen> pens = new ArrayList<>();
        list.byPen()
                .forEach((pen, items) -> pens.add(new Pen(
                        pen.isEmpty() ? "No pen on record" : pen,
                        items.stream().map(item -> row(item, list)).toList())));
        ZoneId zone = list.zone();
        return new DueSheet(
                named ? cohort.farm().latest().name() : "",
                MOMENT.format(list.at().atZone(zone)) + " (" + zone.getId() + ")",
                cohort.sequence(),
                asOf,
                pens,
                sources(list.items()),
                list.notices());
    }

    /** Prints the sheet with the newest of the log's heads in its foot. */
    public byte[] pdf(DayHeads heads) {
        return PrintedPage.pdf("print/due.jte", this, heads);
    }

    private static Row row(DueItem item, DueList list) {
        boolean impossible = item.state() == DueState.IMPOSSIBLE_NOW;
        List<String> notes = new ArrayList<>();
        if (!item.why().isEmpty()) {
            notes.add(item.why());
        }
        notes.addAll(item.ways());
        return new Row(
                DueWords.name(item.life()),
                DueWords.age(item.life(), list.at()),
                item.title(),
                item.state().word(),
                DueWords.end(item, list.at()).line(),
                item.rule().limit() + " (" + item.rule().basis().kind().word() + ")",
                String.join(" ", notes),
                !impossible,
                impossible || item.state() == DueState.OVERDUE);
    }

    /** Each limit once, with what it stands on and when that was last read. */
    public static List<String> sources(List<DueItem> items) {
        Set<String> sources = new LinkedHashSet<>();
        for (DueItem item : items) {
            Basis basis = item.rule().basis();
            String place = item.rule().place().isEmpty() ? "" : item.rule().place() + ", ";
            String read = basis.readOn().isEmpty() ? "" : ", read " + basis.readOn();
            sources.add(item.rule().limit() + ": " + place + basis.kind().word() + ". " + basis.source() + " ("
                    + basis.status() + read + ")");
        }
        return List.copyOf(sources);
    }
}
