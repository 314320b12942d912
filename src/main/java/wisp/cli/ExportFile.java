package wisp.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import wisp.interchange.Export;
import wisp.interchange.ExportFormat;
import wisp.interchange.ExportReport;
import wisp.records.Records;

/** Writes every event to a file. */
@Command(name = "export", description = "Write every event to a file.", mixinStandardHelpOptions = true)
final class ExportFile implements Callable<Integer> {
    @Mixin
    private DataOption data;

    @Option(names = "--format", required = true, paramLabel = "FORMAT", description = "jsonl, csv, parquet or icar.")
    private String format;

    @Option(names = "--out", required = true, paramLabel = "PATH", description = "The file to write.")
    private Path out;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        ExportFormat chosen = ExportFormat.named(format)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "There is no format " + format + ". Choose among: " + ExportFormat.allWords() + "."));
        try (Records records = data.openExisting()) {
            Progress progress = Progress.onTerminal();
            ExportReport report = Export.write(
                    chosen, out, records.log(), (events, all) -> progress.show(out.getFileName() + "", events, all));
            spec.commandLine().getOut().println(report.sentence());
            return 0;
        }
    }
}
