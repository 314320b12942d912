package wisp.interchange;

import java.util.List;

/**
 * What an import did, or, on a dry run, would do. Rows are counted in the files, events as they come of them: one row
 * may stand for several.
 *
 * @param read rows and JSON records read, refused ones included
 * @param accepted events that are new in the log
 * @param duplicate events that the log had already, word for word
 * @param conflict events kept out because the log has another of the same source and id
 * @param heldBack sound new events kept out because something else in the import was refused
 * @param refusedRows rows kept out, conflicts not among them
 * @param refused why, with the conflicts: the first {@link #REFUSALS_KEPT}
 * @param notes what a reader should know besides, such as how a file's letters were read
 * @param dryRun true where nothing was to be written
 * @param last the sequence of the newest event in the log
 */
public record ImportReport(
        long read,
        long accepted,
        long duplicate,
        long conflict,
        long heldBack,
        long refusedRows,
        List<Refusal> refused,
        List<String> notes,
        boolean dryRun,
        long last) {

    /** So many refusals are kept here; a listener hears of every one. */
    public static final int REFUSALS_KEPT = 10_000;

    /** True when nothing was refused and nothing in conflict. */
    public boolean sound() {
        return refusedRows == 0 && conflict == 0;
    }

    /** What happened, in one sentence. */
    public String sentence() {
        String would = dryRun ? "would be " : "";
        StringBuilder said = new StringBuilder(dryRun ? "Dry run, nothing is written: " : "");
        said.append(accepted).append(" events ").append(would).append("added, ");
        said.append(duplicate).append(" were there already");
        if (conflict > 0) {
            said.append(", ").append(conflict).append(" conflict with events of the same source and id");
        }
        if (refusedRows > 0) {
            said.append(", ").append(refusedRows).append(" of ").append(read).append(" rows refused");
        }
        if (heldBack > 0) {
            said.append(", ").append(heldBack).append(" sound events held back");
        }
        return said.append('.').toString();
    }
}
