package wisp.question.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wisp.cohort.Cohort;
import wisp.event.Died;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.indicator.Conditions;

/**
 * Every recorded death of a season's calves by cause and age. A cause is what somebody wrote down and no diagnosis;
 * deaths without one are a row of their own.
 *
 * @param causes one row a cause, the most frequent first, what is not recorded and born dead at the end
 * @param all the deaths of all causes
 */
public record Deaths(List<Cause> causes, Cause all) {
    /** The row of deaths whose cause nobody wrote down. */
    public static final String NOT_RECORDED = "not recorded";

    /** The row of calves born dead, for which no cause is asked. */
    public static final String BORN_DEAD = "born dead";

    /**
     * One cause.
     *
     * @param cause in the words of the first record, or the condition's title
     * @param byAge the calves by age at death
     * @param total all of them
     * @param lastSeason how many calves of last season died of it, by age at death
     */
    public record Cause(
            String cause, Map<DeathAge, CalfList> byAge, CalfList total, Map<DeathAge, Integer> lastSeason) {

        /** How many calves of last season died of it at any age. */
        public int allLastSeason() {
            return lastSeason.values().stream().mapToInt(Integer::intValue).sum();
        }

        /** Calves dead between 24 h and 60 days. */
        public CalfList dead() {
            List<Integer> rows = byAge.entrySet().stream()
                    .filter(entry -> entry.getKey().beforeWeaning())
                    .flatMap(entry -> entry.getValue().rows().stream())
                    .toList();
            String of = cause.isEmpty() ? "" : ", cause: " + cause;
            return new CalfList("deaths.before-weaning." + cause, "Died from 24 h to 60 d" + of, rows);
        }

        /** How many those are. */
        public int beforeWeaning() {
            return dead().count();
        }
    }

    static Deaths of(Cohort cohort, int[] rows, int[] lastSeason, Conditions conditions) {
        Map<String, List<Integer>> now = byCause(cohort, rows, conditions);
        Map<String, List<Integer>> before = byCause(cohort, lastSeason, conditions);
        before.keySet().forEach(cause -> now.putIfAbsent(cause, List.of()));
        List<Cause> causes = new ArrayList<>();
        List<Integer> everyone = new ArrayList<>();
        now.forEach((cause, dead) -> {
            everyone.addAll(dead);
            causes.add(cause(cause, dead, before.getOrDefault(cause, List.of()), cohort));
        });
        causes.sort(Comparator.comparing((Cause cause) -> cause.cause().equals(BORN_DEAD))
                .thenComparing(cause -> cause.cause().equals(NOT_RECORDED))
                .thenComparing(cause -> -cause.total().count())
                .thenComparing(Cause::cause));
        List<Integer> allBefore = before.values().stream().flatMap(List::stream).toList();
        return new Deaths(causes, cause("", everyone, allBefore, cohort));
    }

    private static Cause cause(String name, List<Integer> dead, List<Integer> lastSeason, Cohort cohort) {
        Map<DeathAge, List<Integer>> ages = byAge(dead, cohort);
        Map<DeathAge, Integer> before = new EnumMap<>(DeathAge.class);
        byAge(lastSeason, cohort).forEach((age, rows) -> before.put(age, rows.size()));
        String of = name.isEmpty() ? "" : ", cause: " + name;
        Map<DeathAge, CalfList> byAge = new EnumMap<>(DeathAge.class);
        for (DeathAge age : DeathAge.values()) {
            String died = age == DeathAge.BORN_DEAD ? "Born dead" : "Died, " + age.words();
            String id = "deaths." + age.name().toLowerCase(Locale.ROOT) + "." + name;
            byAge.put(age, new CalfList(id, died + of, ages.get(age)));
        }
        return new Cause(name, byAge, new CalfList("deaths.any." + name, "Died" + of, dead), before);
    }

    private static Map<DeathAge, List<Integer>> byAge(List<Integer> dead, Cohort cohort) {
        Map<DeathAge, List<Integer>> ages = new EnumMap<>(DeathAge.class);
        for (DeathAge age : DeathAge.values()) {
            ages.put(age, new ArrayList<>());
        }
        dead.forEach(row -> ages.get(DeathAge.of(cohort.lives().get(row))).add(row));
        return ages;
    }

    private static Map<String, List<Integer>> byCause(Cohort cohort, int[] rows, Conditions conditions) {
        Map<String, String> spelled = new LinkedHashMap<>();
        Map<String, List<Integer>> dead = new LinkedHashMap<>();
        for (int row : rows) {
            Life life = cohort.lives().get(row);
            Exit exit = life.exit();
            if (exit != null && exit.death() && !exit.time().isAfter(cohort.cut())) {
                String cause = written(exit, conditions);
                String first = spelled.computeIfAbsent(cause.toLowerCase(Locale.ROOT), lower -> cause);
                dead.computeIfAbsent(first, c -> new ArrayList<>()).add(row);
            }
        }
        return dead;
    }

    private static String written(Exit exit, Conditions conditions) {
        if (exit.kind() == Exit.Kind.BORN_DEAD) {
            return BORN_DEAD;
        }
        String cause = exit.event().data() instanceof Died died ? died.cause() : null;
        if (cause == null || cause.isBlank()) {
            return NOT_RECORDED;
        }
        return conditions.named(cause);
    }
}
