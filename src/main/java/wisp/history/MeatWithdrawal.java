package wisp.history;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import wisp.event.Treated;

/**
 * How long one treatment keeps an animal from slaughter for food.
 *
 * <p>The last day is the local date of the treatment, by the farm's clocks, plus the {@code meat_withdrawal_days} that
 * were recorded with it; the withdrawal ends when that day ends. Counting to the end of the day never makes a period
 * shorter than the days on the label; the label and the vet decide. A period of 0 days is none: it ends as it begins.
 *
 * @param treatment the treatment
 * @param medicine what was given
 * @param lastDay the last day under withdrawal, null where no period was recorded
 * @param end the first moment after it, null where no period was recorded
 * @param counts false for a treatment that is marked: no figure counts it, but the medicine may be in the animal
 */
public record MeatWithdrawal(LifeEvent treatment, String medicine, LocalDate lastDay, Instant end, boolean counts) {

    /** Those of all an animal's treatments that nobody withdrew, marked ones among them, in order of time. */
    public static List<MeatWithdrawal> of(Life life) {
        List<MeatWithdrawal> all = new ArrayList<>();
        life.events().forEach(event -> add(all, event, life.farm().zone(), true));
        life.marks().forEach(mark -> add(all, mark.event(), life.farm().zone(), false));
        all.sort(Comparator.comparing(MeatWithdrawal::treatment, LifeEvent.ORDER));
        return List.copyOf(all);
    }

    /** The last moment at which any recorded withdrawal ends, or null where none has an end. */
    public static Instant lastEnd(List<MeatWithdrawal> withdrawals) {
        return withdrawals.stream()
                .map(MeatWithdrawal::end)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder())
                .orElse(null);
    }

    /** Whether the animal may not yet go for food at a time after the treatment, as far as recorded. */
    public boolean runsAt(Instant time) {
        return end != null && !time.isBefore(treatment.time()) && time.isBefore(end);
    }

    private static void add(List<MeatWithdrawal> all, LifeEvent event, ZoneId zone, boolean counts) {
        if (event.data() instanceof Treated treated) {
            Integer days = treated.meatWithdrawalDays();
            LocalDate last = days == null
                    ? null
                    : event.time().atZone(zone).toLocalDate().plusDays(days);
            Instant end = last == null
                    ? null
                    : days == 0
                            ? event.time()
                            : last.plusDays(1).atStartOfDay(zone).toInstant();
            all.add(new MeatWithdrawal(event, treated.medicine(), last, end, counts));
        }
    }
}
