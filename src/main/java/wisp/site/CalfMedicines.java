package wisp.site;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import wisp.history.Life;
import wisp.history.MeatWithdrawal;

/**
 * The medicines that a calf was given and how long each keeps it from slaughter for food.
 *
 * @param warning the one thing to know before the animal goes anywhere, empty where no medicine is recorded
 * @param alarm true where it left, or stands, under withdrawal, or where a withdrawal is not recorded
 * @param treatments one a treatment
 */
public record CalfMedicines(String warning, boolean alarm, List<Treatment> treatments) {
    /** One treatment and the end of its withdrawal. */
    public record Treatment(String medicine, String given, String days, String ends, String note) {}

    /**
     * The medicines of a calf.
     *
     * @param now the moment that is asked about: the day asked for, else the clock
     */
    static CalfMedicines of(Life life, Instant now) {
        List<MeatWithdrawal> all = MeatWithdrawal.of(life);
        ZoneId zone = life.farm().zone();
        List<Treatment> treatments =
                all.stream().map(one -> treatment(one, zone)).toList();
        if (all.isEmpty()) {
            return new CalfMedicines("", false, treatments);
        }
        Instant end = MeatWithdrawal.lastEnd(all);
        String last = end == null ? "" : day(all, end);
        boolean unknown = all.stream().anyMatch(one -> one.end() == null);
        if (life.exit() != null && life.exit().death()) {
            String to = end == null ? "" : " Its recorded meat withdrawal was to the end of " + last + ".";
            return new CalfMedicines("It was treated and has died." + to, false, treatments);
        }
        List<String> parts = new ArrayList<>();
        boolean left = life.exit() != null
                && all.stream().anyMatch(one -> one.runsAt(life.exit().time()));
        boolean runs = end != null && now.isBefore(end);
        if (left) {
            parts.add("It left under withdrawal: not for food before " + last
                    + " is over. Whoever has it now must know.");
        } else if (end != null) {
            parts.add((runs
                            ? "Not for food: the recorded meat withdrawal runs to the end of "
                            : "The recorded meat withdrawal ended with ")
                    + last + ".");
        }
        if (unknown) {
            parts.add("A treatment has no withdrawal period recorded: look it up on the label before this animal goes"
                    + " for food.");
        }
        return new CalfMedicines(String.join(" ", parts), left || unknown || runs, treatments);
    }

    private static Treatment treatment(MeatWithdrawal one, ZoneId zone) {
        boolean recorded = one.lastDay() != null;
        long days = recorded
                ? one.lastDay().toEpochDay()
                        - LocalDate.ofInstant(one.treatment().time(), zone).toEpochDay()
                : 0;
        return new Treatment(
                one.medicine(),
                Shown.moment(one.treatment().time(), one.treatment().timeKnown(), zone),
                recorded ? Long.toString(days) : "not recorded",
                recorded ? Shown.day(one.lastDay()) : "unknown",
                one.counts() ? "" : "This treatment is marked and no figure counts it, but it may have been given.");
    }

    private static String day(List<MeatWithdrawal> all, Instant end) {
        return all.stream()
                .filter(one -> end.equals(one.end()))
                .map(one -> Shown.day(one.lastDay()))
                .findFirst()
                .orElseThrow();
    }
}
