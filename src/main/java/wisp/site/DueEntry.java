package wisp.site;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import wisp.due.DueItem;
import wisp.event.EventReader;
import wisp.event.EventType;
import wisp.event.Fault;
import wisp.history.Life;
import wisp.records.Records;

/**
 * The events that a tick records, and everything that is wrong with it.
 *
 * @param events the events to record
 * @param faults what is wrong, by the form's field; with any, nothing is to be recorded
 */
record DueEntry(List<EventReader.Reading> events, List<Fault> faults) {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ISO_OFFSET_DATE_TIME;

    static DueEntry of(DueForm form, DueItem item, DueTick tick, Records records, List<Life> herd, String worker) {
        ZoneId zone = item.life().farm().zone();
        List<Fault> faults = new ArrayList<>();
        Instant now = records.clock().instant().truncatedTo(ChronoUnit.SECONDS);
        OffsetDateTime time = form.time().isEmpty()
                ? now.atZone(zone).toOffsetDateTime()
                : TypedTime.read(form.time(), form.later(), form.dayOnly(), zone, faults);
        List<ObjectNode> all = data(form, item, tick, faults);
        if (time != null) {
            early(time.toInstant(), form.dayOnly(), item, faults);
            LocalDate day = time.toLocalDate();
            DueProcedure.check(all.get(0), item, records.definitions().law(item.life()), day, faults);
        }
        if (item.event() == EventType.TAG_FITTED) {
            TypedTag.check(all.get(0), item.life(), herd, form.sure(), faults);
        }
        List<EventReader.Reading> events = new ArrayList<>();
        OffsetDateTime written = time == null ? now.atZone(zone).toOffsetDateTime() : time;
        for (int i = 0; i < all.size(); i++) {
            EventReader.Reading reading = records.reader().read(envelope(form, i, item, written, all.get(i), worker));
            events.add(reading);
            if (i == 0) {
                faults.addAll(reading.faults());
            }
        }
        return new DueEntry(events, List.copyOf(faults));
    }

    /** The data of each event; a second tag has the same number and the other ear. */
    private static List<ObjectNode> data(DueForm form, DueItem item, DueTick tick, List<Fault> faults) {
        ObjectNode data = JSON.objectNode();
        tick.typed(form).fields().stream()
                .filter(field -> !field.name().equals(DueTick.PAIR))
                .forEach(field -> field.put(data));
        if (form.dayOnly() && !form.time().isEmpty()) {
            data.put("time_known", false);
        }
        boolean pair = item.event() == EventType.TAG_FITTED
                && "true".equals(form.data().get(DueTick.PAIR));
        if (!pair) {
            return List.of(data);
        }
        String ear = data.path("ear").asText();
        if (ear.isEmpty()) {
            String problem = "With one number in both ears, an ear must be named to tell the tags apart.";
            faults.add(new Fault("data.ear", problem, "Say in which ear this tag is."));
        }
        ObjectNode other = data.deepCopy();
        other.put("ear", ear.equals("left") ? "right" : "left");
        other.put("role", data.path("role").asText().equals("secondary") ? "primary" : "secondary");
        return List.of(data, other);
    }

    private static void early(Instant time, boolean dayOnly, DueItem item, List<Fault> faults) {
        ZoneId zone = item.life().farm().zone();
        Instant opens = item.span().opens();
        Instant born = item.life().born().time();
        Instant last = dayOnly
                ? time.atZone(zone)
                        .toLocalDate()
                        .plusDays(1)
                        .atStartOfDay(zone)
                        .toInstant()
                        .minusNanos(1)
                : time;
        if (last.isBefore(born)) {
            String problem =
                    "The calf was born on " + Shown.moment(born, item.life().birthTimeKnown(), zone) + ".";
            faults.add(new Fault("time", problem, "Write a time after its birth."));
        } else if (last.isBefore(opens)) {
            String problem = "This step counts from " + Shown.moment(opens, true, zone) + " on.";
            faults.add(new Fault("time", problem, "Write when it was done, or wait until then."));
        }
    }

    private static ObjectNode envelope(
            DueForm form, int further, DueItem item, OffsetDateTime time, ObjectNode data, String worker) {
        ObjectNode json = JSON.objectNode();
        json.put("specversion", "1.0");
        json.put("id", form.id(further));
        json.put("source", DueForm.SOURCE);
        json.put("type", item.event().wireName());
        json.put("subject", item.life().key());
        json.put("time", TIME.format(time));
        if (!worker.isEmpty()) {
            json.put("recordedby", worker);
        }
        json.set("data", data);
        return json;
    }
}
