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
            Restored restored = restore.into(log, data.folder());
            StringBuilder said = new StringBuilder(restored.head().sequence() + " events are restored into "
                    + data.where() + " with their hashes. Head " + restored.head() + ".");
            if (restored.leftOut() > 0) {
                said.append(" ").append(restored.leftOut()).append(" later ones were left out.");
            }
            if (restored.files() > 0) {
                said.append(" ").append(restored.files()).append(" of the farm's own definitions were put back.");
            }
            if (!restored.note().isEmpty()) {
                said.append(" ").append(restored.note());
            }
            spec.commandLine().getOut().println(said);
            return 0;
        }
    }
}
