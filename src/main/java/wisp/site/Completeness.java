package wisp.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import wisp.cohort.Cohort;
import wisp.event.ColostrumFed;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.indicator.Selection;

/**
 * What share of calves has what recorded, season by season.
 *
 * @param seasons the seasons shown, the one asked for first and then the newest others
 * @param rows one a thing to record
 */
public record Completeness(List<String> seasons, List<Row> rows) {
    private static final int MOST = 5;

    /** One thing to record: its share in each season. */
    public record Row(String what, List<Share> shares) {}

    /** How many calves have something recorded. */
    public record Share(int with, int of) {
        /** In percent. */
        public String percent() {
            return of == 0 ? "–" : Shown.decimals(100.0 * with / of, of < 100 ? 0 : 1) + " %";
        }
    }

    static Completeness of(Asked asked) {
        Cohort cohort = asked.cohort();
        List<String> seasons = new ArrayList<>(List.of(asked.season()));
        List<String> others = cohort.seasonsWithCalves();
        for (int i = others.size() - 1; i >= 0 && seasons.size() < MOST; i--) {
            if (!seasons.contains(others.get(i))) {
                seasons.add(others.get(i));
            }
        }
        List<List<Life>> lives =
                seasons.stream().map(season -> lives(asked, season)).toList();
        List<Row> rows = new ArrayList<>();
        ofEveryCalf().forEach((what, test) -> rows.add(row(what, lives, life -> true, test)));
        ofTheLiving()
                .forEach((what, test) ->
                        rows.add(row(what, lives, life -> life.birth().alive(), test)));
        return new Completeness(
                seasons.stream()
                        .map(season -> season.equals(Selection.ALL) ? "all seasons" : season)
                        .toList(),
                rows);
    }

    private static List<Life> lives(Asked asked, String season) {
        List<Life> lives = new ArrayList<>();
        for (int row : asked.selection().ofSeason(season).calves(asked.cohort())) {
            lives.add(asked.cohort().lives().get(row));
        }
        return lives;
    }

    private static Map<String, Predicate<Life>> ofEveryCalf() {
        Map<String, Predicate<Life>> all = new LinkedHashMap<>();
        all.put("Hour of birth", Life::birthTimeKnown);
        all.put("Calving pen", life -> life.birth().pen() != null);
        all.put("Dam", life -> life.birth().dam() != null);
        all.put("Calving ease", life -> life.birth().ease() != null);
        all.put("Birth weight", life -> life.birth().weightKg() != null);
        return all;
    }

    private static Map<String, Predicate<Life>> ofTheLiving() {
        Map<String, Predicate<Life>> living = new LinkedHashMap<>();
        living.put("Navel treatment, born alive", has(EventType.NAVEL_TREATED));
        living.put("Cleanliness score, born alive", has(EventType.CLEANLINESS_SCORED));
        living.put("Colostrum, born alive", has(EventType.COLOSTRUM_FED));
        living.put(
                "Colostrum with its volume, born alive",
                life -> life.events().stream()
                        .map(event -> event.data() instanceof ColostrumFed fed ? fed.volumeL() : null)
                        .anyMatch(Objects::nonNull));
        living.put("Blood test, born alive", has(EventType.BLOOD_TESTED));
        living.put("Ear tag, born alive", has(EventType.TAG_FITTED));
        living.put("Registration, born alive", has(EventType.REGISTERED));
        return living;
    }

    private static Predicate<Life> has(EventType type) {
        return life -> life.events().stream().anyMatch(event -> event.type() == type);
    }

    private static Row row(String what, List<List<Life>> seasons, Predicate<Life> who, Predicate<Life> test) {
        List<Share> shares = new ArrayList<>();
        for (List<Life> lives : seasons) {
            List<Life> of = lives.stream().filter(who).toList();
            shares.add(new Share((int) of.stream().filter(test).count(), of.size()));
        }
        return new Row(what, shares);
    }
}
