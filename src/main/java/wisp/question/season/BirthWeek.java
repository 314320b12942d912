package wisp.question.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wisp.cohort.Cohort;
import wisp.history.Exit;
import wisp.history.Life;

/**
 * One week's births.
 *
 * @param monday the week's first day
 * @param born the calves born in it
 * @param bornDead how many of them were born dead
 */
public record BirthWeek(LocalDate monday, CalfList born, int bornDead) {

    /** Every week from the first birth to the last; one without a birth is among them. */
    static List<BirthWeek> of(Cohort cohort, int[] rows) {
        TreeMap<LocalDate, List<Integer>> byMonday = new TreeMap<>();
        for (int row : rows) {
            byMonday.computeIfAbsent(Weeks.monday(cohort.lives().get(row).birthDate()), monday -> new ArrayList<>())
                    .add(row);
        }
        List<BirthWeek> weeks = new ArrayList<>();
        if (byMonday.isEmpty()) {
            return weeks;
        }
        for (LocalDate monday : Weeks.between(byMonday.firstKey(), byMonday.lastKey())) {
            weeks.add(week(monday, byMonday, cohort));
        }
        return weeks;
    }

    private static BirthWeek week(LocalDate monday, Map<LocalDate, List<Integer>> byMonday, Cohort cohort) {
        List<Integer> born = byMonday.getOrDefault(monday, List.of());
        int dead = (int) born.stream()
                .map(cohort.lives()::get)
                .filter(BirthWeek::bornDead)
                .count();
        return new BirthWeek(monday, new CalfList("born." + monday, "Born in the week from " + monday, born), dead);
    }

    private static boolean bornDead(Life life) {
        return life.exit() != null && life.exit().kind() == Exit.Kind.BORN_DEAD;
    }
}
