package wisp.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wisp.backup.Restore;
import wisp.backup.Restored;
import wisp.log.EventLog;

/** Records a backup into an empty place. */
@Command(
        name = "restore",
        description = "Record a backup into an empty data folder or database.",
        mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {
    @Mixin
    private DataOption data;

    @Parameters(paramLabel = "FILE", description = "A file that backup wrote.")
    private Path file;

    @Option(
            names = "--as-of",
            paramLabel = "TIME|SEQUENCE",
            description = "Keep what was recorded by then, or up to this event; a date means its end on the farm.")
    private String asOf;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Restore restore = Restore.of(file, asOf);
        try (EventLog log = data.openLogOrNew()) {
            Restored restored = restore.into(log, data.analytics());
            StringBuilder said = new StringBuilder(events(restored.head().sequence(), "restored") + " into "
                    + data.where() + " with their hashes. Head " + restored.head() + ".");
            if (restored.leftOut() > 0) {
                said.append(" Left out, as recorded later: ")
                        .append(restored.leftOut())
                        .append(".");
            }
            if (restored.files() > 0) {
                said.append(" The farm's own definitions put back: ")
                        .append(restored.files())
                        .append(".");
            }
            if (!restored.note().isEmpty()) {
                said.append(" ").append(restored.note());
            }
            spec.commandLine().getOut().println(said);
            return 0;
        }
    }

    /** How many events are something, in words. */
    static String events(long many, String what) {
        return many == 1 ? "One event is " + what : many + " events are " + what;
    }
}
