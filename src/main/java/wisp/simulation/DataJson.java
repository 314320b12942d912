package wisp.simulation;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import wisp.event.Amended;
import wisp.event.Birth;
import wisp.event.BloodTested;
import wisp.event.Castrated;
import wisp.event.CleanlinessScored;
import wisp.event.ColostrumFed;
import wisp.event.Died;
import wisp.event.Disbudded;
import wisp.event.EventData;
import wisp.event.FarmDescribed;
import wisp.event.IllnessFound;
import wisp.event.Left;
import wisp.event.Moved;
import wisp.event.Named;
import wisp.event.NavelChecked;
import wisp.event.NavelTreated;
import wisp.event.Noted;
import wisp.event.PenBedded;
import wisp.event.Recovered;
import wisp.event.Registered;
import wisp.event.Relief;
import wisp.event.Retracted;
import wisp.event.SampleResult;
import wisp.event.SampleSent;
import wisp.event.TagFitted;
import wisp.event.TissueSampled;
import wisp.event.Treated;
import wisp.event.Vaccinated;
import wisp.event.Weighed;

/** Writes the fields of an event's data; what is null is left out. */
record DataJson(JsonGenerator out) {
    void write(EventData data) throws IOException {
        switch (data.type()) {
            case BIRTH -> birth((Birth) data);
            case CLEANLINESS_SCORED -> cleanliness((CleanlinessScored) data);
            case NAVEL_TREATED -> navel((NavelTreated) data);
            case NAVEL_CHECKED -> word("finding", ((NavelChecked) data).finding());
            case COLOSTRUM_FED -> colostrum((ColostrumFed) data);
            case BLOOD_TESTED -> blood((BloodTested) data);
            case TAG_FITTED -> tag((TagFitted) data);
            case TISSUE_SAMPLED -> text("tag_number", ((TissueSampled) data).tagNumber());
            case SAMPLE_SENT -> sent((SampleSent) data);
            case SAMPLE_RESULT -> result((SampleResult) data);
            case REGISTERED -> text("document", ((Registered) data).document());
            case CASTRATED -> castrated((Castrated) data);
            case DISBUDDED -> disbudded((Disbudded) data);
            case ILLNESS_FOUND -> illness((IllnessFound) data);
            case RECOVERED -> text("condition", ((Recovered) data).condition());
            case TREATED -> treated((Treated) data);
            case VACCINATED -> vaccinated((Vaccinated) data);
            case MOVED -> text("pen", ((Moved) data).pen());
            case WEIGHED -> number("weight_kg", ((Weighed) data).weightKg());
            case LEFT -> word("reason", ((Left) data).reason());
            case DIED -> died((Died) data);
            case PEN_BEDDED -> bedded((PenBedded) data);
            case NOTED -> text("text", ((Noted) data).text());
            case FARM_DESCRIBED -> farm((FarmDescribed) data);
            case RETRACTED -> retracted((Retracted) data);
            case AMENDED -> amended((Amended) data);
            case WEANED, PEN_CLEANED -> {
                // These say all by their type.
            }
        }
    }

    private void birth(Birth birth) throws IOException {
        flag("alive", birth.alive());
        word("sex", birth.sex());
        text("dam", birth.dam());
        text("sire", birth.sire());
        text("breed", birth.breed());
        text("pen", birth.pen());
        whole("ease", birth.ease());
        whole("litter_size", birth.litterSize());
        whole("dam_parity", birth.damParity());
        number("weight_kg", birth.weightKg());
        flag("keep_entire", birth.keepEntire());
    }

    private void cleanliness(CleanlinessScored scored) throws IOException {
        whole("score", scored.score());
        text("pen", scored.pen());
    }

    private void navel(NavelTreated treated) throws IOException {
        text("product", treated.product());
        number("concentration_percent", treated.concentrationPercent());
        word("method", treated.method());
    }

    private void colostrum(ColostrumFed fed) throws IOException {
        number("volume_l", fed.volumeL());
        word("method", fed.method());
        number("brix_percent", fed.brixPercent());
    }

    private void blood(BloodTested tested) throws IOException {
        number("serum_protein_g_dl", tested.serumProteinGDl());
        number("serum_brix_percent", tested.serumBrixPercent());
        number("igg_g_l", tested.iggGL());
    }

    private void tag(TagFitted fitted) throws IOException {
        text("number", fitted.number());
        word("ear", fitted.ear());
        word("role", fitted.role());
    }

    private void sent(SampleSent sent) throws IOException {
        text("tag_number", sent.tagNumber());
        text("laboratory", sent.laboratory());
    }

    private void result(SampleResult result) throws IOException {
        word("result", result.result());
        text("tag_number", result.tagNumber());
        text("laboratory", result.laboratory());
        text("test", result.test());
    }

    private void castrated(Castrated castrated) throws IOException {
        word("method", castrated.method());
        flag("both_in", castrated.bothIn());
        relief("anaesthetic", castrated.anaesthetic());
        relief("pain_relief", castrated.painRelief());
    }

    private void disbudded(Disbudded disbudded) throws IOException {
        text("method", disbudded.method());
        relief("anaesthetic", disbudded.anaesthetic());
        relief("pain_relief", disbudded.painRelief());
    }

    private void illness(IllnessFound found) throws IOException {
        text("condition", found.condition());
        whole("severity", found.severity());
        number("temperature_c", found.temperatureC());
        text("signs", found.signs());
    }

    private void treated(Treated treated) throws IOException {
        text("medicine", treated.medicine());
        number("dose", treated.dose());
        text("dose_unit", treated.doseUnit());
        text("route", treated.route());
        text("batch", treated.batch());
        text("condition", treated.condition());
        whole("meat_withdrawal_days", treated.meatWithdrawalDays());
        text("given_by", treated.givenBy());
    }

    private void vaccinated(Vaccinated vaccinated) throws IOException {
        text("vaccine", vaccinated.vaccine());
        text("batch", vaccinated.batch());
    }

    private void died(Died died) throws IOException {
        text("cause", died.cause());
        flag("euthanised", died.euthanised());
    }

    private void bedded(PenBedded bedded) throws IOException {
        text("material", bedded.material());
        number("depth_cm", bedded.depthCm());
    }

    private void farm(FarmDescribed farm) throws IOException {
        text("name", farm.name());
        text("zone", farm.zone().getId());
        text("jurisdiction", farm.jurisdiction());
        word("enterprise", farm.enterprise());
        out.writeArrayFieldStart("seasons");
        for (FarmDescribed.Season season : farm.seasons()) {
            out.writeStartObject();
            text("name", season.name());
            text("from", season.from().toString());
            text("to", season.to().toString());
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void retracted(Retracted retracted) throws IOException {
        text("event_source", retracted.eventSource());
        text("event_id", retracted.eventId());
        text("reason", retracted.reason());
    }

    private void amended(Amended amended) throws IOException {
        text("event_source", amended.eventSource());
        text("event_id", amended.eventId());
        text("time", EventJson.time(amended.time()));
        out.writeFieldName("data");
        out.writeRawValue(amended.dataJson());
        text("reason", amended.reason());
    }

    private void text(String field, String value) throws IOException {
        if (value != null) {
            out.writeStringField(field, value);
        }
    }

    private void word(String field, Named value) throws IOException {
        text(field, value == null ? null : value.word());
    }

    private void whole(String field, Integer value) throws IOException {
        if (value != null) {
            out.writeNumberField(field, value);
        }
    }

    private void number(String field, Double value) throws IOException {
        if (value != null) {
            out.writeNumberField(field, value);
        }
    }

    private void flag(String field, Boolean value) throws IOException {
        if (value != null) {
            out.writeBooleanField(field, value);
        }
    }

    private void relief(String field, Relief relief) throws IOException {
        if (relief != null && relief.product() != null) {
            text(field, relief.product());
        } else if (relief != null) {
            flag(field, relief.given());
        }
    }
}
