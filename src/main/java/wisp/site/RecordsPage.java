package wisp.site;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import wisp.cohort.Cohort;
import wisp.history.Life;
import wisp.history.Mark;
import wisp.history.Withdrawn;
import wisp.indicator.Estimate;
import wisp.indicator.Indicator;
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
 * @param pending figures that the end of what is recorded leaves open for some calves
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
        List<Pending> pending,
        List<MedicineSheet.Gone> left,
        List<Head> heads,
        int days) {
    private static final int HEADS_SHOWN = 14;
    private static final int CORRECTIONS_SHOWN = 30;

    /** One marked event and whose it is. */
    public record Row(String subject, String href, CalfPage.Marked mark, Mark raw, ZoneId zone) {}

    /** One correction and whose event it corrects. */
    public record Corrected(String subject, String href, CalfPage.Replaced what) {}

    /** How many calves, or episodes, a figure still waits for. */
    public record Pending(String title, String href, int count, String calves) {}

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
                Completeness.of(asked),
                rows(cohort, frame.links(), asked.selection().asOf() == null),
                TagToLookAt.of(cohort, frame.links(), asked.selection().asOf() == null ? frame.links() : null),
                corrections.subList(0, Math.min(CORRECTIONS_SHOWN, corrections.size())),
                corrections.size(),
                pending(asked, records, frame.links()),
                MedicineSheet.left(cohort),
                heads,
                days.size());
    }

    /** Address of one animal. */
    public String calf(String key) {
        return frame.to(Links.calfPath(key));
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
                rows.add(new Row(life.key(), links.calf(life.key()), CalfPage.marked(mark, zone, mending), mark, zone));
            }
        }
        ZoneId zone = cohort.farm().latest().zone();
        cohort.strayMarks().forEach(mark -> rows.add(new Row("", "", CalfPage.marked(mark, zone, null), mark, zone)));
        return rows;
    }

    /** Every marked event, as it is. */
    static List<Mark> marks(Cohort cohort) {
        List<Mark> marks = new ArrayList<>(cohort.strayMarks());
        cohort.lives().forEach(life -> marks.addAll(life.marks()));
        return marks;
    }

    private static List<Corrected> corrections(Asked asked, Links links) {
        record Whose(Life life, Withdrawn one) {}
        List<Whose> all = new ArrayList<>();
        asked.cohort().lives().forEach(life -> life.withdrawn().forEach(one -> all.add(new Whose(life, one))));
        all.sort(Comparator.comparing((Whose whose) -> whose.one().by().sequence())
                .reversed());
        Links mending = asked.selection().asOf() == null ? links : null;
        return all.stream()
                .map(whose -> new Corrected(
                        whose.life().key(),
                        links.calf(whose.life().key()),
                        CalfPage.replaced(whose.one(), whose.life().farm().zone(), mending)))
                .toList();
    }

    private static List<Pending> pending(Asked asked, Records records, Links links) {
        List<Pending> pending = new ArrayList<>();
        for (Indicator indicator : records.definitions().indicators()) {
            Estimate estimate = records.figures().plain(indicator, asked.cohort(), asked.selection());
            if (estimate.pending() > 0) {
                List<String> calves = estimate.verdicts().stream()
                        .filter(CalvesBehind.Part.PENDING::holds)
                        .map(verdict ->
                                asked.cohort().lives().get(verdict.row()).key())
                        .distinct()
                        .toList();
                pending.add(new Pending(
                        indicator.title(),
                        links.calves(estimate, CalvesBehind.Part.PENDING),
                        estimate.pending(),
                        few(calves)));
            }
        }
        return pending;
    }

    private static String few(List<String> calves) {
        int shown = Math.min(3, calves.size());
        String names = String.join(", ", calves.subList(0, shown));
        return calves.size() > shown ? names + " and " + (calves.size() - shown) + " more" : names;
    }
}
