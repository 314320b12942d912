package wisp.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.PrintWriter;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import wisp.cohort.Cohort;
import wisp.due.Due;
import wisp.due.DueJson;
import wisp.due.DueList;
import wisp.indicator.Selection;
import wisp.records.Records;

/** Prints what is due. */
@Command(
        name = "due",
        description =
                "Print what is due with each calf, by when, and what is no more possible. Here --pen means where a"
                        + " calf stands now, no --season means all, and --by divides nothing.",
        mixinStandardHelpOptions = true)
final class DueCommand implements Callable<Integer> {
    @Mixin
    private DataOption data;

    @Mixin
    private SelectionOptions options;

    @Option(
            names = "--on",
            paramLabel = "DATE",
            description =
                    "The morning list of this day: what is known now, judged at 00:00 of it on the farm. Without it,"
                            + " as things stand at this moment, or at that of --as-of.")
    private String on;

    @Option(names = "--format", defaultValue = "table", description = "${COMPLETION-CANDIDATES}. Default: table")
    private FiguresCommand.Format format;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws JsonProcessingException {
        try (Records records = data.openExisting()) {
            Selection selection = options.read(records);
            Cohort cohort = records.cohort(selection.asOf());
            DueList list =
                    DueList.of(new Due(records.definitions()), cohort, selection, at(records, selection, cohort));
            PrintWriter out = spec.commandLine().getOut();
            if (format == FiguresCommand.Format.json) {
                out.println(new JsonMapper().writerWithDefaultPrettyPrinter().writeValueAsString(DueJson.of(list)));
            } else {
                DueTable.print(list, out);
            }
            out.flush();
            return 0;
        }
    }

    private Instant at(Records records, Selection selection, Cohort cohort) {
        if (on == null) {
            return selection.asOf() == null ? records.clock().instant() : selection.asOf();
        }
        try {
            return DueList.morning(LocalDate.parse(on.strip()), cohort);
        } catch (DateTimeException wrong) {
            throw new Refusals("on: \"" + on + "\" is not a date. Write it as 2026-03-31.");
        }
    }
}
