package wisp.site;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import wisp.cohort.Cohort;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.Mark;

/**
 * How good the records are: what share of calves has what recorded, and which events no figure counts and why.
 *
 * @param complete shares of the calves asked for
 * @param marks marked events of the whole log
 */
public record RecordsPage(Frame frame, int calves, List<Share> complete, List<Row> marks) {

    /** How many calves have something recorded. */
    public record Share(String what, int with, int of) {
        /** In percent. */
        public String percent() {
            return of == 0 ? "–" : Shown.decimals(100.0 * with / of, of < 100 ? 0 : 1) + " %";
        }
    }

    /** One marked event and whose it is. */
    public record Row(String subject, String href, CalfPage.Marked mark) {}

    static RecordsPage of(Asked asked) {
        Frame frame = Frame.of(asked, "Records", "/records", Map.of());
        Cohort cohort = asked.cohort();
        List<Life> lives = new ArrayList<>();
        for (int row : asked.selection().calves(cohort)) {
            lives.add(cohort.lives().get(row));
        }
        List<Row> rows = new ArrayList<>();
        ZoneId zone = cohort.farm().latest().zone();
        for (Life life : cohort.lives()) {
            life.marks()
                    .forEach(mark ->
                            rows.add(new Row(life.key(), frame.links().calf(life.key()), CalfPage.marked(mark, zone))));
        }
        cohort.strayMarks().forEach(mark -> rows.add(new Row("", "", CalfPage.marked(mark, zone))));
        return new RecordsPage(frame, lives.size(), shares(lives), rows);
    }

    /** Every marked event. */
    static List<Mark> marks(Cohort cohort) {
        List<Mark> marks = new ArrayList<>(cohort.strayMarks());
        cohort.lives().forEach(life -> marks.addAll(life.marks()));
        return marks;
    }

    private static List<Share> shares(List<Life> lives) {
        List<Life> alive = lives.stream().filter(life -> life.birth().alive()).toList();
        Map<String, EventType> asked = new LinkedHashMap<>();
        asked.put("Navel treatment, of calves born alive", EventType.NAVEL_TREATED);
        asked.put("Cleanliness score, of calves born alive", EventType.CLEANLINESS_SCORED);
        asked.put("Colostrum, of calves born alive", EventType.COLOSTRUM_FED);
        asked.put("Ear tag, of calves born alive", EventType.TAG_FITTED);
        List<Share> shares = new ArrayList<>();
        shares.add(new Share("Hour of birth", count(lives, Life::birthTimeKnown), lives.size()));
        shares.add(new Share("Calving pen", count(lives, life -> life.birth().pen() != null), lives.size()));
        asked.forEach((what, type) -> shares.add(new Share(what, count(alive, life -> has(life, type)), alive.size())));
        return shares;
    }

    private static boolean has(Life life, EventType type) {
        return life.events().stream().anyMatch(event -> event.type() == type);
    }

    private static int count(List<Life> lives, Predicate<Life> condition) {
        return (int) lives.stream().filter(condition).count();
    }
}
