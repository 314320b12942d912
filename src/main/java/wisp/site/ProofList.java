package wisp.site;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import wisp.due.Proof;
import wisp.due.ProofCalf;
import wisp.event.Fault;

/** A list of calves behind a count of a proof. */
enum ProofList {
    INSIDE("Inside the limit", calf -> calf.part() == ProofCalf.Part.INSIDE),
    BREACH("Outside", calf -> calf.part() == ProofCalf.Part.BREACH),
    PENDING("Limit not over yet", calf -> calf.part() == ProofCalf.Part.PENDING),
    LEFT_OUT("Cannot be judged", calf -> calf.part() == ProofCalf.Part.LEFT_OUT),
    SETTLED("Settled, inside or outside", calf -> INSIDE.holds(calf) || BREACH.holds(calf)),
    ENTERED_LATE("Inside the limit, entered late", ProofCalf::enteredLate);

    /** The parameter that names one. */
    static final String PARAMETER = "part";

    private final String title;
    private final Predicate<ProofCalf> in;

    ProofList(String title, Predicate<ProofCalf> in) {
        this.title = title;
        this.in = in;
    }

    /** The list that an address asks for, null where it asks for none. */
    static ProofList named(String word) {
        if (word == null || word.isBlank()) {
            return null;
        }
        return Arrays.stream(values())
                .filter(one -> one.word().equals(word))
                .findFirst()
                .orElseThrow(() -> Problem.parameters(List.of(new Fault(
                        PARAMETER,
                        "\"" + word + "\" is no part of a proof.",
                        "Write one of: "
                                + Arrays.stream(values()).map(ProofList::word).collect(Collectors.joining(", "))
                                + "."))));
    }

    /** How calves count, as a list. */
    static ProofList of(ProofCalf.Part part) {
        return valueOf(part.name());
    }

    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    String title() {
        return title;
    }

    boolean holds(ProofCalf calf) {
        return in.test(calf);
    }

    List<ProofCalf> of(Proof proof) {
        return proof.calves().stream().filter(in).toList();
    }

    /** Its address on a proof's page. */
    String href(Links links, String path) {
        return links.to(path, Map.of(PARAMETER, word())) + "#calves";
    }
}
