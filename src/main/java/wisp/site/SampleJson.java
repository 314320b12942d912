package wisp.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Locale;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.sample.SampleChain;
import wisp.sample.TissueSample;

/** Writes a calf's tissue samples as JSON. */
final class SampleJson {
    private SampleJson() {}

    /** Every sample, in order; what is not recorded is null. */
    static ArrayNode of(Life life, Instant now) {
        ArrayNode samples = JsonNodeFactory.instance.arrayNode();
        for (TissueSample sample : SampleChain.of(life).samples()) {
            ObjectNode json = samples.addObject();
            json.put("state", sample.state().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            json.put("tag_number", orNull(sample.tagNumber()));
            json.put("taken", time(sample.taken(), life));
            json.put("sent", time(sample.sent(), life));
            json.put("result", time(sample.result(), life));
            json.put("laboratory", orNull(sample.laboratory()));
            json.put("test", orNull(sample.test()));
            json.put("days_waiting", sample.daysWaiting(now, life.farm().zone()));
        }
        return samples;
    }

    private static String orNull(String text) {
        return text.isEmpty() ? null : text;
    }

    private static String time(LifeEvent event, Life life) {
        return event == null ? null : CalfJson.time(event.time(), life.farm().zone());
    }
}
