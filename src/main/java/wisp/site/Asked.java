package wisp.site;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
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
        return of(Address.of(ctx), records, others);
    }

    static Asked of(Address address, Records records, Set<String> others) {
        Map<String, String> parameters = new LinkedHashMap<>();
        List<Fault> faults = new ArrayList<>();
        for (String name : address.names()) {
            if (SelectionReader.NAMES.contains(name)) {
                parameters.put(name, address.parameter(name));
            } else if (!others.contains(name)) {
                Set<String> known = new TreeSet<>(SelectionReader.NAMES);
                known.addAll(others);
                faults.add(unknown(name, known));
            }
            if (address.all(name).size() > 1) {
                faults.add(new Fault(name, "It is given more than once.", "Give it once."));
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

    /** The fault of a parameter that an address does not take. */
    static Fault unknown(String name, Set<String> known) {
        String all = String.join(", ", new TreeSet<>(known));
        return new Fault(name, "There is no such parameter.", "Those that there are: " + all + ".");
    }

    /** The season that is meant. */
    String season() {
        return selection.seasonIn(cohort);
    }
}
