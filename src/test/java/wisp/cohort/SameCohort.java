package wisp.cohort;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.Supplier;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/** Holds two cohorts against each other, the table cell by cell and to the bit. */
public final class SameCohort {
    private SameCohort() {}

    public static void check(Cohort expected, Cohort actual, String when) {
        sameButCut(expected, actual, when);
        assertEquals(expected.cut(), actual.cut(), when);
    }

    static void sameButCut(Cohort expected, Cohort actual, String when) {
        assertEquals(expected.lives(), actual.lives(), when);
        assertEquals(expected.farm(), actual.farm(), when);
        assertEquals(expected.pens(), actual.pens(), when);
        assertEquals(expected.strayMarks(), actual.strayMarks(), when);
        assertEquals(expected.sequence(), actual.sequence(), when);
        sameTable(expected.table(), actual.table(), when);
    }

    static void sameTable(Table expected, Table actual, String when) {
        assertEquals(expected.columnNames(), actual.columnNames(), when);
        assertEquals(expected.rowCount(), actual.rowCount(), when);
        for (Column<?> column : expected.columns()) {
            Column<?> other = actual.column(column.name());
            assertEquals(column.type(), other.type(), when);
            for (int row = 0; row < column.size(); row++) {
                int cell = row;
                Supplier<String> where = () -> when + ", " + column.name() + " of row " + cell;
                assertEquals(column.isMissing(row), other.isMissing(row), where);
                assertEquals(column.get(row), other.get(row), where);
                if (column instanceof DoubleColumn numbers) {
                    long bits = Double.doubleToRawLongBits(numbers.getDouble(row));
                    assertEquals(bits, Double.doubleToRawLongBits(((DoubleColumn) other).getDouble(row)), where);
                }
            }
        }
    }
}
