package wisp.indicator;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tech.tablesaw.api.IntColumn;
import wisp.cohort.Cohort;
import wisp.cohort.NavelDelay;
import wisp.event.EventType;
import wisp.history.LifeEvent;

/** What calves can be divided by; each is a column of the cohort. */
public enum Stratum {
    PEN("pen", "calving pen"),
    PLACE("pen", "born in a calving pen or elsewhere"),
    SEX("sex", "sex"),
    PARITY("dam_parity", "dam's parity"),
    EASE("ease", "calving ease"),
    BREED("breed", "breed"),
    TWIN("litter_size", "twin or single"),
    NAVEL_DELAY("navel_delay", "delay to navel treatment"),
    CLEANLINESS("cleanliness_score", "cleanliness score"),
    WEEK("week", "week of birth"),
    SEASON("season", "season");

    /** The stratum of calves of which nothing is recorded. */
    public static final String NOT_RECORDED = "not recorded";

    private final String column;
    private final String title;

    Stratum(String column, String title) {
        this.column = column;
        this.title = title;
    }

    /** Its name in addresses. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Its name in a sentence. */
    public String title() {
        return title;
    }

    /** The stratum of this name. */
    public static Optional<Stratum> named(String word) {
        return Arrays.stream(values()).filter(s -> s.word().equals(word)).findFirst();
    }

    /** All names, for an error's mend. */
    public static String allNames() {
        return Arrays.stream(values()).map(Stratum::word).collect(Collectors.joining(", "));
    }

    /** The stratum of {@link #PLACE} that holds calves born in a pen that was ever bedded or cleaned. */
    public static final String CALVING_PEN = "calving pen";

    /** The stratum of {@link #PLACE} that holds calves born anywhere else. */
    public static final String ELSEWHERE = "elsewhere";

    /** The stratum that a row falls in. */
    String of(Cohort cohort, int row, boolean placeOfRecord) {
        String name = this == PEN && placeOfRecord ? "cleanliness_pen" : column;
        if (cohort.table().column(name).isMissing(row)) {
            return NOT_RECORDED;
        }
        if (this == PLACE) {
            return place(cohort, cohort.table().stringColumn(name).get(row));
        }
        if (this == TWIN) {
            return cohort.table().intColumn(name).getInt(row) > 1 ? "twin" : "single";
        }
        return cohort.table().column(name) instanceof IntColumn numbers
                ? Integer.toString(numbers.getInt(row))
                : cohort.table().stringColumn(name).get(row);
    }

    /** No event says which places are calving pens; one that was ever bedded or cleaned is taken for one. */
    private static String place(Cohort cohort, String pen) {
        if (cohort.pens().values().stream().noneMatch(Stratum::kept)) {
            return NOT_RECORDED;
        }
        return kept(cohort.pens().getOrDefault(pen, List.of())) ? CALVING_PEN : ELSEWHERE;
    }

    private static boolean kept(List<LifeEvent> ofPen) {
        return ofPen.stream()
                .anyMatch(event -> event.type() == EventType.PEN_BEDDED || event.type() == EventType.PEN_CLEANED);
    }

    /** Rows by stratum, strata in their natural order and what is not recorded last. */
    Map<String, int[]> divide(Cohort cohort, int[] rows, boolean placeOfRecord) {
        Map<String, List<Integer>> byName = new LinkedHashMap<>();
        for (int row : rows) {
            byName.computeIfAbsent(of(cohort, row, placeOfRecord), n -> new ArrayList<>())
                    .add(row);
        }
        Map<String, int[]> divided = new LinkedHashMap<>();
        byName.keySet().stream()
                .sorted(order())
                .forEach(name -> divided.put(
                        name, byName.get(name).stream().mapToInt(i -> i).toArray()));
        return divided;
    }

    private Comparator<String> order() {
        Comparator<String> recordedFirst = Comparator.comparing(NOT_RECORDED::equals);
        if (this == NAVEL_DELAY) {
            return recordedFirst.thenComparing(NavelDelay.words()::indexOf);
        }
        return recordedFirst
                .thenComparing(name -> name.matches("\\d{1,9}") ? Integer.parseInt(name) : Integer.MAX_VALUE)
                .thenComparing(Comparator.naturalOrder());
    }
}
