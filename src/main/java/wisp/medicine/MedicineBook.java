package wisp.medicine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import wisp.cohort.Cohort;
import wisp.history.Life;

/**
 * The medicine book of a span of days: every product that an animal of the farm was given, whatever its season or pen.
 *
 * @param from the first local day
 * @param to the last local day, itself in the book
 * @param entries one a product and animal, in order of time
 * @param left animals that left in the span while a recorded withdrawal ran
 */
public record MedicineBook(LocalDate from, LocalDate to, List<MedicineEntry> entries, List<LeftUnderWithdrawal> left) {

    /**
     * The book of a span of days.
     *
     * @throws IllegalArgumentException where the span ends before it begins
     */
    public static MedicineBook of(Cohort cohort, LocalDate from, LocalDate to) {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("The book would end on " + to + ", before it begins on " + from + ".");
        }
        List<MedicineEntry> entries = new ArrayList<>();
        List<LeftUnderWithdrawal> left = new ArrayList<>();
        for (Life life : cohort.lives()) {
            for (MedicineEntry entry : EntriesOfLife.of(life)) {
                if (!entry.day().isBefore(from) && !entry.day().isAfter(to)) {
                    entries.add(entry);
                }
            }
            LeftUnderWithdrawal.of(life)
                    .filter(one -> !one.day().isBefore(from) && !one.day().isAfter(to))
                    .ifPresent(left::add);
        }
        entries.sort(MedicineEntry.ORDER);
        return new MedicineBook(from, to, List.copyOf(entries), List.copyOf(left));
    }

    /** Entries that lack something which a record should hold. */
    public List<MedicineEntry> incomplete() {
        return entries.stream().filter(entry -> !entry.missing().isEmpty()).toList();
    }

    /** How many animals stand in the book. */
    public long animals() {
        return entries.stream().map(entry -> entry.life().key()).distinct().count();
    }
}
