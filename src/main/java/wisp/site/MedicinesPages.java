package wisp.site;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.io.StringWriter;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import wisp.medicine.MedicineBook;
import wisp.medicine.MedicineEntry;
import wisp.medicine.Particular;
import wisp.records.Records;
import wisp.report.MedicineSheet;

/** The addresses of the medicine book: page, CSV and PDF. */
final class MedicinesPages {
    private final Records records;

    MedicinesPages(Records records) {
        this.records = records;
    }

    void addTo(JavalinConfig config) {
        config.routes.get("/medicines", this::page);
        config.routes.get("/medicines.csv", this::csv);
        config.routes.get("/medicines.pdf", this::pdf);
    }

    private void page(Context ctx) {
        Pages.show(ctx, "medicines.jte", MedicinesPage.of(ctx, asked(ctx), records));
    }

    private void csv(Context ctx) {
        MedicineBook book = MedicinesPage.book(ctx, asked(ctx), records);
        StringWriter text = new StringWriter();
        table(book.entries()).write().csv(text);
        ctx.contentType("text/csv; charset=utf-8");
        ctx.header("Content-Disposition", "attachment; filename=\"" + name(book) + ".csv\"");
        ctx.result(text.toString());
    }

    private void pdf(Context ctx) {
        Asked asked = asked(ctx);
        MedicineBook book = MedicinesPage.book(ctx, asked, records);
        ctx.contentType("application/pdf");
        ctx.header("Content-Disposition", "inline; filename=\"" + name(book) + ".pdf\"");
        ctx.result(MedicineSheet.of(book, asked.cohort()).pdf(records.dayHeads()));
    }

    private Asked asked(Context ctx) {
        return Asked.of(ctx, records, MedicinesPage.PARAMETERS);
    }

    private static String name(MedicineBook book) {
        return "medicine-book-" + book.from() + "-to-" + book.to();
    }

    private static Table table(List<MedicineEntry> entries) {
        Table table = Table.create("medicines");
        add(table, "time", entries.stream().map(one -> CalfJson.time(one.event().time(), one.zone())));
        add(table, "calf", entries.stream().map(one -> one.life().key()));
        add(table, "tags", entries.stream().map(one -> String.join(" ; ", one.tags())));
        add(table, "kind", entries.stream().map(one -> one.kind().word()));
        add(table, "medicine", entries.stream().map(MedicineEntry::medicine));
        DoubleColumn dose = DoubleColumn.create("dose");
        entries.forEach(one -> append(dose, one.dose()));
        table.addColumns(dose);
        add(table, "dose_unit", entries.stream().map(MedicineEntry::doseUnit));
        add(table, "route", entries.stream().map(MedicineEntry::route));
        add(table, "batch", entries.stream().map(MedicineEntry::batch));
        add(table, "reason", entries.stream().map(MedicineEntry::reason));
        IntColumn days = IntColumn.create("meat_withdrawal_days");
        entries.forEach(one -> append(days, one.withdrawalDays()));
        table.addColumns(days);
        add(table, "not_for_food_to_end_of", entries.stream().map(one -> text(one.lastDay())));
        add(table, "given_by", entries.stream().map(MedicineEntry::givenBy));
        add(
                table,
                "recorded",
                entries.stream().map(one -> CalfJson.time(one.event().recorded(), one.zone())));
        add(table, "recorded_by", entries.stream().map(one -> one.event().recordedBy()));
        add(table, "missing", entries.stream().map(one -> words(one.missing())));
        add(table, "missing_by_law", entries.stream().map(one -> words(one.missingByLaw())));
        add(table, "marked", entries.stream().map(one -> one.counts() ? "" : "marked"));
        add(table, "corrected", entries.stream().map(one -> one.event().amended() ? "corrected" : ""));
        add(table, "event_source", entries.stream().map(one -> one.event().source()));
        add(table, "event_id", entries.stream().map(one -> one.event().id()));
        return table;
    }

    private static void add(Table table, String name, Stream<String> cells) {
        StringColumn column = StringColumn.create(name);
        cells.forEach(cell -> column.append(text(cell)));
        table.addColumns(column);
    }

    private static void append(DoubleColumn column, Double value) {
        if (value == null) {
            column.appendMissing();
        } else {
            column.append(value);
        }
    }

    private static void append(IntColumn column, Integer value) {
        if (value == null) {
            column.appendMissing();
        } else {
            column.append(value);
        }
    }

    private static String words(Set<Particular> missing) {
        return missing.stream().map(Particular::word).collect(Collectors.joining(" ; "));
    }

    private static String text(Object value) {
        return value == null ? "" : value.toString();
    }
}
