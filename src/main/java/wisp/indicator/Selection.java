package wisp.indicator;

import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import wisp.cohort.Cohort;
import wisp.history.Life;

/**
 * Which calves a figure is asked for. Null means that nothing is asked.
 *
 * @param season a named season, a calendar year of birth, or {@code all}; null for the season of the newest birth
 * @param from first local birth date
 * @param to first local birth date that is no more in it
 * @param asOf the moment whose knowledge counts; null for now
 * @param by what to divide by
 * @param pen calving pen
 * @param sex female, male or unknown
 * @param parity the dam's parity
 * @param breed breed
 */
public record Selection(
        String season,
        LocalDate from,
        LocalDate to,
        Instant asOf,
        Stratum by,
        String pen,
        String sex,
        String parity,
        String breed) {
    /** Everything of the newest season. */
    public static final Selection NEWEST = new Selection(null, null, null, null, null, null, null, null, null);

    /** The parameters that narrow the calves beside the season. */
    public static final List<String> FILTERS = List.of("from", "to", "pen", "sex", "parity", "breed");

    /** Every season. */
    public static final String ALL = "all";

    /** This selection of another season. */
    public Selection ofSeason(String other) {
        return new Selection(other, from, to, asOf, by, pen, sex, parity, breed);
    }

    /** This selection divided by something else, or by nothing. */
    public Selection by(Stratum other) {
        return new Selection(season, from, to, asOf, other, pen, sex, parity, breed);
    }

    /** The season that is meant in a cohort. */
    public String seasonIn(Cohort cohort) {
        return season == null ? cohort.newestSeason() : season;
    }

    /** Whether anything narrows the calves beside the season. */
    public boolean filtered() {
        return from != null || to != null || pen != null || sex != null || parity != null || breed != null;
    }

    /** The rows of the calves that are asked for, by the pen of birth. */
    public int[] calves(Cohort cohort) {
        return rows(cohort, false);
    }

    /** The rows of the calves that are asked for; animals without a recorded birth are never among them. */
    int[] rows(Cohort cohort, boolean placeOfRecord) {
        String wanted = seasonIn(cohort);
        boolean named = cohort.farm().seasons().stream().anyMatch(s -> s.name().equals(wanted));
        boolean year = !named && wanted.matches("\\d{4}");
        StringColumn season = cohort.table().stringColumn("season");
        return IntStream.range(0, cohort.lives().size())
                .filter(row -> cohort.lives().get(row).born() != null)
                .filter(row -> wanted.equals(ALL)
                        || (year
                                ? cohort.lives().get(row).birthDate().getYear() == Integer.parseInt(wanted)
                                : wanted.equals(season.get(row))))
                .filter(row -> born(cohort.lives().get(row)))
                .filter(row -> matches(cohort, row, placeOfRecord))
                .toArray();
    }

    private boolean born(Life life) {
        return (from == null || !life.birthDate().isBefore(from))
                && (to == null || life.birthDate().isBefore(to));
    }

    private boolean matches(Cohort cohort, int row, boolean placeOfRecord) {
        Table table = cohort.table();
        return (pen == null || pen.equals(Stratum.PEN.of(cohort, row, placeOfRecord)))
                && (sex == null || sex.equals(table.stringColumn("sex").get(row)))
                && (parity == null || parity.equals(Stratum.PARITY.of(cohort, row, false)))
                && (breed == null || breed.equals(table.stringColumn("breed").get(row)));
    }

    /** What is asked, by the names of the parameters, in a fixed order. */
    public Map<String, String> parameters() {
        Map<String, String> parameters = new LinkedHashMap<>();
        put(parameters, "season", season);
        put(parameters, "from", from);
        put(parameters, "to", to);
        put(parameters, "as-of", asOf);
        put(parameters, "by", by == null ? null : by.word());
        put(parameters, "pen", pen);
        put(parameters, "sex", sex);
        put(parameters, "parity", parity);
        put(parameters, "breed", breed);
        return parameters;
    }

    private static void put(Map<String, String> parameters, String name, Object value) {
        if (value != null) {
            parameters.put(name, value.toString());
        }
    }
}
