package wisp.site;

import java.util.List;
import wisp.event.Fault;

/** Faults as a form shows them beside its fields. */
final class FieldFaults {
    private FieldFaults() {}

    /** What is wrong with one field and the mend, whole sentences; empty where nothing is. */
    static String of(List<Fault> faults, String field) {
        return faults.stream()
                .filter(fault -> fault.field().equals(field))
                .map(fault -> (fault.problem() + " " + fault.mend()).strip())
                .reduce((one, other) -> one + " " + other)
                .orElse("");
    }
}
