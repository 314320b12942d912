package wisp.due;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import wisp.cohort.Cohort;
import wisp.history.Life;
import wisp.indicator.Selection;

/**
 * What is due in a herd at a moment: what can still be done in the order in which it ends, then what is no more
 * possible.
 *
 * @param at the moment
 * @param zone the farm's clocks
 * @param items what somebody has to think of
 * @param notices what a reader must know of the list as a whole
 */
public record DueList(Instant at, ZoneId zone, List<DueItem> items, List<String> notices) {
    private static final Comparator<DueItem> ORDER = Comparator.comparing(
                    (DueItem item) -> item.state() == DueState.IMPOSSIBLE_NOW)
            .thenComparing(item -> item.span().closes(), Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(item -> item.life().key());

    /**
     * The list for the calves asked for; without a season it is of all seasons, and {@code pen} means where a calf
     * stands now, not where it was born.
     */
    public static DueList of(Due due, Cohort cohort, Selection asked, Instant at) {
        List<DueItem> items = new ArrayList<>();
        Set<String> unknown = new LinkedHashSet<>();
        for (int row : everywhere(asked).calves(cohort)) {
            Life life = cohort.lives().get(row);
            if (life.exit() != null
                    && !life.exit().death()
                    && !life.exit().time().isAfter(at)) {
                continue; // it left and needs nothing here
            }
            List<DueItem> open =
                    due.of(life, row, at).stream().filter(DueItem::listed).toList();
            open.stream()
                    .filter(item -> asked.pen() == null || asked.pen().equals(item.pen()))
                    .forEach(items::add);
            if (life.exit() == null && due.definitions().law(life).isEmpty()) {
                unknown.add(life.farm().jurisdiction());
            }
        }
        items.sort(ORDER);
        return new DueList(at, cohort.farm().latest().zone(), List.copyOf(items), notices(unknown, cohort));
    }

    /** The start of a day by the farm's clocks: the moment at which that day's list is judged. */
    public static Instant morning(LocalDate day, Cohort cohort) {
        return day.atStartOfDay(cohort.farm().latest().zone()).toInstant();
    }

    /** The same list by the pen that each calf stands in, in order of its name; calves of no known pen last. */
    public Map<String, List<DueItem>> byPen() {
        Map<String, List<DueItem>> named = new TreeMap<>();
        List<DueItem> nowhere = new ArrayList<>();
        for (DueItem item : items) {
            if (item.pen() == null) {
                nowhere.add(item);
            } else {
                named.computeIfAbsent(item.pen(), pen -> new ArrayList<>()).add(item);
            }
        }
        Map<String, List<DueItem>> all = new LinkedHashMap<>(named);
        if (!nowhere.isEmpty()) {
            all.put("", nowhere);
        }
        return all;
    }

    private static Selection everywhere(Selection asked) {
        return new Selection(
                asked.season() == null ? Selection.ALL : asked.season(),
                asked.from(),
                asked.to(),
                asked.asOf(),
                null,
                null,
                asked.sex(),
                asked.parity(),
                asked.breed());
    }

    private static List<String> notices(Set<String> unknown, Cohort cohort) {
        List<String> notices = new ArrayList<>();
        notices.add("Local law and the vet decide; each limit says what it stands on and when that was last checked.");
        if (!cohort.farm().latest().described()) {
            notices.add("The farm was never described: clocks of London, the limits of England and dairy are taken for"
                    + " granted.");
        }
        for (String place : unknown) {
            notices.add("No limits are on record for " + place + "; only good practice is listed for its calves. "
                    + "Add a file analytics/limits/" + place + ".yaml to the data folder.");
        }
        return notices;
    }
}
