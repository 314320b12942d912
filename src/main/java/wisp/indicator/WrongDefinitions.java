package wisp.indicator;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Definition files cannot be used; the message lists every fault with its file and line. */
public class WrongDefinitions extends RuntimeException {
    private final transient List<DefinitionFault> faults;

    /** All that is wrong, over all files. */
    public WrongDefinitions(List<DefinitionFault> faults) {
        super(sorted(faults).stream().map(DefinitionFault::toString).collect(Collectors.joining("\n")));
        this.faults = sorted(faults);
    }

    private static List<DefinitionFault> sorted(List<DefinitionFault> faults) {
        return faults.stream()
                .sorted(Comparator.comparing(DefinitionFault::file).thenComparing(DefinitionFault::line))
                .toList();
    }

    /** The faults one by one. */
    public List<DefinitionFault> faults() {
        return faults;
    }
}
