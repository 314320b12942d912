package wisp.site;

import java.math.BigDecimal;
import java.math.RoundingMode;
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

    private static final String WAITING = "waiting-";

    private final String title;
    private final Predicate<ProofCalf> in;

    ProofList(String title, Predicate<ProofCalf> in) {
        this.title = title;
        this.in = in;
    }

    /** Calves that an address asks for. */
    record Asked(String title, List<ProofCalf> calves) {}

    /** The calves that an address asks for, null where it asks for none. */
    static Asked asked(Proof proof, String word) {
        if (word == null || word.isBlank()) {
            return null;
        }
        if (word.matches(WAITING + "\\d{1,6}\\.\\d{1,18}")) {
            double time = Double.parseDouble(word.substring(WAITING.length()));
            return new Asked("Not done yet by " + ProofWords.time(proof, time), proof.waiting(time));
        }
        ProofList list = named(word);
        return new Asked(list.title, proof.calves().stream().filter(list.in).toList());
    }

    /** Address of the calves with which it was not done yet at a time. */
    static String waiting(double time, Links links, String path) {
        BigDecimal there = new BigDecimal(time).setScale(9, RoundingMode.FLOOR);
        return links.to(path, Map.of(PARAMETER, WAITING + there.toPlainString())) + "#calves";
    }

    private static ProofList named(String word) {
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

    /** Its address on a proof's page. */
    String href(Links links, String path) {
        return links.to(path, Map.of(PARAMETER, word())) + "#calves";
    }
}
