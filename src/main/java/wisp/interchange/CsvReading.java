package wisp.interchange;

import java.util.List;
import wisp.event.Fault;

/** How the lines of one CSV file become events. */
interface CsvReading {

    /**
     * Takes the column names, once, before any row.
     *
     * @return what is wrong with them
     */
    List<Fault> header(List<String> names);

    /** What there is to tell besides the rows, after the last of them. */
    default List<String> notes() {
        return List.of();
    }

    /** Turns one line, which has as many cells as there are columns, into events. */
    Row row(long line, int index, List<String> cells);
}
