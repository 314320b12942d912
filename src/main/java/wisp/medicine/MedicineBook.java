package wisp.medicine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import wisp.cohort.Cohort;
import wisp.history.Farm;
import wisp.history.FarmHistory;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.indicator.Definitions;

/**
 * The medicine book of a span of days: every product that an animal of the farm was given, whatever its season or pen.
 *
 * @param from the first local day
 * @param to the last local day, itself in the book
 * @param entries one a product and animal, in order of time
 * @param left animals that left in the span while a recorded withdrawal ran
 * @param laws what the law of the farm's place asked of a record on the days of its entries, and on the last day
 */
public record MedicineBook(
        LocalDate from,
        LocalDate to,
        List<MedicineEntry> entries,
        List<LeftUnderWithdrawal> left,
        List<RecordLaw> laws) {

    /**
     * The book of a span of days.
     *
     * @throws IllegalArgumentException where the span ends before it begins
     */
    public static MedicineBook of(Cohort cohort, Definitions definitions, LocalDate from, LocalDate to) {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("The book would end on " + to + ", before it begins on " + from + ".");
        }
        List<MedicineEntry> entries = new ArrayList<>();
        List<LeftUnderWithdrawal> left = new ArrayList<>();
        FarmHistory farm = cohort.farm();
        for (Life life : cohort.lives()) {
            for (MedicineEntry entry :
                    EntriesOfLife.of(life, event -> law(definitions, farm.at(event.time()), event))) {
                if (!entry.day().isBefore(from) && !entry.day().isAfter(to)) {
                    entries.add(entry);
                }
            }
            LeftUnderWithdrawal.of(life)
                    .filter(one -> !one.day().isBefore(from) && !one.day().isAfter(to))
                    .ifPresent(left::add);
        }
        entries.sort(MedicineEntry.ORDER);
        Farm last = farm.at(
                to.plusDays(1).atStartOfDay(farm.latest().zone()).toInstant().minusMillis(1));
        Set<RecordLaw> laws = new LinkedHashSet<>();
        entries.stream().map(MedicineEntry::law).filter(Objects::nonNull).forEach(laws::add);
        RecordLaw.of(definitions, last, to).ifPresent(laws::add);
        return new MedicineBook(from, to, List.copyOf(entries), List.copyOf(left), List.copyOf(laws));
    }

    private static RecordLaw law(Definitions definitions, Farm farm, LifeEvent event) {
        LocalDate day = event.time().atZone(farm.zone()).toLocalDate();
        return RecordLaw.of(definitions, farm, day).orElse(null);
    }

    /** Entries that lack something which a record should hold. */
    public List<MedicineEntry> incomplete() {
        return entries.stream().filter(entry -> !entry.missing().isEmpty()).toList();
    }

    /** Those of them that lack something which the law asks for. */
    public List<MedicineEntry> incompleteByLaw() {
        return entries.stream().filter(entry -> !entry.missingByLaw().isEmpty()).toList();
    }

    /** How many animals stand in the book. */
    public long animals() {
        return entries.stream().map(entry -> entry.life().key()).distinct().count();
    }
}
