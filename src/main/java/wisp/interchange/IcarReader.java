package wisp.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import wisp.event.Fault;

/** ICAR ADE resources on their way in: each becomes one event or several, or is refused. */
final class IcarReader {
    private static final Map<String, Set<String>> OWN = Map.of(
            "MovementBirthEvent", Set.of("registrationReason", "animalDetail"),
            "ReproParturitionEvent",
                    Set.of(
                            "damParity",
                            "totalProgeny",
                            "liveProgeny",
                            "calvingEase",
                            "progenyDetails",
                            "isEmbryoImplant"),
            "MovementDeathEvent", Set.of("explanation", "deathReason", "deathMethod"),
            "MovementDepartureEvent", Set.of("departureKind", "departureReason"),
            "DiagnosisEvent", Set.of("diagnoses"),
            "TreatmentEvent", Set.of("medicine", "procedure", "batches", "withdrawals", "dose", "responsible"),
            "WeightEvent", Set.of("weight"),
            "AnimalSetJoinEvent", Set.of("animalSetId"));
    private static final Set<String> CORE =
            Set.of("resourceType", "@self", "meta", "id", "eventDateTime", "animal", "location");

    private IcarReader() {}

    /**
     * The row that a resource makes.
     *
     * @param leftOut gets the properties that no event has a place for, as {@code Resource.property}
     */
    static Row row(long line, int index, JsonNode node, Set<String> leftOut) {
        List<Fault> faults = new ArrayList<>();
        String type = Icar.shortName(node.path("resourceType").asText());
        if (!OWN.containsKey(type)) {
            String mend = "Take it out; these can be read: " + String.join(", ", new TreeSet<>(OWN.keySet())) + ".";
            Fault unknown =
                    new Fault("resourceType", "There is no event for the ICAR resource \"" + type + "\".", mend);
            return Row.faulty(line, index, List.of(unknown));
        }
        for (String required : List.of("id", "eventDateTime")) {
            if (node.path(required).asText().isEmpty()) {
                faults.add(new Fault(required, "It is missing.", "Give it; no event can do without it."));
            }
        }
        if (node.path("animal").path("id").asText().isEmpty()) {
            faults.add(new Fault("animal.id", "It is missing.", "Say which animal it is."));
        }
        if (!faults.isEmpty()) {
            return Row.faulty(line, index, faults);
        }
        List<ObjectNode> events = new IcarEvents((ObjectNode) node, type, faults).events();
        if (!faults.isEmpty()) {
            return Row.faulty(line, index, faults);
        }
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!CORE.contains(name) && !OWN.get(type).contains(name)) {
                leftOut.add(type + "." + name);
            }
        }
        return new Row(line, index, List.copyOf(events), List.of(), UnaryOperator.identity());
    }

    static List<String> notes(Set<String> leftOut) {
        return leftOut.isEmpty()
                ? List.of()
                : List.of("Left out, as no event has a place for them: " + String.join(", ", leftOut) + ".");
    }
}
