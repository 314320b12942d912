package wisp.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import wisp.event.TagFitted;
import wisp.history.Episode;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;
import wisp.history.Withdrawn;
import wisp.indicator.EventFields;

/** Writes calves and their lives as JSON. Times carry the farm's offset. */
final class CalfJson {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private CalfJson() {}

    /** One calf in a list. */
    static ObjectNode brief(Life life) {
        ObjectNode json = JSON.objectNode();
        json.put("calf", life.key());
        ArrayNode tags = json.putArray("tags");
        life.events().forEach(event -> {
            if (event.data() instanceof TagFitted tag) {
                tags.add(tag.number());
            }
        });
        if (life.born() != null) {
            json.put("born", time(life.born().time(), zone(life)));
            json.put("birth_time_known", life.birthTimeKnown());
            fields(life.born()).forEach((name, value) -> put(json, name, value));
        }
        json.put(
                "exit",
                life.exit() == null
                        ? null
                        : life.exit().kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        json.put("exit_time", life.exit() == null ? null : time(life.exit().time(), zone(life)));
        json.put("marks", life.marks().size());
        return json;
    }

    /** A whole life: every event that counts, episodes, marked and withdrawn events. */
    static ObjectNode whole(Life life) {
        ObjectNode json = brief(life);
        ZoneId zone = zone(life);
        ArrayNode events = json.putArray("events");
        life.events().forEach(event -> events.add(event(event, zone)));
        ArrayNode episodes = json.putArray("episodes");
        for (Episode episode : life.episodes()) {
            episodes.addObject()
                    .put("condition", episode.condition())
                    .put("opened", time(episode.opened(), zone))
                    .put("closed", time(episode.closed(), zone));
        }
        ArrayNode marked = json.putArray("marked");
        for (Mark mark : life.marks()) {
            ObjectNode one = marked.addObject();
            one.put("mark", mark.kind().word());
            one.put("problem", (mark.kind().problem() + " " + mark.detail()).strip());
            one.put("mend", mark.kind().mend());
            one.set("event", event(mark.event(), zone));
        }
        ArrayNode withdrawn = json.putArray("withdrawn");
        for (Withdrawn one : life.withdrawn()) {
            ObjectNode node = withdrawn.addObject();
            node.set("event", event(one.event(), zone));
            node.set("by", event(one.by(), zone));
        }
        return json;
    }

    static ObjectNode event(LifeEvent event, ZoneId zone) {
        ObjectNode json = JSON.objectNode();
        json.put("sequence", event.sequence());
        json.put("source", event.source());
        json.put("id", event.id());
        json.put("type", event.type().wireName());
        json.put("time", time(event.time(), zone));
        json.put("time_known", event.timeKnown());
        json.put("recordedtime", time(event.recorded(), zone));
        json.put("recordedby", event.recordedBy());
        json.put("amended", event.amended());
        ObjectNode data = json.putObject("data");
        fields(event).forEach((name, value) -> put(data, name, value));
        return json;
    }

    static String time(Instant instant, ZoneId zone) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(instant.atZone(zone));
    }

    private static Map<String, Object> fields(LifeEvent event) {
        return EventFields.of(event.data());
    }

    private static ZoneId zone(Life life) {
        return life.farm().zone();
    }

    private static void put(ObjectNode json, String name, Object value) {
        if (value instanceof Boolean flag) {
            json.put(name, flag);
        } else if (value instanceof Integer whole) {
            json.put(name, whole);
        } else if (value instanceof Double number) {
            json.put(name, number);
        } else {
            json.put(name, value.toString());
        }
    }
}
