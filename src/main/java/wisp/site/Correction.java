package wisp.site;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import wisp.event.EventReader;
import wisp.event.EventType;
import wisp.event.Fault;

/**
 * A correction as a CloudEvent, made from a form, and everything that is wrong with it.
 *
 * @param event the event to record, null where there are faults
 * @param faults what is wrong, by the form's field
 */
record Correction(EventReader.Reading event, List<Fault> faults) {
    /** The source of every correction that a page writes. */
    static final String SOURCE = "wisp:site";

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ISO_OFFSET_DATE_TIME;

    static Correction of(MendForm form, MendTarget target, EventReader reader) {
        List<Fault> faults = new ArrayList<>();
        if (!form.correction().matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")) {
            faults.add(new Fault("", "The form has lost its own name.", "Open the event's page again."));
        }
        ObjectNode data = JSON.objectNode();
        data.put("event_source", target.event().source());
        data.put("event_id", target.event().id());
        if (form.action().equals(MendForm.WITHDRAW)) {
            if (form.reason().isEmpty()) {
                faults.add(new Fault("reason", "Nobody would know why it was withdrawn.", "Say why in a few words."));
            }
        } else if (form.action().equals(MendForm.CORRECT) && !target.correction()) {
            amendment(form, target, reader, data, faults);
        } else {
            faults.add(new Fault("", "Nothing says what is to be done.", "Press one of the two buttons."));
        }
        if (!form.reason().isEmpty()) {
            data.put("reason", form.reason());
        }
        if (!faults.isEmpty()) {
            return new Correction(null, faults);
        }
        EventType type = form.action().equals(MendForm.WITHDRAW) ? EventType.RETRACTED : EventType.AMENDED;
        EventReader.Reading reading = reader.read(envelope(form, target, type, form.opened(), data));
        reading.faults().forEach(fault -> faults.add(new Fault("", fault.toString(), "")));
        return new Correction(reading, faults);
    }

    /** What the amended event would be is read as if it were offered itself, so that nothing worse replaces it. */
    private static void amendment(
            MendForm form, MendTarget target, EventReader reader, ObjectNode data, List<Fault> faults) {
        ObjectNode whole = JSON.objectNode();
        form.fields().forEach(field -> field.put(whole));
        if (form.dayOnly()) {
            whole.put("time_known", false);
        }
        OffsetDateTime time = time(form, target, faults);
        String written = time == null ? target.event().time().toString() : TIME.format(time);
        data.put("time", written);
        data.set("data", whole);
        ObjectNode amended = envelope(form, target, target.event().type(), written, whole);
        for (Fault fault : reader.read(amended).faults()) {
            faults.add(fault);
        }
    }

    private static OffsetDateTime time(MendForm form, MendTarget target, List<Fault> faults) {
        OffsetDateTime typed = TypedTime.read(form.time(), form.later(), form.dayOnly(), target.zone(), faults);
        OffsetDateTime old = target.event().time().atZone(target.zone()).toOffsetDateTime();
        boolean same = typed != null && !form.dayOnly() && typed.isEqual(old.truncatedTo(ChronoUnit.SECONDS));
        return same ? old : typed;
    }

    private static ObjectNode envelope(MendForm form, MendTarget target, EventType type, String time, ObjectNode data) {
        ObjectNode json = JSON.objectNode();
        json.put("specversion", "1.0");
        json.put("id", form.correction());
        json.put("source", SOURCE);
        json.put("type", type.wireName());
        json.put("subject", target.subject());
        json.put("time", time);
        if (!form.name().isEmpty()) {
            json.put("recordedby", form.name());
        }
        json.set("data", data);
        return json;
    }
}
