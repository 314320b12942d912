package wisp.indicator;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wisp.cohort.Cohort;
import wisp.event.Fault;
import wisp.event.Rfc3339;

/**
 * Reads a selection from parameters, on the command line and in addresses alike, and says all that is wrong at once.
 */
public final class SelectionReader {
    /** The parameters that every figure takes. */
    public static final Set<String> NAMES =
            Set.of("season", "from", "to", "as-of", "by", "pen", "sex", "parity", "breed");

    private final Map<String, String> parameters;
    private final List<Fault> faults = new ArrayList<>();

    private SelectionReader(Map<String, String> parameters) {
        this.parameters = parameters;
    }

    /** What was read: the selection, and its faults. */
    public record Read(Selection selection, List<Fault> faults) {}

    /**
     * Reads parameters; empty values count as not given.
     *
     * @param now the cohort of this moment, for its seasons and the farm's zone
     */
    public static Read read(Map<String, String> parameters, Cohort now) {
        SelectionReader reader = new SelectionReader(parameters);
        ZoneId zone = now.farm().latest().zone();
        Selection selection = new Selection(
                reader.season(now),
                reader.date("from"),
                reader.date("to"),
                reader.asOf(zone),
                reader.by(),
                reader.text("pen"),
                reader.sex(),
                reader.text("parity"),
                reader.text("breed"));
        if (selection.from() != null
                && selection.to() != null
                && !selection.from().isBefore(selection.to())) {
            reader.fault("to", "The span ends before it begins.", "Write the first day after the span.");
        }
        return new Read(selection, List.copyOf(reader.faults));
    }

    private String season(Cohort now) {
        String season = text("season");
        if (season == null || season.equals(Selection.ALL) || season.matches("\\d{4}")) {
            return season;
        }
        Set<String> known = new LinkedHashSet<>();
        now.farm().seasons().forEach(named -> known.add(named.name()));
        known.addAll(now.seasonsWithCalves());
        if (!known.contains(season)) {
            String all = known.isEmpty() ? "" : String.join(", ", known) + ", ";
            fault("season", "There is no season " + season + ".", "Write one of: " + all + "a year of birth, or all.");
        }
        return season;
    }

    private LocalDate date(String name) {
        String text = text(name);
        try {
            return text == null ? null : LocalDate.parse(text);
        } catch (DateTimeException wrong) {
            fault(name, "\"" + text + "\" is not a date.", "Write it as 2026-03-31.");
            return null;
        }
    }

    /** A moment, or a date that stands for the end of that day on the farm. */
    private Instant asOf(ZoneId zone) {
        String text = text("as-of");
        if (text == null) {
            return null;
        }
        if (text.matches("\\d{4}-\\d\\d-\\d\\d")) {
            LocalDate day = date("as-of");
            return day == null ? null : day.plusDays(1).atStartOfDay(zone).toInstant();
        }
        OffsetDateTime time = Rfc3339.read(text.replace(' ', '+'), (problem, mend) -> fault("as-of", problem, mend));
        return time == null ? null : time.toInstant();
    }

    private Stratum by() {
        String word = text("by");
        if (word == null) {
            return null;
        }
        Stratum stratum = Stratum.named(word).orElse(null);
        if (stratum == null) {
            fault("by", "Figures are not divided by " + word + ".", "Write one of: " + Stratum.allNames() + ".");
        }
        return stratum;
    }

    private String sex() {
        String sex = text("sex");
        if (sex != null && !Set.of("female", "male", "unknown").contains(sex)) {
            fault("sex", "There is no sex " + sex + ".", "Write female, male or unknown.");
        }
        return sex;
    }

    private String text(String name) {
        String value = parameters.get(name);
        return value == null || value.isBlank() ? null : value.strip();
    }

    private void fault(String field, String problem, String mend) {
        faults.add(new Fault(field, problem, mend));
    }
}
