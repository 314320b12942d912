package wisp.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wisp.indicator.AgeFrom;
import wisp.indicator.ProcedureLimit;

/** The lawful ways that are left to castrate or disbud a calf on a day, with what each asks. */
final class WaysLeft {
    private final LocalDate born;
    private final LocalDate day;

    private WaysLeft(LocalDate born, LocalDate day) {
        this.born = born;
        this.day = day;
    }

    /** A sentence a method that is still open; one sentence where the file knows none. */
    static List<String> of(Map<String, ProcedureLimit> methods, LocalDate born, LocalDate day) {
        WaysLeft ways = new WaysLeft(born, day);
        List<String> left = new ArrayList<>();
        methods.entrySet().stream()
                .filter(method -> method.getValue().open(born, day))
                .sorted(Map.Entry.comparingByKey())
                .forEach(method -> left.add(ways.sentence(method.getKey(), method.getValue())));
        if (left.isEmpty()) {
            left.add("No method that the limits file knows is left: ask the vet.");
        }
        return left;
    }

    private String sentence(String method, ProcedureLimit limit) {
        List<String> now = new ArrayList<>();
        List<String> later = new ArrayList<>();
        asks("an anaesthetic", limit.anaesthetic(), now, later);
        asks("pain relief", limit.painRelief(), now, later);
        asks("a vet", limit.vet(), now, later);
        String name = Character.toUpperCase(method.charAt(0)) + method.substring(1);
        String asked = now.isEmpty() ? "no anaesthetic or vet is asked by law yet" : "needs " + String.join(", ", now);
        String end = limit.byDay() == null ? "" : "; only until the end of " + Said.day(born.plusDays(limit.byDay()));
        String then = later.isEmpty() ? "" : "; " + String.join("; ", later);
        String beware =
                limit.basis().remarks().isEmpty() ? "" : " " + limit.basis().remarks();
        return name + ": " + asked + end + then + " (" + limit.source().replaceAll("\\.$", "") + "; " + limit.status()
                + ")." + beware;
    }

    private void asks(String what, AgeFrom from, List<String> now, List<String> later) {
        LocalDate first = from.first(born);
        if (from.reached(born, day)) {
            now.add(what);
        } else if (first != null) {
            later.add(what + " from " + Said.day(first));
        }
    }
}
