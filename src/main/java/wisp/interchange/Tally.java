package wisp.interchange;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.function.UnaryOperator;
import wisp.event.Fault;
import wisp.log.Appended.Outcome;

/** The running count of an import, and the places of the events that the log has yet to answer for. */
final class Tally {

    /** Where an event stands in the files. */
    record Place(Path file, long line, int index) {}

    private final ImportListener listener;
    private final Queue<Place> unanswered = new ArrayDeque<>();
    private final List<Refusal> refused = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private long read;
    private long fresh;
    private long duplicate;
    private long conflict;
    private long refusedRows;

    Tally(ImportListener listener) {
        this.listener = listener;
    }

    void row() {
        read++;
    }

    long rows() {
        return read;
    }

    void offered(Place place) {
        unanswered.add(place);
    }

    void note(Path file, String sentence) {
        notes.add(file.getFileName() + ": " + sentence);
    }

    void progress(Path file, long bytes, long size) {
        listener.progress(file, bytes, size, read);
    }

    /** A row, or with line 0 a whole file, is refused for these faults. */
    void refuse(Place place, List<Fault> faults, UnaryOperator<String> naming) {
        refusedRows++;
        for (Fault fault : faults) {
            refusal(place, new Fault(naming.apply(fault.field()), fault.problem(), fault.mend()));
        }
    }

    void outcome(Outcome outcome) {
        Place place = unanswered.remove();
        switch (outcome) {
            case ACCEPTED, HELD_BACK -> fresh++;
            case DUPLICATE -> duplicate++;
            case CONFLICT -> {
                conflict++;
                refusal(
                        place,
                        new Fault(
                                "id",
                                "The log, or an earlier row, has another event of this source and id.",
                                "Give the event its own id, or say the change as an amended event."));
            }
        }
    }

    boolean sound() {
        return refusedRows == 0 && conflict == 0;
    }

    ImportReport report(ImportOptions options, long last) {
        boolean kept = options.partial() || sound();
        return new ImportReport(
                read,
                kept ? fresh : 0,
                duplicate,
                conflict,
                kept ? 0 : fresh,
                refusedRows,
                List.copyOf(refused),
                List.copyOf(notes),
                options.dryRun(),
                last);
    }

    private void refusal(Place place, Fault fault) {
        Refusal refusal =
                new Refusal(place.file(), place.line(), place.index(), fault.field(), fault.problem(), fault.mend());
        listener.refused(refusal);
        if (refused.size() < ImportReport.REFUSALS_KEPT) {
            refused.add(refusal);
        }
    }
}
