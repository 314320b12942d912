package wisp.site;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wisp.due.DueItem;
import wisp.event.Fault;
import wisp.indicator.AgeFrom;
import wisp.indicator.Law;
import wisp.indicator.ProcedureLimit;

/** What law asks of a castration or disbudding that somebody ticks off, on the day on which it was done. */
final class DueProcedure {
    private DueProcedure() {}

    /** The methods that the law of a calf speaks of for a step; empty for any other step. */
    static Map<String, ProcedureLimit> methods(DueItem item, Optional<Law> law) {
        return switch (item.event()) {
            case CASTRATED -> law.map(Law::castration).orElse(Map.of());
            case DISBUDDED -> law.map(Law::disbudding).orElse(Map.of());
            default -> Map.of();
        };
    }

    /** The methods still lawful on a day, in words; empty where there is none. */
    static String open(Map<String, ProcedureLimit> methods, LocalDate born, LocalDate day) {
        return methods.entrySet().stream()
                .filter(method -> method.getValue().open(born, day))
                .map(Map.Entry::getKey)
                .sorted()
                .collect(Collectors.joining(", "));
    }

    /** Whether every way that is left asks for a vet. */
    static boolean vetOnly(Map<String, ProcedureLimit> methods, LocalDate born, LocalDate day) {
        return methods.values().stream()
                .filter(limit -> limit.open(born, day))
                .allMatch(limit -> limit.vet().reached(born, day));
    }

    static void check(ObjectNode data, DueItem item, Optional<Law> law, LocalDate day, List<Fault> faults) {
        String method = data.path("method").asText();
        ProcedureLimit limit = methods(item, law).get(method);
        if (limit == null) {
            return;
        }
        LocalDate born = item.life().birthDate();
        if (!limit.open(born, day)) {
            String left = open(methods(item, law), born, day);
            String end =
                    limit.allowed() && limit.byDay() != null ? " after " + Shown.day(born.plusDays(limit.byDay())) : "";
            String problem = "The law on record does not allow " + method + end + " (" + limit.source() + ").";
            String mend = left.isEmpty() ? "Ask the vet what is left." : "Lawful that day: " + left + ". Ask the vet.";
            String earlier = limit.allowed() ? " Was it done before then? Give that day." : "";
            faults.add(new Fault("data.method", problem, mend + earlier));
            return;
        }
        asked("anaesthetic", "an anaesthetic", limit.anaesthetic(), data, born, day, faults);
        asked("pain_relief", "pain relief", limit.painRelief(), data, born, day, faults);
    }

    private static void asked(
            String field,
            String what,
            AgeFrom from,
            ObjectNode data,
            LocalDate born,
            LocalDate day,
            List<Fault> faults) {
        JsonNode given = data.path(field);
        boolean said = given.isTextual() || given.asBoolean(false);
        if (from.reached(born, day) && !said) {
            String problem = "The law on record asks for " + what + " with this method at this age.";
            faults.add(new Fault("data." + field, problem, "Write which was given. If none was, ask the vet."));
        }
    }
}
