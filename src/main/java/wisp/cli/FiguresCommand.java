package wisp.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import wisp.cohort.Cohort;
import wisp.indicator.Definitions;
import wisp.indicator.Estimate;
import wisp.indicator.EstimateJson;
import wisp.indicator.Indicator;
import wisp.indicator.Selection;
import wisp.records.Records;

/** Prints figures. */
@Command(name = "figures", description = "Print a season's figures.", mixinStandardHelpOptions = true)
final class FiguresCommand implements Callable<Integer> {
    /** How figures are printed. */
    enum Format {
        table,
        json
    }

    @Mixin
    private DataOption data;

    @Mixin
    private SelectionOptions options;

    @Option(names = "--indicator", paramLabel = "ID", description = "Only this figure; may be given several times.")
    private List<String> ids = List.of();

    @Option(names = "--format", defaultValue = "table", description = "${COMPLETION-CANDIDATES}. Default: table")
    private Format format;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws JsonProcessingException {
        try (Records records = data.openExisting()) {
            Selection selection = options.read(records);
            Cohort cohort = records.cohort(selection.asOf());
            List<Estimate> estimates = chosen(records).stream()
                    .map(indicator -> records.figures().of(indicator, cohort, selection))
                    .toList();
            PrintWriter out = spec.commandLine().getOut();
            if (format == Format.json) {
                out.println(json(estimates, cohort, selection, records.definitions()));
            } else {
                FiguresTable.print(estimates, selection.seasonIn(cohort), cohort, records.definitions(), out);
            }
            out.flush();
            return 0;
        }
    }

    private List<Indicator> chosen(Records records) {
        if (ids.isEmpty()) {
            return List.copyOf(records.definitions().indicators());
        }
        return ids.stream()
                .map(id -> records.definitions().indicator(id).orElseThrow(() -> {
                    String all = records.definitions().indicators().stream()
                            .map(Indicator::id)
                            .collect(Collectors.joining(", "));
                    return new Refusals("There is no figure " + id + ". Choose among: " + all + ".");
                }))
                .toList();
    }

    private static String json(List<Estimate> estimates, Cohort cohort, Selection selection, Definitions definitions)
            throws JsonProcessingException {
        JsonMapper mapper = new JsonMapper();
        ObjectNode json = mapper.createObjectNode();
        json.put("season", selection.seasonIn(cohort));
        json.put("as_of", cohort.cut().toString());
        ArrayNode figures = json.putArray("figures");
        estimates.forEach(estimate -> figures.add(EstimateJson.of(estimate, selection, definitions)));
        return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(json);
    }
}
