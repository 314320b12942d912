package wisp.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wisp.cohort.Cohort;
import wisp.interchange.Import;
import wisp.interchange.ImportListener;
import wisp.interchange.ImportOptions;
import wisp.interchange.ImportReport;
import wisp.interchange.Mapping;
import wisp.interchange.Refusal;
import wisp.interchange.TagSubjects;
import wisp.records.Records;

/** Brings events in from files. */
@Command(
        name = "import",
        description = "Bring events in: CloudEvents JSON Lines, CSV, ICAR ADE JSON.",
        mixinStandardHelpOptions = true)
final class ImportFiles implements Callable<Integer> {
    @Mixin
    private DataOption data;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "The files, in the order of recording.")
    private List<Path> files;

    @Option(names = "--mapping", paramLabel = "FILE", description = "How a spreadsheet's columns become events.")
    private Path mapping;

    @Option(names = "--dry-run", description = "Say what would happen and record nothing.")
    private boolean dryRun;

    @Option(names = "--partial", description = "Record the sound rows even where others are refused.")
    private boolean partial;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Mapping read = mapping == null ? null : Mapping.read(mapping);
        try (Records records = data.open()) {
            Cohort cohort = records.cohort();
            ZoneId zone = cohort.farm().latest().zone();
            TagSubjects subjects = read != null && read.byTag() ? new TagsOfHerd(cohort) : null;
            ImportOptions options = new ImportOptions(dryRun, partial, zone, read, subjects);
            ImportReport report = Import.run(files, options, records.log(), records.reader(), listener());
            PrintWriter out = spec.commandLine().getOut();
            report.notes().forEach(out::println);
            out.println(report.sentence());
            if (!report.sound() && !partial && !dryRun) {
                spec.commandLine().getErr().println("Nothing was recorded. Mend the rows named, or say --partial.");
            }
            return report.sound() ? 0 : Wisp.REFUSED;
        }
    }

    private ImportListener listener() {
        PrintWriter err = spec.commandLine().getErr();
        Progress progress = Progress.onTerminal();
        return new ImportListener() {
            @Override
            public void progress(Path file, long bytes, long size, long rows) {
                progress.show(file.getFileName() + ": " + rows + " rows", bytes, size);
            }

            @Override
            public void refused(Refusal refusal) {
                err.println(refusal.sentence());
            }
        };
    }
}
