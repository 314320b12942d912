package wisp.due;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.ZoneId;
import java.util.List;
import wisp.indicator.IntervalJson;
import wisp.statistics.IncidenceCurve;
import wisp.statistics.Interval;

/** A proof as JSON. */
public final class ProofJson {
    private ProofJson() {}

    /** The whole proof. */
    public static ObjectNode of(Proof proof) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("id", proof.id());
        json.put("title", proof.title());
        json.put("season", proof.season());
        json.put("as_of", proof.cut().toString());
        json.put("unit", proof.byHours() ? "hours" : "days");
        json.put("inside", proof.count(ProofCalf.Part.INSIDE));
        json.put("outside", proof.count(ProofCalf.Part.BREACH));
        json.put("pending", proof.count(ProofCalf.Part.PENDING));
        json.put("left_out", proof.count(ProofCalf.Part.LEFT_OUT));
        json.set("share", proof.share() == null ? null : IntervalJson.of(proof.share()));
        ArrayNode limits = json.putArray("limits");
        proof.limits().forEach((rule, at) -> {
            ObjectNode limit = DueJson.rule(rule);
            IntervalJson.put(limit, "at", at);
            limits.add(limit);
        });
        json.set("curve", proof.curve() == null ? null : curve(proof.curve()));
        breaches(json.putArray("breaches"), proof.outside());
        breaches(json.putArray("entered_late"), proof.enteredLate());
        return json;
    }

    private static ArrayNode curve(IncidenceCurve curve) {
        ArrayNode points = JsonNodeFactory.instance.arrayNode();
        for (int i = 0; i < curve.times().length; i++) {
            Interval there = curve.at(curve.times()[i]);
            ObjectNode point = points.addObject();
            point.put("time", curve.times()[i]);
            point.put("done", there.value());
            point.put("low", there.low());
            point.put("high", there.high());
            point.put("at_risk", curve.atRisk()[i]);
            point.put("died", curve.competing()[i]);
            point.put("left_or_open", curve.censored()[i]);
        }
        return points;
    }

    private static void breaches(ArrayNode into, List<Breach> breaches) {
        for (Breach breach : breaches) {
            ZoneId zone = breach.life().farm().zone();
            ObjectNode json = into.addObject();
            json.put("calf", breach.life().key());
            json.put("closes", DueJson.time(breach.closes(), zone));
            json.put(
                    "done",
                    breach.done() == null ? null : DueJson.time(breach.done().time(), zone));
            json.put("recorded", DueJson.time(breach.recorded(), zone));
            json.put("words", breach.words());
            json.put("url", DueJson.page(breach.life()));
        }
    }
}
