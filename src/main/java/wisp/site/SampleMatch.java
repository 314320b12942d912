package wisp.site;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wisp.cohort.Cohort;
import wisp.event.EventReader;
import wisp.event.EventReader.Reading;
import wisp.event.EventType;
import wisp.event.Fault;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.sample.TagIndex;
import wisp.sample.UnmatchedSample;

/**
 * Says whose an unmatched result is, as two events: the same result of the calf, and the withdrawal of the one that
 * stood under the number alone.
 *
 * @param events the two, empty where there are faults
 * @param calf the calf's key, empty where there are faults
 * @param faults what is wrong
 */
record SampleMatch(List<Reading> events, String calf, List<Fault> faults) {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    /**
     * What a form asks for.
     *
     * @param form the form's own name, so that the same form sent twice is one match
     * @param opened when the form was opened
     * @param calf a key or a tag number
     */
    static SampleMatch of(
            Cohort cohort, EventReader reader, String form, String opened, String source, String id, String calf) {
        TagIndex index = new TagIndex(cohort);
        Optional<UnmatchedSample> stray = UnmatchedSample.of(cohort, index).stream()
                .filter(one ->
                        one.event().source().equals(source) && one.event().id().equals(id))
                .findFirst();
        if (stray.isEmpty()) {
            return refused("It was matched or withdrawn already.", "Look at the calf's samples.");
        }
        if (!form.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")) {
            return refused("The form has lost its own name.", "Open the page again.");
        }
        LifeEvent event = stray.get().event();
        List<Life> found = calf.isBlank() ? List.of() : index.find(calf, event.time());
        if (found.size() != 1) {
            String problem = calf.isBlank()
                    ? "Nothing says whose it is."
                    : (found.isEmpty() ? "No calf of that day has the key or tag number " : "Several animals have had ")
                            + calf + ".";
            return refused(problem, "Choose a calf, or write its key.");
        }
        String key = found.get(0).key();
        List<Reading> events =
                List.of(reader.read(result(form, event, key)), reader.read(withdrawal(form, opened, stray.get(), key)));
        List<Fault> faults = new ArrayList<>();
        events.forEach(reading -> faults.addAll(reading.faults()));
        return new SampleMatch(faults.isEmpty() ? events : List.of(), key, faults);
    }

    private static SampleMatch refused(String problem, String mend) {
        return new SampleMatch(List.of(), "", List.of(new Fault("", problem, mend)));
    }

    private static ObjectNode result(String form, LifeEvent event, String key) {
        ObjectNode json =
                envelope(form + ".sample", event.type(), key, event.time().toString());
        ObjectNode data =
                (ObjectNode) CalfJson.event(event, java.time.ZoneOffset.UTC).get("data");
        if (!event.timeKnown()) {
            data.put("time_known", false);
        }
        json.set("data", data);
        return json;
    }

    private static ObjectNode withdrawal(String form, String opened, UnmatchedSample stray, String key) {
        ObjectNode json = envelope(form + ".withdrawal", EventType.RETRACTED, stray.number(), opened);
        json.putObject("data")
                .put("event_source", stray.event().source())
                .put("event_id", stray.event().id())
                .put("reason", "It is of calf " + key + ".");
        return json;
    }

    private static ObjectNode envelope(String id, EventType type, String subject, String time) {
        return JSON.objectNode()
                .put("specversion", "1.0")
                .put("id", id)
                .put("source", Correction.SOURCE)
                .put("type", type.wireName())
                .put("subject", subject)
                .put("time", time);
    }
}
