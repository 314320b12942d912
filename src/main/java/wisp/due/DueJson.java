package wisp.due;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import wisp.history.Life;
import wisp.indicator.Basis;

/** What is due as JSON, the same over HTTP and on the command line. */
public final class DueJson {
    private DueJson() {}

    /** A whole list. */
    public static ObjectNode of(DueList list) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("at", time(list.at(), list.zone()));
        json.put("count", list.items().size());
        texts(json.putArray("notices"), list.notices());
        ArrayNode items = json.putArray("items");
        list.items().forEach(item -> items.add(of(item)));
        return json;
    }

    /** One step with one calf. */
    public static ObjectNode of(DueItem item) {
        ZoneId zone = item.life().farm().zone();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("calf", item.life().key());
        json.put("tag", item.tag());
        json.put("pen", item.pen());
        json.put("step", item.step());
        json.put("title", item.title());
        json.put("event", item.event().wireName());
        json.put("state", item.state().word());
        json.put("opens", time(item.span().opens(), zone));
        json.put("closes", time(item.span().closes(), zone));
        json.put("closes_latest", time(item.span().closesLatest(), zone));
        json.set("rule", rule(item.rule()));
        json.put("why", item.why().isEmpty() ? null : item.why());
        texts(json.putArray("ways_left"), item.ways());
        texts(json.putArray("cautions"), item.cautions());
        json.put("done", item.done() == null ? null : time(item.done().time(), zone));
        json.put("url", page(item.life()));
        return json;
    }

    /** The address of a calf's page. */
    static String page(Life life) {
        return "/calves/"
                + URLEncoder.encode(life.key(), StandardCharsets.UTF_8).replace("+", "%20");
    }

    static ObjectNode rule(DueRule rule) {
        Basis basis = rule.basis();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("kind", basis.kind().word());
        json.put("place", rule.place().isEmpty() ? null : rule.place());
        json.put("limit", rule.limit());
        json.put("source", basis.source());
        json.put("status", basis.status());
        json.put("read_on", basis.readOn().isEmpty() ? null : basis.readOn());
        return json;
    }

    static String time(Instant moment, ZoneId zone) {
        return moment == null
                ? null
                : DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                        moment.atZone(zone).toOffsetDateTime());
    }

    static void texts(ArrayNode into, List<String> texts) {
        texts.forEach(into::add);
    }
}
