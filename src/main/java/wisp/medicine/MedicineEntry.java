package wisp.medicine;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wisp.event.TagFitted;
import wisp.history.Life;
import wisp.history.LifeEvent;

/**
 * One line of the medicine book: one product given to one animal.
 *
 * @param kind what sort of product
 * @param life the animal
 * @param event the event that tells of it
 * @param medicine the product's name; of an anaesthetic or pain relief that nobody named, empty
 * @param dose how much, null where not recorded
 * @param doseUnit the unit of the dose, null where not recorded
 * @param route how it was given, null where not recorded
 * @param batch null where not recorded
 * @param reason what it was given for, null where not recorded
 * @param withdrawalDays days before slaughter for food, null where not recorded
 * @param lastDay the last day under withdrawal, null where no period is recorded
 * @param givenBy who gave it, null where not recorded
 * @param counts false where the event is marked, so that no figure counts it; the medicine may be in the animal
 * @param missing the particulars that a record should hold and this one does not
 * @param law what the law of the farm's place asked of a record on that day, null where its limits file does not say
 */
public record MedicineEntry(
        Kind kind,
        Life life,
        LifeEvent event,
        String medicine,
        Double dose,
        String doseUnit,
        String route,
        String batch,
        String reason,
        Integer withdrawalDays,
        LocalDate lastDay,
        String givenBy,
        boolean counts,
        Set<Particular> missing,
        RecordLaw law) {

    /** The order of the book: by time, then as recorded. */
    public static final Comparator<MedicineEntry> ORDER =
            Comparator.comparing(MedicineEntry::event, LifeEvent.ORDER).thenComparing(MedicineEntry::kind);

    /** What sort of product was given. */
    public enum Kind {
        TREATMENT("medicine"),
        VACCINE("vaccine"),
        ANAESTHETIC("anaesthetic"),
        PAIN_RELIEF("pain relief");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The kind in words. */
        public String word() {
            return word;
        }
    }

    /** Those of the missing particulars that the law asks for. */
    public Set<Particular> missingByLaw() {
        Set<Particular> asked = EnumSet.noneOf(Particular.class);
        missing.stream().filter(one -> law != null && law.asks(one)).forEach(asked::add);
        return asked;
    }

    /** The farm's clocks. */
    public ZoneId zone() {
        return life.farm().zone();
    }

    /** The local day on which it was given. */
    public LocalDate day() {
        return event.time().atZone(zone()).toLocalDate();
    }

    /** The numbers of every tag that the animal was given, in order of fitting. */
    public List<String> tags() {
        return life.events().stream()
                .map(one -> one.data() instanceof TagFitted tag ? tag.number() : "")
                .filter(number -> !number.isEmpty())
                .distinct()
                .toList();
    }
}
