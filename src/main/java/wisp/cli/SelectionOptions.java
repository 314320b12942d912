package wisp.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import wisp.event.Fault;
import wisp.indicator.Selection;
import wisp.indicator.SelectionReader;
import wisp.records.Records;

/** Which calves a command is about: the same words as in addresses. */
final class SelectionOptions {
    @Option(names = "--season", paramLabel = "S|all", description = "A season, a year of birth, or all.")
    private String season;

    @Option(names = "--from", paramLabel = "DATE", description = "Only calves born on this day or later.")
    private String from;

    @Option(names = "--to", paramLabel = "DATE", description = "Only calves born before this day.")
    private String to;

    @Option(names = "--as-of", paramLabel = "TIME", description = "By what was known then; a date means its end.")
    private String asOf;

    @Option(names = "--by", paramLabel = "STRATUM", description = "Divide by pen, sex, parity, ease, breed, …")
    private String by;

    @Option(names = "--pen", paramLabel = "PEN", description = "Only calves of this calving pen.")
    private String pen;

    @Option(names = "--sex", paramLabel = "SEX", description = "Only female, male or unknown.")
    private String sex;

    @Option(names = "--parity", paramLabel = "N", description = "Only calves of dams of this parity.")
    private String parity;

    @Option(names = "--breed", paramLabel = "BREED", description = "Only calves of this breed.")
    private String breed;

    Selection read(Records records) {
        Map<String, String> parameters = new LinkedHashMap<>();
        parameters.put("season", season);
        parameters.put("from", from);
        parameters.put("to", to);
        parameters.put("as-of", asOf);
        parameters.put("by", by);
        parameters.put("pen", pen);
        parameters.put("sex", sex);
        parameters.put("parity", parity);
        parameters.put("breed", breed);
        parameters.values().removeIf(Objects::isNull);
        SelectionReader.Read read = SelectionReader.read(parameters, records.cohort());
        if (!read.faults().isEmpty()) {
            throw new Refusals(
                    read.faults().stream().map(Fault::toString).collect(Collectors.joining(System.lineSeparator())));
        }
        return read.selection();
    }
}
