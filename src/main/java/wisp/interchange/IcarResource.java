package wisp.interchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wisp.event.Birth;
import wisp.event.Died;
import wisp.event.Event;
import wisp.event.IllnessFound;
import wisp.event.Left;
import wisp.event.Moved;
import wisp.event.Treated;
import wisp.event.Vaccinated;
import wisp.event.Weighed;

/** One event as an ICAR ADE resource, and the fields of it that the resource could not hold. */
final class IcarResource {
    private final Event event;
    private final Set<String> rest = new TreeSet<>();
    private final ObjectNode node = JsonNodeFactory.instance.objectNode();

    IcarResource(Event event) {
        this.event = event;
        try {
            JsonRecord.STRICT.readTree(event.json()).path("data").fieldNames().forEachRemaining(rest::add);
        } catch (JsonProcessingException kept) {
            throw new IllegalStateException("the log's own JSON cannot be read", kept);
        }
    }

    /** The resource, or empty where the standard has none for this type of event. */
    Optional<ObjectNode> node() {
        return switch (event.type()) {
            case BIRTH -> Optional.of(birth((Birth) event.data()));
            case DIED -> Optional.of(death((Died) event.data()));
            case LEFT -> Optional.of(departure((Left) event.data()));
            case ILLNESS_FOUND -> Optional.of(diagnosis((IllnessFound) event.data()));
            case TREATED -> Optional.of(treatment((Treated) event.data()));
            case VACCINATED -> Optional.of(vaccination((Vaccinated) event.data()));
            case WEIGHED -> Optional.of(weight((Weighed) event.data()));
            case MOVED -> Optional.of(join((Moved) event.data()));
            case CLEANLINESS_SCORED,
                    NAVEL_TREATED,
                    NAVEL_CHECKED,
                    COLOSTRUM_FED,
                    BLOOD_TESTED,
                    TAG_FITTED,
                    TISSUE_SAMPLED,
                    SAMPLE_SENT,
                    SAMPLE_RESULT,
                    REGISTERED,
                    CASTRATED,
                    DISBUDDED,
                    RECOVERED,
                    WEANED,
                    PEN_BEDDED,
                    PEN_CLEANED,
                    NOTED,
                    FARM_DESCRIBED,
                    RETRACTED,
                    AMENDED -> Optional.empty();
        };
    }

    /** Fields of the data that the resource does not hold. */
    Set<String> leftOut() {
        return rest;
    }

    private ObjectNode core(String type, String animal) {
        node.put("resourceType", type);
        ObjectNode meta = node.putObject("meta");
        meta.put("source", event.source());
        meta.put("sourceId", event.id());
        meta.put("modified", utc(event.recordedTime()));
        meta.put("created", utc(event.recordedTime()));
        if (event.recordedBy() != null) {
            meta.put("creator", event.recordedBy());
        }
        node.put("id", event.id());
        node.put("eventDateTime", utc(event.time()));
        identifier(node, "animal", Icar.ANIMAL, animal);
        return node;
    }

    /** A calving where the dam is known, which holds most; else the movement of a birth. */
    private ObjectNode birth(Birth birth) {
        used("alive", "sex", "pen");
        if (birth.dam() != null) {
            return parturition(birth);
        }
        core("MovementBirthEvent", event.subject()).put("registrationReason", "Born");
        location(birth.pen());
        ObjectNode calf = node.putObject("animalDetail").put("resourceType", "Animal");
        identifier(calf, "identifier", Icar.ANIMAL, event.subject());
        calf.put("specie", "Cattle").put("gender", sex(birth)).put("birthDate", utc(event.time()));
        calf.put("status", birth.alive() ? "Alive" : "Dead");
        if (birth.breed() != null) {
            used("breed");
            identifier(calf, "primaryBreed", Icar.BREED, birth.breed());
        }
        if (birth.sire() != null) {
            used("sire");
            ObjectNode sire = calf.putArray("parentage").addObject();
            identifier(sire, "parentOf", Icar.ANIMAL, event.subject());
            sire.put("gender", "Male");
            identifier(sire, "identifier", Icar.ANIMAL, birth.sire());
        }
        return node;
    }

    private ObjectNode parturition(Birth birth) {
        used("dam", "dam_parity", "litter_size", "ease", "weight_kg");
        core("ReproParturitionEvent", birth.dam());
        location(birth.pen());
        put(node, "damParity", birth.damParity());
        put(node, "totalProgeny", birth.litterSize());
        if (birth.ease() != null) {
            node.put("calvingEase", Icar.EASE.get(birth.ease()));
        }
        ObjectNode calf = node.putArray("progenyDetails").addObject().put("resourceType", "ProgenyDetails");
        identifier(calf, "identifier", Icar.ANIMAL, event.subject());
        calf.put("specie", "Cattle").put("gender", sex(birth));
        calf.put("birthStatus", birth.alive() ? "Alive" : "Stillborn");
        if (birth.weightKg() != null) {
            calf.putObject("birthWeight").put("measurement", birth.weightKg()).put("units", "KGM");
        }
        return node;
    }

    private ObjectNode death(Died died) {
        used("cause", "euthanised");
        core("MovementDeathEvent", event.subject());
        put(node, "explanation", died.cause());
        if (died.euthanised() != null) {
            node.put("deathMethod", died.euthanised() ? "Culled" : "Perished");
        }
        return node;
    }

    private ObjectNode departure(Left left) {
        used("reason");
        core("MovementDepartureEvent", event.subject());
        if (left.reason() != null) {
            node.put("departureKind", left.reason() == Left.Reason.SOLD ? "Sale" : "InternalTransfer");
        }
        return node;
    }

    private ObjectNode diagnosis(IllnessFound illness) {
        used("condition", "severity", "signs");
        ObjectNode found =
                core("DiagnosisEvent", event.subject()).putArray("diagnoses").addObject();
        found.put("name", illness.condition());
        identifier(found, "diagnosisCode", Icar.CONDITION, illness.condition());
        put(found, "description", illness.signs());
        if (illness.severity() != null) {
            found.put("severity", Icar.SEVERITY.get(illness.severity())).put("severityScore", illness.severity());
        }
        return node;
    }

    private ObjectNode treatment(Treated treated) {
        used("medicine", "route", "batch", "meat_withdrawal_days", "given_by");
        core("TreatmentEvent", event.subject()).putObject("medicine").put("name", treated.medicine());
        put(node, "procedure", treated.route());
        put(node, "responsible", treated.givenBy());
        batch(treated.batch());
        if (treated.meatWithdrawalDays() != null) {
            OffsetDateTime end = event.time().plus(treated.meatWithdrawalDays(), ChronoUnit.DAYS);
            node.putArray("withdrawals").addObject().put("productType", "Meat").put("endDate", utc(end));
        }
        String unit = treated.doseUnit() == null ? null : Icar.DOSE_UNIT.get(treated.doseUnit());
        if (treated.dose() != null && unit != null) {
            used("dose", "dose_unit");
            node.putObject("dose").put("doseQuantity", treated.dose()).put("doseUnits", unit);
        }
        return node;
    }

    private ObjectNode vaccination(Vaccinated vaccinated) {
        used("vaccine", "batch");
        core("TreatmentEvent", event.subject()).putObject("medicine").put("name", vaccinated.vaccine());
        node.put("procedure", Icar.VACCINATION);
        batch(vaccinated.batch());
        return node;
    }

    private void batch(String batch) {
        if (batch != null) {
            node.putArray("batches").addObject().put("identifier", batch);
        }
    }

    private ObjectNode weight(Weighed weighed) {
        used("weight_kg");
        ObjectNode weight = core("WeightEvent", event.subject()).putObject("weight");
        weight.put("measurement", weighed.weightKg()).put("units", "KGM");
        return node;
    }

    /** The standard's sets of animals stand for pens. */
    private ObjectNode join(Moved moved) {
        used("pen");
        return core("AnimalSetJoinEvent", event.subject()).put("animalSetId", moved.pen());
    }

    private void location(String pen) {
        identifier(node, "location", pen == null ? Icar.FARM : Icar.PEN, pen == null ? "farm" : pen);
    }

    private static String sex(Birth birth) {
        return birth.sex() == null ? "Unknown" : Icar.SEX.get(birth.sex().word());
    }

    private void used(String... fields) {
        rest.removeAll(Set.of(fields));
    }

    private static void identifier(ObjectNode into, String name, String scheme, String id) {
        into.putObject(name).put("scheme", scheme).put("id", id);
    }

    private static void put(ObjectNode into, String name, String text) {
        if (text != null) {
            into.put(name, text);
        }
    }

    private static void put(ObjectNode into, String name, Integer number) {
        if (number != null) {
            into.put(name, number);
        }
    }

    private static String utc(OffsetDateTime time) {
        return time.toInstant().toString();
    }
}
