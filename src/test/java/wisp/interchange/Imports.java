package wisp.interchange;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import wisp.event.EventReader;
import wisp.log.EventLog;

/** A fixed clock, the usual conditions, and short ways to run an import in tests. */
final class Imports {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-01T12:00:00Z"), ZoneOffset.UTC);
    static final Set<String> CONDITIONS = new TreeSet<>(
            List.of("diarrhoea", "pneumonia", "navel-infection", "joint-ill", "septicaemia", "bloat", "other"));
    static final EventReader READER = EventReader.offered(CONDITIONS, CLOCK);
    static final ZoneId LONDON = ZoneId.of("Europe/London");
    static final ImportOptions WHOLE = ImportOptions.plain(LONDON);
    static final ImportOptions PARTIAL = new ImportOptions(false, true, LONDON, null);
    static final ImportOptions DRY = new ImportOptions(true, false, LONDON, null);

    private Imports() {}

    static ImportReport run(EventLog log, ImportOptions options, Path... files) {
        return Import.run(List.of(files), options, log, READER, ImportListener.silent());
    }

    static ImportOptions mapped(Path mapping) {
        return new ImportOptions(false, false, LONDON, Mapping.read(mapping));
    }

    static List<String> json(EventLog log) {
        return log.read(0, 100_000).stream().map(s -> s.event().json()).toList();
    }

    static List<String> sentences(ImportReport report) {
        return report.refused().stream().map(Refusal::sentence).toList();
    }
}
