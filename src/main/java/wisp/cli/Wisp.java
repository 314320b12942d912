package wisp.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import wisp.backup.BackupFailure;
import wisp.indicator.WrongDefinitions;
import wisp.interchange.FileFailure;
import wisp.interchange.MappingRefused;
import wisp.log.LogFailure;

/** The program: its commands, and what each failure prints. The one place where everything is wired. */
@Command(
        name = "wisp",
        description = "Keeps a herd's husbandry events and works every figure out from them.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {
            Serve.class,
            ImportFiles.class,
            ExportFile.class,
            FiguresCommand.class,
            Answer.class,
            DueCommand.class,
            CalendarCommand.class,
            Verify.class,
            BackupCommand.class,
            RestoreCommand.class,
            Simulate.class
        })
public final class Wisp {
    /** Refused input or a failed check. */
    static final int REFUSED = 1;

    private Wisp() {}

    /** Runs one command and exits with its code: 0 done, 1 refused input or failed check, 2 wrong usage. */
    public static void main(String[] arguments) {
        System.exit(run(new PrintWriter(System.out, true), new PrintWriter(System.err, true), arguments));
    }

    /** Runs one command, its output going to these writers. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = new CommandLine(new Wisp());
        line.setOut(out);
        line.setErr(err);
        line.setExecutionExceptionHandler((failure, command, parsed) -> {
            if (!sentence(failure)) {
                throw failure;
            }
            err.println(failure.getMessage());
            return REFUSED;
        });
        if (arguments.length == 0) {
            line.usage(err);
            return CommandLine.ExitCode.USAGE;
        }
        return line.execute(arguments);
    }

    /** Whether a failure's message was written for the user. */
    private static boolean sentence(Exception failure) {
        return failure instanceof LogFailure
                || failure instanceof WrongDefinitions
                || failure instanceof MappingRefused
                || failure instanceof FileFailure
                || failure instanceof BackupFailure
                || failure instanceof Refusals;
    }
}
