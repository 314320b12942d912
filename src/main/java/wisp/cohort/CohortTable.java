package wisp.cohort;

import java.time.Instant;
import java.time.LocalDate;
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

    /**
     * Puts a row in at an index; the index after the last adds it. A text cell emptied here says so by
     * {@code isMissing} only in a copy of the table, which is what everyone else is given.
     */
    static void put(Table table, int index, CohortRow row) {
        if (index == table.rowCount()) {
            table.columns().forEach(Column::appendMissing);
        }
        Cells cells = new Cells(table, index);
        cells.text(row.calf());
        cells.instant(row.bornAt());
        cells.flag(row.birthTimeKnown());
        cells.date(row.birthDate());
        cells.text(row.season());
        cells.text(row.week());
        cells.text(row.sex());
        cells.flag(row.bornAlive());
        cells.text(row.dam());
        cells.text(row.breed());
        cells.text(row.pen());
        cells.whole(row.ease());
        cells.whole(row.litterSize());
        cells.whole(row.damParity());
        cells.number(row.birthWeightKg());
        cells.number(row.navelDelayMinutes());
        cells.text(row.navelDelay());
        cells.whole(row.cleanlinessScore());
        cells.text(row.cleanlinessPen());
        cells.text(row.exit());
        cells.instant(row.exitAt());
        cells.whole(row.events());
        cells.whole(row.marks());
    }

    /** The cells of one row, from left to right: looking columns up by name costs more than folding the life. */
    private static final class Cells {
        private final Table table;
        private final int index;
        private int column;

        Cells(Table table, int index) {
            this.table = table;
            this.index = index;
        }

        void text(String value) {
            StringColumn cells = (StringColumn) next();
            if (value == null) {
                cells.setMissing(index);
            } else {
                cells.set(index, value);
            }
        }

        void flag(Boolean value) {
            BooleanColumn cells = (BooleanColumn) next();
            if (value == null) {
                cells.setMissing(index);
            } else {
                cells.set(index, value.booleanValue());
            }
        }

        void whole(Integer value) {
            IntColumn cells = (IntColumn) next();
            if (value == null) {
                cells.setMissing(index);
            } else {
                cells.set(index, value.intValue());
            }
        }

        void number(Double value) {
            DoubleColumn cells = (DoubleColumn) next();
            if (value == null) {
                cells.setMissing(index);
            } else {
                cells.set(index, value.doubleValue());
            }
        }

        void date(LocalDate value) {
            DateColumn cells = (DateColumn) next();
            if (value == null) {
                cells.setMissing(index);
            } else {
                cells.set(index, value);
            }
        }

        void instant(Instant value) {
            InstantColumn cells = (InstantColumn) next();
            if (value == null) {
                cells.setMissing(index);
            } else {
                cells.set(index, value);
            }
        }

        private Column<?> next() {
            return table.column(column++);
        }
    }
}
