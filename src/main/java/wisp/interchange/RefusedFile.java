package wisp.interchange;

import java.util.List;
import wisp.event.Fault;

/** A whole file that cannot be imported, with the reasons. */
final class RefusedFile extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    RefusedFile(List<Fault> faults) {
        super(faults.toString());
        this.faults = faults;
    }

    RefusedFile(String field, String problem, String mend) {
        this(List.of(new Fault(field, problem, mend)));
    }

    List<Fault> faults() {
        return faults;
    }
}
