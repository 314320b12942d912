package wisp.cohort;

import java.time.Instant;
import java.util.List;
import tech.tablesaw.api.BooleanColumn;
import tech.tablesaw.api.DateColumn;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.InstantColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/** The cohort's Tablesaw table: its columns, and how one row is put in or replaced. */
final class CohortTable {
    private CohortTable() {}

    /** A table with every column and no row. */
    static Table empty() {
        List<Column<?>> columns = List.of(
                StringColumn.create("calf"),
                InstantColumn.create("born_at"),
                BooleanColumn.create("birth_time_known"),
                DateColumn.create("birth_date"),
                StringColumn.create("season"),
                StringColumn.create("week"),
                StringColumn.create("sex"),
                BooleanColumn.create("born_alive"),
                StringColumn.create("dam"),
                StringColumn.create("breed"),
                StringColumn.create("pen"),
                IntColumn.create("ease"),
                IntColumn.create("litter_size"),
                IntColumn.create("dam_parity"),
                DoubleColumn.create("birth_weight_kg"),
                DoubleColumn.create("navel_delay_minutes"),
                StringColumn.create("navel_delay"),
                IntColumn.create("cleanliness_score"),
                StringColumn.create("cleanliness_pen"),
                StringColumn.create("exit"),
                InstantColumn.create("exit_at"),
                IntColumn.create("events"),
                IntColumn.create("marks"));
        return Table.create("cohort", columns);
    }

    /** Puts a row in at an index; the index after the last adds it. */
    static void put(Table table, int index, CohortRow row) {
        if (index == table.rowCount()) {
            table.columns().forEach(Column::appendMissing);
        }
        text(table, "calf", index, row.calf());
        instant(table, "born_at", index, row.bornAt());
        flag(table, "birth_time_known", index, row.birthTimeKnown());
        DateColumn birthDate = table.dateColumn("birth_date");
        if (row.birthDate() == null) {
            birthDate.setMissing(index);
        } else {
            birthDate.set(index, row.birthDate());
        }
        text(table, "season", index, row.season());
        text(table, "week", index, row.week());
        text(table, "sex", index, row.sex());
        flag(table, "born_alive", index, row.bornAlive());
        text(table, "dam", index, row.dam());
        text(table, "breed", index, row.breed());
        text(table, "pen", index, row.pen());
        whole(table, "ease", index, row.ease());
        whole(table, "litter_size", index, row.litterSize());
        whole(table, "dam_parity", index, row.damParity());
        number(table, "birth_weight_kg", index, row.birthWeightKg());
        number(table, "navel_delay_minutes", index, row.navelDelayMinutes());
        text(table, "navel_delay", index, row.navelDelay());
        whole(table, "cleanliness_score", index, row.cleanlinessScore());
        text(table, "cleanliness_pen", index, row.cleanlinessPen());
        text(table, "exit", index, row.exit());
        instant(table, "exit_at", index, row.exitAt());
        whole(table, "events", index, row.events());
        whole(table, "marks", index, row.marks());
    }

    private static void text(Table table, String column, int index, String value) {
        StringColumn cells = table.stringColumn(column);
        if (value == null) {
            cells.setMissing(index);
        } else {
            cells.set(index, value);
        }
    }

    private static void flag(Table table, String column, int index, Boolean value) {
        BooleanColumn cells = table.booleanColumn(column);
        if (value == null) {
            cells.setMissing(index);
        } else {
            cells.set(index, value.booleanValue());
        }
    }

    private static void whole(Table table, String column, int index, Integer value) {
        IntColumn cells = table.intColumn(column);
        if (value == null) {
            cells.setMissing(index);
        } else {
            cells.set(index, value.intValue());
        }
    }

    private static void number(Table table, String column, int index, Double value) {
        DoubleColumn cells = table.doubleColumn(column);
        if (value == null) {
            cells.setMissing(index);
        } else {
            cells.set(index, value.doubleValue());
        }
    }

    private static void instant(Table table, String column, int index, Instant value) {
        InstantColumn cells = table.instantColumn(column);
        if (value == null) {
            cells.setMissing(index);
        } else {
            cells.set(index, value);
        }
    }
}
