package wisp.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import wisp.log.EventLog;
import wisp.log.Verification;

/** Walks the log's hash chain. */
@Command(name = "verify", description = "Check that no recorded event was changed.", mixinStandardHelpOptions = true)
final class Verify implements Callable<Integer> {
    @Mixin
    private DataOption data;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        try (EventLog log = data.openLog()) {
            Verification found = log.verify();
            if (found.whole()) {
                spec.commandLine()
                        .getOut()
                        .println("All " + found.events() + " events are as they were written. Head " + found.head()
                                + ".");
                return 0;
            }
            spec.commandLine().getErr().println("Broken at sequence " + found.broken() + ": " + found.problem());
            return Wisp.REFUSED;
        }
    }
}
