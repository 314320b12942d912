package wisp.report;

import java.util.List;
import wisp.history.Farm;
import wisp.medicine.MedicineBook;
import wisp.medicine.RecordLaw;

/** What the law asks of a record of medicines, in words. */
final class RecordLawWords {
    private RecordLawWords() {}

    /** A paragraph for each law under which entries of a book were made; where there is none, that none is known. */
    static List<String> of(MedicineBook book, Farm farm) {
        return book.laws().isEmpty()
                ? List.of("What a record must hold and for how long it is kept is not on file here for "
                        + farm.jurisdiction() + ". Ask the vet or the authority; the particulars counted as missing"
                        + " are good practice.")
                : book.laws().stream().map(RecordLawWords::words).toList();
    }

    private static String words(RecordLaw law) {
        String fields = law.fields().isEmpty() ? "" : " A record holds: " + String.join(", ", law.fields()) + ".";
        String elsewhere = law.elsewhere().isEmpty()
                ? ""
                : " Not in this book: " + String.join(", ", law.elsewhere())
                        + "; keep invoices and prescriptions with it.";
        String read = law.basis().readOn().isEmpty()
                ? ""
                : ", last checked " + law.basis().readOn();
        return law.place() + ": " + law.text() + fields + elsewhere + " Source: "
                + law.basis().source() + " (" + law.basis().status() + read + ".)";
    }
}
