package wisp.site;

import io.javalin.http.Context;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import wisp.event.Fault;
import wisp.history.Life;
import wisp.history.MeatWithdrawal;
import wisp.medicine.MedicineBook;
import wisp.records.Records;
import wisp.report.MedicineSheet;

/**
 * The medicine book on a page: who may not go for food now, who left under withdrawal, and every entry of a span of
 * days.
 *
 * @param frame the page's frame; the book takes no notice of season, pen or sex, as every animal belongs in it
 * @param from the first day, as its field wants it
 * @param to the last day
 * @param under animals on the farm under withdrawal, the last to end first
 * @param unknown animals on the farm with a treatment whose withdrawal is not recorded
 * @param sheet the book in words, the newest entry first
 * @param more how many older entries the page leaves to the files
 */
public record MedicinesPage(
        Frame frame,
        LocalDate from,
        LocalDate to,
        List<Under> under,
        List<Unknown> unknown,
        MedicineSheet sheet,
        List<MedicineSheet.Row> rows,
        int more) {
    static final Set<String> PARAMETERS = Set.of("given-from", "given-to");
    private static final int SHOWN = 40;

    /** An animal under withdrawal. */
    public record Under(String calf, String href, String medicine, String until) {}

    /** An animal of which the end of a withdrawal is not known. */
    public record Unknown(String calf, String href) {}

    static MedicinesPage of(Context ctx, Asked asked, Records records) {
        MedicineBook book = book(ctx, asked, records);
        Map<String, String> kept = new LinkedHashMap<>();
        PARAMETERS.stream().sorted().forEach(name -> {
            String value = ctx.queryParam(name);
            if (value != null && !value.isBlank()) {
                kept.put(name, value);
            }
        });
        Frame frame = Frame.of(asked, "Medicines", "/medicines", kept).ofOne();
        Instant now = moment(asked, records);
        MedicineSheet sheet = MedicineSheet.of(book, asked.cohort());
        List<MedicineSheet.Row> rows = new ArrayList<>(sheet.rows());
        Collections.reverse(rows);
        int shown = Math.min(SHOWN, rows.size());
        return new MedicinesPage(
                frame,
                book.from(),
                book.to(),
                under(asked, now),
                unknown(asked, now),
                sheet,
                rows.subList(0, shown),
                rows.size() - shown);
    }

    /** The book of the days that a request names, else of the year up to the day asked for. */
    static MedicineBook book(Context ctx, Asked asked, Records records) {
        ZoneId zone = asked.cohort().farm().latest().zone();
        LocalDate today = moment(asked, records).atZone(zone).toLocalDate();
        List<Fault> faults = new ArrayList<>();
        LocalDate to = day(ctx, "given-to", today, faults);
        LocalDate from = day(ctx, "given-from", to.minusYears(1).plusDays(1), faults);
        if (faults.isEmpty() && to.isBefore(from)) {
            faults.add(new Fault("given-to", "It is before given-from.", "Let the book begin before it ends."));
        }
        if (!faults.isEmpty()) {
            throw Problem.parameters(faults);
        }
        return MedicineBook.of(asked.cohort(), records.definitions(), from, to);
    }

    /** The moment that is asked about: the end of the day asked for, else the clock. */
    private static Instant moment(Asked asked, Records records) {
        return asked.selection().asOf() == null
                ? records.clock().instant()
                : asked.selection().asOf().minusMillis(1);
    }

    private static LocalDate day(Context ctx, String name, LocalDate usual, List<Fault> faults) {
        String text = ctx.queryParam(name);
        if (text == null || text.isBlank()) {
            return usual;
        }
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException wrong) {
            faults.add(new Fault(name, "\"" + text + "\" is no date.", "Write it as 2026-03-01."));
            return usual;
        }
    }

    private static List<Under> under(Asked asked, Instant now) {
        Links links = new Links(asked.parameters());
        Map<LocalDate, List<Under>> byEnd = new TreeMap<>(Comparator.reverseOrder());
        for (Life life : asked.cohort().lives()) {
            MeatWithdrawal.of(life).stream()
                    .filter(one -> life.exit() == null && one.runsAt(now))
                    .max(Comparator.comparing(MeatWithdrawal::end))
                    .ifPresent(last -> byEnd.computeIfAbsent(last.lastDay(), day -> new ArrayList<>())
                            .add(new Under(
                                    life.key(), links.calf(life.key()), last.medicine(), Shown.day(last.lastDay()))));
        }
        return byEnd.values().stream().flatMap(List::stream).toList();
    }

    private static List<Unknown> unknown(Asked asked, Instant now) {
        Links links = new Links(asked.parameters());
        return asked.cohort().lives().stream()
                .filter(life -> life.exit() == null
                        && MeatWithdrawal.of(life).stream()
                                .anyMatch(one -> one.end() == null
                                        && !one.treatment().time().isAfter(now)))
                .map(life -> new Unknown(life.key(), links.calf(life.key())))
                .toList();
    }

    /** Address of the book of these days in another form. */
    public String file(String path) {
        return frame.to(path, Map.of("given-from", from.toString(), "given-to", to.toString()));
    }

    /** Address of one animal. */
    public String calf(String key) {
        return frame.to(Links.calfPath(key));
    }
}
