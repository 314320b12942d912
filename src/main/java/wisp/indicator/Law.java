package wisp.indicator;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.event.Castrated;
import wisp.history.Life;

/**
 * The limits of one place that hold for calves of one enterprise born from a date on.
 *
 * @param place the id of its limits file
 * @param title the place's name
 * @param readOn when the file's sources were last checked
 * @param from the first local birth date that it holds for, null where it has no beginning
 * @param limits by section and name, such as {@code days.tags}
 */
public record Law(String place, String title, String readOn, LocalDate from, Map<String, Limit> limits) {
    /** The limit in hours for the first ear tag. */
    public static final String FIRST_TAG = "first-tag";

    /** The limits in days of life, by name. */
    public Map<String, DayLimit> days() {
        return section("days", DayLimit.class);
    }

    /** A limit in days of life. */
    public Optional<DayLimit> day(String name) {
        return limit("days." + name, DayLimit.class);
    }

    /** A limit in hours of age. */
    public Optional<Limit.Hours> hours(String name) {
        return limit("hours." + name, Limit.Hours.class);
    }

    /** A limit in days after another event: {@code sample-sent} after the sample, {@code registration} after tags. */
    public Optional<Limit.Span> after(String name) {
        return limit("after." + name, Limit.Span.class);
    }

    /** Days within which a lost tag is replaced. */
    public Optional<Limit.Span> lostTag() {
        return limit("lost_tag", Limit.Span.class);
    }

    /** How many tags a calf must bear. */
    public Optional<Limit.Duty> tagCount() {
        return limit("tag_count", Limit.Duty.class);
    }

    /** That a calf moves only when tagged. */
    public Optional<Limit.Duty> movement() {
        return limit("movement", Limit.Duty.class);
    }

    /** What a record of medicines holds and for how many years it is kept. */
    public Optional<Limit.Duty> medicineRecord() {
        return limit("medicine_record", Limit.Duty.class);
    }

    /** What holds for one method of castration, empty where the file does not speak of it. */
    public Optional<ProcedureLimit> castration(Castrated.Method method) {
        return limit("castration." + method.word(), ProcedureLimit.class);
    }

    /** What holds for each method of castration that the file speaks of. */
    public Map<String, ProcedureLimit> castration() {
        return section("castration", ProcedureLimit.class);
    }

    /** What holds for each method of disbudding that the file speaks of. */
    public Map<String, ProcedureLimit> disbudding() {
        return section("disbudding", ProcedureLimit.class);
    }

    /** What else the file tells, which sets no limit that can be reckoned. */
    public List<Limit.Duty> notes() {
        return List.copyOf(section("notes", Limit.Duty.class).values());
    }

    /** The law under which a calf lives: that of its farm at its birth, as it was on the day of its birth. */
    static Optional<Law> of(Life life, Optional<Jurisdiction> place) {
        return life.birthDate() == null
                ? Optional.empty()
                : place.flatMap(there -> there.on(life.birthDate(), life.farm().enterprise()));
    }

    private <T extends Limit> Optional<T> limit(String name, Class<T> kind) {
        return Optional.ofNullable(limits.get(name)).map(kind::cast);
    }

    private <T extends Limit> Map<String, T> section(String section, Class<T> kind) {
        Map<String, T> found = new LinkedHashMap<>();
        limits.forEach((name, limit) -> {
            if (name.startsWith(section + ".")) {
                found.put(name.substring(section.length() + 1), kind.cast(limit));
            }
        });
        return found;
    }
}
