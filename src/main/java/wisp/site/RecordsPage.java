package wisp.site;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import wisp.cohort.Cohort;
import wisp.history.Annals;
import wisp.history.FarmHistory;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;
import wisp.history.Withdrawn;
import wisp.log.DayHead;
import wisp.records.Records;
import wisp.report.MedicineSheet;

/**
 * How good the records are: what share of calves has what recorded, which events no figure counts and how to mend them,
 * what was corrected, and what is pending.
 *
 * @param complete shares of the calves asked for, beside other seasons
 * @param marks marked events of the whole log
 * @param tags tags to look at again, of the whole log; they count
 * @param corrections the newest corrections of the whole log, each with a way to withdraw it
 * @param corrected how many corrections stand
 * @param farm the farm's own events, newest first, each with a way to mend it
 * @param pens the newest events of each pen, each with a way to mend it
 * @param pending calves for which the end of what is recorded leaves figures open
 * @param left animals that left under a recorded withdrawal: true, so not marked, but never passed over
 * @param heads the log's head at the end of the newest days of recording, newest first
 * @param days how many days of recording there are
 */
public record RecordsPage(
        Frame frame,
        int calves,
        Completeness complete,
        List<Row> marks,
        List<TagToLookAt> tags,
        List<Corrected> corrections,
        int corrected,
        List<Kept> farm,
        List<Kept> pens,
        List<PendingCalves> pending,
        List<Gone> left,
        List<Head> heads,
        int days) {
    private static final int HEADS_SHOWN = 14;
    private static final int CORRECTIONS_SHOWN = 30;
    private static final int PEN_EVENTS_SHOWN = 5;

    /**
     * One marked event and whose it is.
     *
     * @param name what its subject is called, by its tag where it has one
     */
    public record Row(String subject, String name, String href, CalfPage.Marked mark, Mark raw, ZoneId zone) {}

    /** One correction and whose event it corrects. */
    public record Corrected(String subject, String href, CalfPage.Replaced what) {}

    /** One event of a pen or of the farm, and where it is mended; nowhere on a past day. */
    public record Kept(String subject, String what, String when, String details, String mendHref) {}

    /** An animal that left under withdrawal. */
    public record Gone(String name, String href, String sentence) {}

    /** The log's newest event when a day ended. */
    public record Head(String day, long sequence, String hash) {
        Head(DayHead day) {
            this(Shown.day(day.day()), day.head().sequence(), day.head().hash());
        }
    }

    static RecordsPage of(Asked asked, Records records) {
        Frame frame = Frame.of(asked, "Records", "/records", Map.of());
        Cohort cohort = asked.cohort();
        List<Corrected> corrections = corrections(asked, frame.links());
        List<DayHead> days = records.dayHeads().days();
        List<Head> heads = new ArrayList<>();
        days.subList(Math.max(0, days.size() - HEADS_SHOWN), days.size()).forEach(day -> heads.add(0, new Head(day)));
        return new RecordsPage(
                frame,
                asked.selection().calves(cohort).length,
                Completeness.of(asked, frame.links()),
                rows(cohort, frame.links(), asked.selection().asOf() == null),
                TagToLookAt.of(cohort, frame.links(), asked.selection().asOf() == null ? frame.links() : null),
                corrections.subList(0, Math.min(CORRECTIONS_SHOWN, corrections.size())),
                corrections.size(),
                farm(asked, frame.links()),
                pens(asked, frame.links()),
                PendingCalves.of(asked, records, frame.links()),
                left(cohort, frame.links()),
                heads,
                days.size());
    }

    private static List<Gone> left(Cohort cohort, Links links) {
        return MedicineSheet.left(cohort).stream()
                .map(one -> new Gone(
                        CalfName.of(cohort.lives().get(cohort.rowOf(one.calf())))
                                .both(),
                        links.calf(one.calf()),
                        one.sentence()))
                .toList();
    }

    /**
     * Every marked event.
     *
     * @param mendable whether it can be mended: only what is known now can
     */
    static List<Row> rows(Cohort cohort, Links links, boolean mendable) {
        List<Row> rows = new ArrayList<>();
        Links mending = mendable ? links : null;
        for (Life life : cohort.lives()) {
            for (Mark mark : life.marks()) {
                ZoneId zone = life.farm().zone();
                rows.add(new Row(
                        life.key(),
                        CalfName.of(life).both(),
                        links.calf(life.key()),
                        CalfPage.marked(mark, zone, mending),
                        mark,
                        zone));
            }
        }
        ZoneId zone = cohort.farm().latest().zone();
        cohort.annals()
                .forEach((subject, annals) -> annals.marks()
                        .forEach(mark -> rows.add(
                                new Row(subject, subject, "", CalfPage.marked(mark, zone, mending), mark, zone))));
        return rows;
    }

    private static List<Kept> farm(Asked asked, Links links) {
        Annals farm = asked.cohort().annals().get(FarmHistory.SUBJECT);
        return farm == null ? List.of() : kept(FarmHistory.SUBJECT, farm.events(), asked, links, Integer.MAX_VALUE);
    }

    private static List<Kept> pens(Asked asked, Links links) {
        List<Kept> pens = new ArrayList<>();
        asked.cohort().pens().forEach((pen, events) -> pens.addAll(kept(pen, events, asked, links, PEN_EVENTS_SHOWN)));
        return pens;
    }

    private static List<Kept> kept(String subject, List<LifeEvent> events, Asked asked, Links links, int most) {
        ZoneId zone = asked.cohort().farm().latest().zone();
        List<Kept> kept = new ArrayList<>();
        for (int i = events.size() - 1; i >= 0 && kept.size() < most; i--) {
            LifeEvent event = events.get(i);
            kept.add(new Kept(
                    subject,
                    EventWords.of(event),
                    Shown.moment(event.time(), event.timeKnown(), zone),
                    EventWords.details(event),
                    asked.selection().asOf() == null ? CalfPage.mendHref(event, links) : ""));
        }
        return kept;
    }

    /** Every marked event, as it is. */
    static List<Mark> marks(Cohort cohort) {
        List<Mark> marks = new ArrayList<>(cohort.strayMarks());
        cohort.lives().forEach(life -> marks.addAll(life.marks()));
        return marks;
    }

    private static List<Corrected> corrections(Asked asked, Links links) {
        record Whose(String name, String href, ZoneId zone, Withdrawn one) {}
        Cohort cohort = asked.cohort();
        List<Whose> all = new ArrayList<>();
        cohort.lives()
                .forEach(life -> life.withdrawn()
                        .forEach(one -> all.add(new Whose(
                                CalfName.of(life).both(),
                                links.calf(life.key()),
                                life.farm().zone(),
                                one))));
        ZoneId zone = cohort.farm().latest().zone();
        cohort.annals()
                .forEach((subject, annals) ->
                        annals.withdrawn().forEach(one -> all.add(new Whose(subject, "", zone, one))));
        all.sort(Comparator.comparing((Whose whose) -> whose.one().by().sequence())
                .reversed());
        Links mending = asked.selection().asOf() == null ? links : null;
        return all.stream()
                .map(whose -> new Corrected(
                        whose.name(), whose.href(), CalfPage.replaced(whose.one(), whose.zone(), mending)))
                .toList();
    }
}
