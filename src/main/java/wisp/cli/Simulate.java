package wisp.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import wisp.simulation.SimulateSeason;
import wisp.simulation.StandardModel;

/** Writes an invented season, drawn from known effects, and the truths beside it. */
@Command(
        name = "simulate",
        description = "Write an invented season with known effects, and the truths beside it.",
        mixinStandardHelpOptions = true)
final class Simulate implements Callable<Integer> {
    @Option(names = "--calves", required = true, paramLabel = "N", description = "How many calves.")
    private int calves;

    @Option(names = "--seed", required = true, paramLabel = "S", description = "The same seed gives the same season.")
    private long seed;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The JSON Lines file to write.")
    private Path out;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (calves < 1) {
            throw new ParameterException(spec.commandLine(), "--calves must be 1 or more.");
        }
        try {
            int events = SimulateSeason.write(StandardModel.model(), calves, seed, out);
            spec.commandLine()
                    .getOut()
                    .println(events + " events of " + calves + " calves written to " + out + ", the truths to "
                            + SimulateSeason.truthsBeside(out) + ".");
            return 0;
        } catch (IOException disk) {
            throw new Refusals(out + " cannot be written (" + disk.getMessage()
                    + "). Choose a folder that is there and has room.");
        }
    }
}
