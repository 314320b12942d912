package wisp.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wisp.event.Fault;

/** The events that one ICAR ADE resource stands for. */
final class IcarEvents {
    private final ObjectNode resource;
    private final String type;
    private final List<Fault> faults;
    private final List<ObjectNode> events = new ArrayList<>();

    IcarEvents(ObjectNode resource, String type, List<Fault> faults) {
        this.resource = resource;
        this.type = type;
        this.faults = faults;
    }

    List<ObjectNode> events() {
        if (resource.path("meta").path("isDeleted").booleanValue()) {
            retraction();
            return events;
        }
        switch (type) {
            case "MovementBirthEvent" -> birth();
            case "ReproParturitionEvent" -> parturition();
            case "MovementDeathEvent" -> death();
            case "MovementDepartureEvent" -> departure();
            case "DiagnosisEvent" -> diagnoses();
            case "TreatmentEvent" -> treatment();
            case "WeightEvent" -> kilograms(resource.path("weight"), "weight", event("weighed", subject(), ""));
            default -> text(event("moved", subject(), ""), "pen", resource.path("animalSetId"));
        }
        return events;
    }

    private String subject() {
        return resource.path("animal").path("id").asText();
    }

    /** A new event of this resource; answers its data. */
    private ObjectNode event(String name, String subject, String part) {
        JsonNode meta = resource.path("meta");
        ObjectNode event = JsonNodeFactory.instance.objectNode();
        event.put("specversion", "1.0");
        event.put("id", resource.path("id").asText() + part);
        event.put("source", meta.path("source").asText("icar"));
        event.put("type", name);
        event.put("subject", subject);
        event.put("time", resource.path("eventDateTime").asText());
        text(event, "recordedtime", meta.has("created") ? meta.path("created") : meta.path("modified"));
        text(event, "recordedby", meta.path("creator"));
        events.add(event);
        return event.putObject("data");
    }

    private void retraction() {
        ObjectNode data = event("retracted", subject(), ".deleted");
        data.put("event_source", resource.path("meta").path("source").asText("icar"));
        data.put("event_id", resource.path("id").asText());
        data.put("reason", "deleted where it came from");
        events.get(0)
                .put(
                        "time",
                        resource.path("meta")
                                .path("modified")
                                .asText(resource.path("eventDateTime").asText()));
    }

    private void birth() {
        JsonNode calf = resource.path("animalDetail");
        cattle(calf, "animalDetail");
        ObjectNode data = event("birth", subject(), "");
        data.put("alive", !calf.path("status").asText().equals("Dead"));
        sex(data, calf);
        text(data, "breed", calf.path("primaryBreed").path("id"));
        for (JsonNode parent : calf.path("parentage")) {
            boolean dam = parent.path("gender").asText().equals("Female");
            text(data, dam ? "dam" : "sire", parent.path("identifier").path("id"));
        }
        pen(data);
    }

    private void parturition() {
        JsonNode progeny = resource.path("progenyDetails");
        if (progeny.isEmpty()) {
            fault("progenyDetails", "No calf is told of.", "Give each calf an identifier and a gender.");
        }
        for (int i = 0; i < progeny.size(); i++) {
            String at = "progenyDetails[" + i + "]";
            JsonNode calf = progeny.get(i);
            String key = calf.path("identifier")
                    .path("id")
                    .asText(calf.path("managementTag").asText());
            if (key.isEmpty()) {
                fault(at + ".identifier", "The calf has neither identifier nor managementTag.", "Give it one.");
            }
            cattle(calf, at);
            ObjectNode data = event("birth", key, progeny.size() == 1 ? "" : "." + (i + 1));
            data.put(
                    "alive",
                    !List.of("Stillborn", "Aborted")
                            .contains(calf.path("birthStatus").asText()));
            sex(data, calf);
            data.put("dam", subject());
            copy(data, "dam_parity", resource.get("damParity"));
            copy(data, "litter_size", resource.get("totalProgeny"));
            translated(data, "ease", resource.path("calvingEase"), "calvingEase", Icar.back(Icar.EASE));
            if (calf.has("birthWeight")) {
                kilograms(calf.path("birthWeight"), at + ".birthWeight", data);
            }
            pen(data);
        }
    }

    private void death() {
        ObjectNode data = event("died", subject(), "");
        text(data, "cause", resource.has("explanation") ? resource.path("explanation") : resource.path("deathReason"));
        String method = resource.path("deathMethod").asText();
        if (method.equals("Culled") || method.equals("Perished")) {
            data.put("euthanised", method.equals("Culled"));
        }
    }

    private void departure() {
        ObjectNode data = event("left", subject(), "");
        String kind = resource.path("departureKind").asText();
        switch (kind) {
            case "" -> data.remove("reason");
            case "Sale" -> data.put("reason", "sold");
            case "InternalTransfer" -> data.put("reason", "transferred");
            default ->
                fault(
                        "departureKind",
                        "A departure of the kind \"" + kind + "\" has no counterpart.",
                        "Write Sale or InternalTransfer, or leave it out; a slaughter is a death.");
        }
    }

    private void diagnoses() {
        JsonNode diagnoses = resource.path("diagnoses");
        if (diagnoses.isEmpty()) {
            fault("diagnoses", "There is no diagnosis in it.", "Give at least one with a name.");
        }
        for (int i = 0; i < diagnoses.size(); i++) {
            JsonNode found = diagnoses.get(i);
            ObjectNode data = event("illness-found", subject(), diagnoses.size() == 1 ? "" : "." + (i + 1));
            boolean own = found.path("diagnosisCode").path("scheme").asText().equals(Icar.CONDITION);
            String name = own
                    ? found.path("diagnosisCode").path("id").asText()
                    : found.path("name").asText();
            data.put("condition", name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-"));
            text(data, "signs", found.path("description"));
            translated(
                    data,
                    "severity",
                    found.path("severity"),
                    "diagnoses[" + i + "].severity",
                    Icar.back(Icar.SEVERITY));
        }
    }

    private void treatment() {
        boolean vaccination = resource.path("procedure").asText().equals(Icar.VACCINATION);
        ObjectNode data = event(vaccination ? "vaccinated" : "treated", subject(), "");
        text(
                data,
                vaccination ? "vaccine" : "medicine",
                resource.path("medicine").path("name"));
        text(data, "batch", resource.path("batches").path(0).path("identifier"));
        if (vaccination) {
            return;
        }
        text(data, "route", resource.path("procedure"));
        text(data, "given_by", resource.path("responsible"));
        JsonNode dose = resource.path("dose");
        copy(data, "dose", dose.get("doseQuantity"));
        Map<String, String> units = Icar.back(Icar.DOSE_UNIT);
        String unit = dose.path("doseUnits").asText();
        if (!unit.isEmpty()) {
            data.put("dose_unit", units.getOrDefault(unit, unit));
        }
        for (JsonNode withdrawal : resource.path("withdrawals")) {
            if (withdrawal.path("productType").asText().equals("Meat")) {
                withdrawal(data, withdrawal.path("endDate").asText());
            }
        }
    }

    private void withdrawal(ObjectNode data, String end) {
        try {
            OffsetDateTime from =
                    OffsetDateTime.parse(resource.path("eventDateTime").asText());
            long hours = Duration.between(from, OffsetDateTime.parse(end)).toHours();
            data.put("meat_withdrawal_days", (hours + 23) / 24);
        } catch (DateTimeException unreadable) {
            fault("withdrawals", "\"" + end + "\" is not a time with an offset.", "Write it as 2026-03-31T00:00:00Z.");
        }
    }

    private void kilograms(JsonNode weight, String at, ObjectNode data) {
        String unit = weight.path("units").asText("KGM");
        if (!weight.path("measurement").isNumber() || !Icar.KILOGRAMS.containsKey(unit)) {
            fault(at, "It is no weight in a known unit.", "Give measurement as a number and units as KGM.");
            return;
        }
        double measured = weight.path("measurement").doubleValue();
        data.put("weight_kg", unit.equals("KGM") ? measured : measured * Icar.KILOGRAMS.get(unit));
    }

    private void cattle(JsonNode animal, String at) {
        String specie = animal.path("specie").asText("Cattle");
        if (!specie.equals("Cattle")) {
            fault(at + ".specie", "It is " + specie + ", not Cattle.", "Leave other animals out.");
        }
    }

    private static void sex(ObjectNode data, JsonNode animal) {
        String gender = animal.path("gender").asText();
        if (!gender.isEmpty()) {
            data.put("sex", gender.startsWith("Female") ? "female" : gender.startsWith("Male") ? "male" : "unknown");
        }
    }

    private void pen(ObjectNode data) {
        if (resource.path("location").path("scheme").asText().equals(Icar.PEN)) {
            text(data, "pen", resource.path("location").path("id"));
        }
    }

    private void translated(ObjectNode data, String field, JsonNode word, String at, Map<String, Integer> table) {
        if (word.isTextual() && !table.containsKey(word.textValue())) {
            fault(at, "\"" + word.textValue() + "\" is not a word of the standard.", "Write one of its own words.");
        } else if (word.isTextual()) {
            data.put(field, table.get(word.textValue()));
        }
    }

    private static void text(ObjectNode into, String field, JsonNode value) {
        if (value.isTextual()) {
            into.put(field, value.textValue());
        }
    }

    private static void copy(ObjectNode into, String field, JsonNode value) {
        if (value != null && !value.isNull()) {
            into.set(field, value);
        }
    }

    private void fault(String field, String problem, String mend) {
        faults.add(new Fault(field, problem, mend));
    }
}
