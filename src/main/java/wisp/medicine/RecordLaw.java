package wisp.medicine;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wisp.history.Farm;
import wisp.indicator.Basis;
import wisp.indicator.Definitions;

/**
 * What the law of a place asks of a record of medicines, as its limits file tells it.
 *
 * @param place the place's name
 * @param years how many years the record is kept
 * @param text what is asked, in words
 * @param fields what a record holds, as the file names it
 * @param basis what that stands on
 */
public record RecordLaw(String place, int years, String text, List<String> fields, Basis basis) {
    /** How the file names what every line of the book holds. */
    private static final List<String> ALWAYS = List.of("name of the product", "date", "identification of the animal");

    /** The law of a farm's place on a day; empty where its limits file does not speak of medicine records. */
    static Optional<RecordLaw> of(Definitions definitions, Farm farm, LocalDate day) {
        return definitions
                .law(farm, day)
                .flatMap(law -> law.medicineRecord()
                        .map(duty ->
                                new RecordLaw(law.title(), duty.number(), duty.text(), duty.fields(), duty.basis())));
    }

    /** Whether it asks for a particular. */
    public boolean asks(Particular particular) {
        return fields.stream().anyMatch(particular::namedBy);
    }

    /** What it asks for that the book has no place for. */
    public List<String> elsewhere() {
        return fields.stream()
                .filter(field -> ALWAYS.stream().noneMatch(field.toLowerCase(Locale.ROOT)::startsWith)
                        && Stream.of(Particular.values()).noneMatch(one -> one.namedBy(field)))
                .toList();
    }
}
