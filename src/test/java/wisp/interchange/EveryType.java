package wisp.interchange;

import java.util.ArrayList;
import java.util.List;
import wisp.event.Event;
import wisp.event.EventReader;

/** One event of every type with every field that it can have, some awkward ones besides. */
final class EveryType {
    private static final String LINES = """
            birth|c1|{"alive":true,"sex":"female","dam":"D, the \\"old\\" one","sire":"S","breed":"AA",\
            "pen":"A","ease":2,"litter_size":2,"dam_parity":3,"weight_kg":41.25,"keep_entire":false}
            birth|c2|{"alive":false,"breed":"AA","sire":"S","pen":"A"}
            cleanliness-scored|c1|{"score":2,"pen":"A"}
            navel-treated|c1|{"product":"iodine","concentration_percent":7,"method":"dip"}
            navel-checked|c1|{"finding":"normal"}
            colostrum-fed|c1|{"volume_l":3.5,"method":"tube","brix_percent":24.1}
            blood-tested|c1|{"serum_protein_g_dl":5.6,"serum_brix_percent":8.9,"igg_g_l":18.2}
            tag-fitted|c1|{"number":"0123","ear":"left","role":"primary"}
            tissue-sampled|c1|{"tag_number":"0123"}
            sample-sent|c1|{"tag_number":"0123","laboratory":"North"}
            sample-result|c1|{"result":"negative","tag_number":"0123","laboratory":"North","test":"ELISA"}
            registered|c1|{"document":"P1"}
            castrated|c1|{"method":"ring","both_in":true,"anaesthetic":false,"pain_relief":"meloxicam"}
            disbudded|c1|{"method":"cautery","anaesthetic":"procaine","pain_relief":true}
            illness-found|c1|{"condition":"pneumonia","severity":2,"temperature_c":40.1,"signs":"coughs;\\nlies"}
            recovered|c1|{"condition":"pneumonia"}
            treated|c1|{"medicine":"M","dose":5,"dose_unit":"ml","route":"under the skin","batch":"B1",\
            "condition":"pneumonia","meat_withdrawal_days":28,"given_by":"Ann"}
            treated|c1|{"medicine":"M","dose":2,"dose_unit":"boluses"}
            vaccinated|c1|{"vaccine":"V","batch":"B2"}
            moved|c1|{"pen":"B"}
            weighed|c1|{"weight_kg":60}
            weaned|c1|{"time_known":false}
            left|c1|{"reason":"sold"}
            died|c2|{"cause":"bloat","euthanised":true}
            pen-bedded|A|{"material":"straw","depth_cm":15}
            pen-cleaned|A|{}
            noted|c1|{"text":"  kept with its blanks "}
            noted|c1|{"text":"=1+1"}
            farm-described|farm|{"name":"Hill End","zone":"Europe/London","jurisdiction":"england",\
            "enterprise":"dairy","seasons":[{"name":"Spring","from":"2026-01-01","to":"2026-07-01"}]}
            retracted|c1|{"event_source":"test","event_id":"e20","reason":"other calf"}
            amended|c1|{"event_source":"test","event_id":"e21","time":"2026-03-02T09:00:00+00:00",\
            "data":{"weight_kg":61},"reason":"misread"}
            """;

    private EveryType() {}

    static List<Event> events() {
        List<String> lines = LINES.lines().toList();
        List<Event> events = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String[] part = lines.get(i).split("\\|", 3);
            String json =
                    "{\"specversion\":\"1.0\",\"id\":\"e" + (i + 1) + "\",\"source\":\"test\",\"type\":\"" + part[0]
                            + "\",\"subject\":\"" + part[1] + "\",\"time\":\"2026-03-01T0" + i % 10 + ":30:00+01:00\","
                            + "\"recordedtime\":\"2026-03-05T10:00:00.5Z\",\"recordedby\":\"Ann\","
                            + (i == 3 ? "\"traceparent\":\"00-1\"," : "") + "\"data\":" + part[2] + "}";
            EventReader.Reading reading = Imports.READER.read(json);
            if (!reading.sound()) {
                throw new AssertionError(lines.get(i) + reading.faults());
            }
            events.add(reading.event());
        }
        return events;
    }
}
