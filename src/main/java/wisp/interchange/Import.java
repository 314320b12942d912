package wisp.interchange;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import wisp.event.EventReader;
import wisp.log.EventLog;

/**
 * Files brought into a log, in one transaction: a fault in any of them keeps every event of all of them out, unless the
 * options say partial. Memory does not grow with the files.
 */
public final class Import {
    private Import() {}

    /**
     * Imports files.
     *
     * @param files of any mixture of kinds, in the order in which their events are to stand
     * @param reader checks the events
     * @throws wisp.log.LogFailure where the log cannot be written; it is then as it was
     */
    public static ImportReport run(
            List<Path> files, ImportOptions options, EventLog log, EventReader reader, ImportListener listener) {
        Tally tally = new Tally(listener);
        Mapping mapping = options.mapping();
        TagMatching matching = mapping == null || !mapping.byTag()
                ? null
                : new TagMatching(Objects.requireNonNull(options.subjects()), mapping.source(), log);
        try (Offering offering = new Offering(files, options, matching, reader, tally)) {
            long last = log.appendAll(
                    offering, tally::outcome, () -> !options.dryRun() && (options.partial() || tally.sound()));
            return tally.report(options, last);
        }
    }
}
