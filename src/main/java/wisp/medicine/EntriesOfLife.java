package wisp.medicine;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import wisp.event.Castrated;
import wisp.event.Disbudded;
import wisp.event.Relief;
import wisp.event.Treated;
import wisp.event.Vaccinated;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.MeatWithdrawal;

/** What one animal was given, its marked events among it, as lines of the medicine book. */
final class EntriesOfLife {
    private final Life life;
    private final Function<LifeEvent, RecordLaw> law;
    private final List<MedicineEntry> entries = new ArrayList<>();

    private EntriesOfLife(Life life, Function<LifeEvent, RecordLaw> law) {
        this.life = life;
        this.law = law;
    }

    /** The entries of one animal; {@code law} tells what a record of an event had to hold, null where none says. */
    static List<MedicineEntry> of(Life life, Function<LifeEvent, RecordLaw> law) {
        EntriesOfLife all = new EntriesOfLife(life, law);
        MeatWithdrawal.of(life).forEach(all::treatment);
        life.events().forEach(event -> all.others(event, true));
        life.marks().forEach(mark -> all.others(mark.event(), false));
        return all.entries;
    }

    private void treatment(MeatWithdrawal withdrawal) {
        LifeEvent event = withdrawal.treatment();
        Treated given = (Treated) event.data();
        Set<Particular> missing = EnumSet.noneOf(Particular.class);
        require(missing, given.dose() == null || given.doseUnit() == null, Particular.QUANTITY);
        require(missing, given.batch() == null, Particular.BATCH);
        require(missing, given.meatWithdrawalDays() == null, Particular.WITHDRAWAL);
        require(missing, given.givenBy() == null && event.recordedBy() == null, Particular.GIVEN_BY);
        require(missing, given.condition() == null, Particular.REASON);
        entries.add(new MedicineEntry(
                MedicineEntry.Kind.TREATMENT,
                life,
                event,
                given.medicine(),
                given.dose(),
                given.doseUnit(),
                given.route(),
                given.batch(),
                given.condition(),
                given.meatWithdrawalDays(),
                withdrawal.lastDay(),
                given.givenBy(),
                withdrawal.counts(),
                missing,
                law.apply(event)));
    }

    private void others(LifeEvent event, boolean counts) {
        if (event.data() instanceof Vaccinated given) {
            Set<Particular> missing =
                    given.batch() == null ? EnumSet.of(Particular.BATCH) : EnumSet.noneOf(Particular.class);
            add(MedicineEntry.Kind.VACCINE, event, given.vaccine(), given.batch(), "vaccination", counts, missing);
        } else if (event.data() instanceof Castrated done) {
            reliefs(event, done.anaesthetic(), done.painRelief(), "castration", counts);
        } else if (event.data() instanceof Disbudded done) {
            reliefs(event, done.anaesthetic(), done.painRelief(), "disbudding", counts);
        }
    }

    private void reliefs(LifeEvent event, Relief anaesthetic, Relief painRelief, String reason, boolean counts) {
        relief(MedicineEntry.Kind.ANAESTHETIC, event, anaesthetic, reason, counts);
        relief(MedicineEntry.Kind.PAIN_RELIEF, event, painRelief, reason, counts);
    }

    /**
     * One that was given; nothing is known of its quantity, batch and withdrawal, as the event has no place for them.
     */
    private void relief(MedicineEntry.Kind kind, LifeEvent event, Relief relief, String reason, boolean counts) {
        if (relief != null && relief.given()) {
            Set<Particular> missing = EnumSet.of(Particular.QUANTITY, Particular.BATCH, Particular.WITHDRAWAL);
            add(kind, event, relief.product() == null ? "" : relief.product(), null, reason, counts, missing);
        }
    }

    private void add(
            MedicineEntry.Kind kind,
            LifeEvent event,
            String medicine,
            String batch,
            String reason,
            boolean counts,
            Set<Particular> missing) {
        entries.add(new MedicineEntry(
                kind,
                life,
                event,
                medicine,
                null,
                null,
                null,
                batch,
                reason,
                null,
                null,
                null,
                counts,
                missing,
                law.apply(event)));
    }

    private static void require(Set<Particular> missing, boolean lacks, Particular particular) {
        if (lacks) {
            missing.add(particular);
        }
    }
}
