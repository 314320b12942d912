package wisp.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wisp.backup.Backup;
import wisp.log.ChainHead;
import wisp.log.EventLog;

/** Writes a backup, also while a server is writing. */
@Command(
        name = "backup",
        description = "Write all events and the farm's own definitions to one file.",
        mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {
    @Mixin
    private DataOption data;

    @Parameters(paramLabel = "FILE", description = "The file to write; it must not be there yet.")
    private Path file;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        try (EventLog log = data.openLog()) {
            ChainHead head = new Backup(log, data.analytics(), Clock.systemUTC()).write(file);
            spec.commandLine()
                    .getOut()
                    .println(RestoreCommand.events(head.sequence(), "backed up") + " in " + file
                            + " and read back whole. Head " + head + ", written to " + Backup.headFile(file) + " too.");
            return 0;
        }
    }
}
