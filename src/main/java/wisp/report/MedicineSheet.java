package wisp.report;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wisp.cohort.Cohort;
import wisp.log.DayHeads;
import wisp.medicine.LeftUnderWithdrawal;
import wisp.medicine.MedicineBook;
import wisp.medicine.MedicineEntry;
import wisp.medicine.Particular;

/**
 * The medicine book in words, for paper and page.
 *
 * @param farm the farm's name, or a line to write it on
 * @param from the first day
 * @param to the last day
 * @param sequence the newest event that is taken into account
 * @param summary how much the book holds, in words
 * @param rows one an entry
 * @param left animals that left under withdrawal, one a sentence
 * @param asked what the law of the farm's place asks of such a record, with its source; never empty
 */
public record MedicineSheet(
        String farm,
        String from,
        String to,
        long sequence,
        String summary,
        List<Row> rows,
        List<Gone> left,
        List<String> asked) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    /** An animal that left under withdrawal, and what is to be known of it. */
    public record Gone(String calf, String sentence) {}

    /** One entry in words; what is not recorded says so. */
    public record Row(
            MedicineEntry entry,
            String day,
            String calf,
            String tags,
            String medicine,
            String quantity,
            String route,
            String batch,
            String reason,
            String until,
            String givenBy,
            String recorded,
            String note) {}

    /** The sheet of a book. */
    public static MedicineSheet of(MedicineBook book, Cohort cohort) {
        boolean named = cohort.farm().latest().described()
                && !cohort.farm().latest().name().isEmpty();
        return new MedicineSheet(
                named ? cohort.farm().latest().name() : "",
                DAY.format(book.from()),
                DAY.format(book.to()),
                cohort.sequence(),
                summary(book),
                book.entries().stream().map(MedicineSheet::row).toList(),
                book.left().stream().map(MedicineSheet::left).toList(),
                RecordLawWords.of(book, cohort.farm().latest()));
    }

    /** Every animal of a cohort that left under withdrawal. */
    public static List<Gone> left(Cohort cohort) {
        return cohort.lives().stream()
                .flatMap(life -> LeftUnderWithdrawal.of(life).stream())
                .map(MedicineSheet::left)
                .toList();
    }

    /** Prints the sheet with the newest of the log's heads in its foot. */
    public byte[] pdf(DayHeads heads) {
        return PrintedPage.pdf("print/medicine-book.jte", this, heads);
    }

    private static String summary(MedicineBook book) {
        if (book.entries().isEmpty()) {
            return "No medicine is on record in these days.";
        }
        long lacking = book.incomplete().size();
        long byLaw = book.incompleteByLaw().size();
        String held = count(book.entries().size(), "entry", "entries") + " for "
                + count(book.animals(), "animal", "animals") + ". ";
        if (lacking == 0) {
            return held + "Every entry has the particulars asked for.";
        }
        String law = byLaw == 0 ? "" : count(byLaw, "entry lacks", "entries lack") + " something that law asks for.";
        String practice = lacking == byLaw
                ? ""
                : count(lacking - byLaw, "entry lacks", "entries lack")
                        + " something that a record should hold, though no law on file here asks for it.";
        return held + (law + " " + practice).strip();
    }

    private static Row row(MedicineEntry entry) {
        ZoneId zone = entry.zone();
        return new Row(
                entry,
                DAY.format(entry.day()),
                entry.life().key(),
                String.join(", ", entry.tags()),
                medicine(entry),
                quantity(entry),
                said(entry.route()),
                said(entry.batch()),
                said(entry.reason()).replace('-', ' '),
                until(entry),
                giver(entry),
                DAY.format(entry.event().recorded().atZone(zone).toLocalDate()),
                note(entry));
    }

    private static String medicine(MedicineEntry entry) {
        String name = entry.medicine().isEmpty() ? "not named" : entry.medicine();
        return entry.kind() == MedicineEntry.Kind.TREATMENT
                ? name
                : name + " (" + entry.kind().word() + ")";
    }

    private static String quantity(MedicineEntry entry) {
        if (entry.dose() == null) {
            return "";
        }
        double dose = entry.dose();
        String number = dose == Math.rint(dose) ? Long.toString((long) dose) : Double.toString(dose);
        return number + (entry.doseUnit() == null ? " (unit not recorded)" : " " + entry.doseUnit());
    }

    private static String until(MedicineEntry entry) {
        if (entry.lastDay() != null) {
            return entry.withdrawalDays() == 0 ? "0 days" : DAY.format(entry.lastDay());
        }
        return entry.missing().contains(Particular.WITHDRAWAL) ? "not recorded: see the label" : "see the label";
    }

    private static String giver(MedicineEntry entry) {
        String by = entry.event().recordedBy();
        return entry.givenBy() != null ? entry.givenBy() : by == null ? "" : "recorded by " + by;
    }

    private static String note(MedicineEntry entry) {
        StringBuilder note = new StringBuilder();
        if (!entry.missing().isEmpty()) {
            Set<Particular> byLaw = entry.missingByLaw();
            Set<Particular> beside = new TreeSet<>(entry.missing());
            beside.removeAll(byLaw);
            note.append(missing("Missing, asked for by law: ", byLaw)).append(missing("Missing: ", beside));
        }
        if (!entry.counts()) {
            note.append("Marked: it cannot be true beside other records. ");
        }
        if (entry.event().amended()) {
            note.append("Corrected since first written; the log keeps both forms. ");
        }
        return note.toString().strip();
    }

    private static String missing(String beginning, Set<Particular> missing) {
        return missing.isEmpty()
                ? ""
                : missing.stream().map(Particular::word).collect(Collectors.joining(", ", beginning, ". "));
    }

    private static Gone left(LeftUnderWithdrawal one) {
        LocalDate last = one.last().lastDay();
        return new Gone(
                one.life().key(),
                "left on " + DAY.format(one.day()) + ", under the withdrawal of "
                        + one.last().medicine() + " to the end of " + DAY.format(last) + ".");
    }

    private static String said(String text) {
        return text == null ? "" : text;
    }

    private static String count(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }
}
