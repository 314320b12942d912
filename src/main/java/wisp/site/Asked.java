package wisp.site;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wisp.cohort.Cohort;
import wisp.event.Fault;
import wisp.indicator.Selection;
import wisp.indicator.SelectionReader;
import wisp.records.Records;

/**
 * What a request asks for: which calves, and the cohort that answers.
 *
 * @param selection which calves
 * @param cohort the cohort as of the day asked for
 * @param parameters the filters as they stood in the address, to keep them in links
 */
record Asked(Selection selection, Cohort cohort, Map<String, String> parameters) {

    /**
     * Reads a request's parameters.
     *
     * @param others parameters beside the filters that this address takes
     * @throws Problem with every fault, a parameter that nobody knows among them
     */
    static Asked of(Context ctx, Records records, Set<String> others) {
        Map<String, String> parameters = new LinkedHashMap<>();
        List<Fault> faults = new ArrayList<>();
        for (String name : ctx.queryParamMap().keySet()) {
            if (SelectionReader.NAMES.contains(name)) {
                parameters.put(name, ctx.queryParam(name));
            } else if (!others.contains(name)) {
                String known = String.join(
                        ", ", SelectionReader.NAMES.stream().sorted().toList());
                faults.add(new Fault(name, "There is no such parameter.", "Those that there are: " + known + "."));
            }
        }
        Cohort now = records.cohort();
        SelectionReader.Read read = SelectionReader.read(parameters, now);
        faults.addAll(read.faults());
        if (!faults.isEmpty()) {
            throw Problem.parameters(faults);
        }
        Selection selection = read.selection();
        parameters.values().removeIf(String::isBlank);
        return new Asked(selection, records.cohort(selection.asOf()), parameters);
    }

    /** The season that is meant. */
    String season() {
        return selection.seasonIn(cohort);
    }
}
