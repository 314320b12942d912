package wisp.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import wisp.log.EventLog;

/**
 * Gives rows that name a tag number the animal whose it is, as the log stood before the import. A row that the log has
 * already keeps the subject under which it was taken in, so that importing it again is no conflict although a tag was
 * fitted since. A number that is nobody's, or several animals', becomes the subject itself, and nothing is dropped.
 */
final class TagMatching {
    private static final int LISTED = 50;
    private static final Set<String> OF_SAMPLES = Set.of("tissue-sampled", "sample-sent", "sample-result");

    private final TagSubjects subjects;
    private final Map<String, String> takenIn = new HashMap<>();
    private final Set<Long> matched = new TreeSet<>();
    private final Set<Long> earlier = new TreeSet<>();
    private final Map<Long, String> unmatched = new LinkedHashMap<>();

    /** Reads from the log what was taken in before from the mapping's source. */
    TagMatching(TagSubjects subjects, String source, EventLog log) {
        this.subjects = subjects;
        log.replay(0, stored -> {
            if (stored.event().source().equals(source)) {
                takenIn.put(stored.event().id(), stored.event().subject());
            }
        });
    }

    /** Puts the animal in the place of the number that stands as an event's subject. */
    void match(ObjectNode event, long line) {
        String written = event.path("subject").asText("");
        if (written.isEmpty()) {
            return;
        }
        ObjectNode data = (ObjectNode) event.get("data");
        if (OF_SAMPLES.contains(event.path("type").asText()) && !data.has("tag_number")) {
            data.put("tag_number", written);
        }
        String before = takenIn.get(event.path("id").asText());
        if (before != null) {
            earlier.add(line);
            event.put("subject", before);
            return;
        }
        TagSubjects.Whose whose = subjects.of(written, time(event));
        if (whose.subject() == null) {
            unmatched.put(line, "line " + line + ", " + written + ": " + whose.sentence());
        } else {
            matched.add(line);
            event.put("subject", whose.subject());
        }
    }

    /** An event without a time is refused later on; until then any time will do. */
    private static Instant time(ObjectNode event) {
        String time = event.path("time").asText("");
        return time.isEmpty() ? Instant.EPOCH : OffsetDateTime.parse(time).toInstant();
    }

    /** What came of the rows since the last asking, in sentences. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (matched.isEmpty() && unmatched.isEmpty() && earlier.isEmpty()) {
            return notes;
        }
        String before = earlier.isEmpty() ? "" : ", " + earlier.size() + " were there already";
        notes.add(matched.size() + " rows matched to animals by tag number, " + unmatched.size() + " unmatched" + before
                + ".");
        unmatched.values().stream().limit(LISTED).forEach(notes::add);
        if (unmatched.size() > LISTED) {
            notes.add((unmatched.size() - LISTED) + " more unmatched rows stand on the Samples page.");
        }
        matched.clear();
        earlier.clear();
        unmatched.clear();
        return notes;
    }
}
