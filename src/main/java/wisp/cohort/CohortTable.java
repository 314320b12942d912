package wisp.cohort;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import tech.tablesaw.api.BooleanColumn;
import tech.tablesaw.api.DateColumn;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.InstantColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/**
 * The cohort's Tablesaw table: its columns, and how one row is put in or replaced. Copies share the columns in which
 * nothing changed from one to the next: most events change few.
 */
final class CohortTable {
    private final Table table = empty();
    private final Column<?>[] given = new Column<?>[table.columnCount()];

    /** The table as it stands; it is not to be changed. */
    Table copy() {
        for (int i = 0; i < given.length; i++) {
            if (given[i] == null) {
                given[i] = table.column(i).copy();
            }
        }
        return Table.create(table.name(), given);
    }

    private static Table empty() {
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
    void put(int index, CohortRow row) {
        if (index == table.rowCount()) {
            table.columns().forEach(Column::appendMissing);
            Arrays.fill(given, null);
        }
        Cells cells = new Cells(index);
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
    private final class Cells {
        private final int index;
        private int column;

        Cells(int index) {
            this.index = index;
        }

        void text(String value) {
            StringColumn cells = (StringColumn) next(value);
            if (value == null) {
                cells.setMissing(index);
            } else {
                cells.set(index, value);
            }
        }

        void flag(Boolean value) {
            BooleanColumn cells = (BooleanColumn) next(value);
            if (value == null) {
                cells.setMissing(index);
            } else {
                cells.set(index, value.booleanValue());
            }
        }

        void whole(Integer value) {
            IntColumn cells = (IntColumn) next(value);
            if (value == null) {
                cells.setMissing(index);
            } else {
                cells.set(index, value.intValue());
            }
        }

        void number(Double value) {
            DoubleColumn cells = (DoubleColumn) next(value);
            if (value == null) {
                cells.setMissing(index);
            } else {
                cells.set(index, value.doubleValue());
            }
        }

        void date(LocalDate value) {
            DateColumn cells = (DateColumn) next(value);
            if (value == null) {
                cells.setMissing(index);
            } else {
                cells.set(index, value);
            }
        }

        void instant(Instant value) {
            InstantColumn cells = (InstantColumn) next(value);
            if (value == null) {
                cells.setMissing(index);
            } else {
                cells.set(index, value);
            }
        }

        private Column<?> next(Object value) {
            Column<?> cells = table.column(column);
            if (given[column] != null && !same(cells, value)) {
                given[column] = null;
            }
            column++;
            return cells;
        }

        private boolean same(Column<?> cells, Object value) {
            Object there = cells.get(index);
            // an emptied text reads as an empty one
            boolean missing = cells.isMissing(index) || "".equals(there);
            return value == null ? missing : !missing && value.equals(there);
        }
    }
}
