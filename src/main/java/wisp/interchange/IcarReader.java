package wisp.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import wisp.event.Fault;

/** ICAR ADE resources on their way in: each becomes one event or several, or is refused. */
final class IcarReader {
    /** What is read of each resource, its core left aside: a path stands for all that lies under it. */
    private static final Map<String, Set<String>> OWN = Map.of(
            "MovementBirthEvent",
                    paths("registrationReason animalDetail.resourceType animalDetail.identifier animalDetail.specie"
                            + " animalDetail.gender animalDetail.birthDate animalDetail.status"
                            + " animalDetail.primaryBreed animalDetail.parentage"),
            "ReproParturitionEvent",
                    paths("damParity totalProgeny calvingEase progenyDetails.resourceType progenyDetails.identifier"
                            + " progenyDetails.managementTag progenyDetails.specie progenyDetails.gender"
                            + " progenyDetails.birthStatus progenyDetails.birthWeight"),
            "MovementDeathEvent", paths("explanation deathReason deathMethod"),
            "MovementDepartureEvent", paths("departureKind"),
            "DiagnosisEvent",
                    paths("diagnoses.name diagnoses.diagnosisCode diagnoses.description diagnoses.severity"
                            + " diagnoses.severityScore"),
            "TreatmentEvent",
                    paths("medicine.name procedure batches.identifier withdrawals.productType withdrawals.endDate dose"
                            + " responsible"),
            "WeightEvent", paths("weight.measurement weight.units"),
            "AnimalSetJoinEvent", paths("animalSetId"));

    private static final Set<String> CORE = paths("resourceType @self meta id eventDateTime animal location");

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
        unread(node, "", type, leftOut);
        return new Row(line, index, List.copyOf(events), List.of(), UnaryOperator.identity());
    }

    private static Set<String> paths(String names) {
        return Set.of(names.split(" "));
    }

    private static void unread(JsonNode node, String path, String type, Set<String> leftOut) {
        if (CORE.contains(path) || OWN.get(type).contains(path)) {
            return;
        }
        if (node.isObject()) {
            node.properties().forEach(child -> {
                String under = path.isEmpty() ? child.getKey() : path + "." + child.getKey();
                unread(child.getValue(), under, type, leftOut);
            });
        } else if (node.isArray()) {
            node.forEach(child -> unread(child, path, type, leftOut));
        } else if (!node.isNull()) {
            leftOut.add(type + "." + path);
        }
    }

    static List<String> notes(Set<String> leftOut) {
        return leftOut.isEmpty()
                ? List.of()
                : List.of("Left out, as no event has a place for them: " + String.join(", ", leftOut) + ".");
    }
}
