package wisp.interchange;

import java.nio.file.Path;

/**
 * One thing that kept a row of a file out of the log.
 *
 * @param file the file
 * @param row the line of the file where the row begins, from 1; 0 where the whole file is at fault
 * @param index the row's place among the file's rows or JSON records, from 0; -1 where the whole file is at fault
 * @param field the column or field; empty where the whole row is at fault
 * @param problem what is wrong, a whole sentence
 * @param mend what to do about it, a whole sentence
 */
public record Refusal(Path file, long row, int index, String field, String problem, String mend) {

    /** The refusal as one line for a reader: where, what, mend. */
    public String sentence() {
        String name = file.getFileName() == null
                ? file.toString()
                : file.getFileName().toString();
        String where = row > 0 ? name + ", line " + row : name;
        return where + (field.isEmpty() ? "" : ", " + field) + ": " + problem + " " + mend;
    }
}
