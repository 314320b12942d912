package wisp.simulation;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wisp.event.Event;

/** Writes a simulated season as JSON Lines, and what is true in it beside. */
public final class SimulateSeason {
    private SimulateSeason() {}

    /**
     * Writes the events to {@code out} and the truths to {@link #truthsBeside}.
     *
     * @return how many events were written
     */
    public static int write(Model model, int calves, long seed, Path out) throws IOException {
        List<Event> events = Season.simulate(model, calves, seed);
        lines(events, out);
        ObjectNode json = new JsonMapper().createObjectNode();
        json.put("about", "Invented data. What is built into the simulated season beside this file.");
        json.put("season", model.calendar().season());
        json.put("calves", calves);
        json.put("seed", seed);
        json.set("truths", Truths.json(model));
        Files.writeString(truthsBeside(out), Truths.text(json));
        return events.size();
    }

    /** {@code season.truths.json} for {@code season.jsonl}; a name without that ending has it appended. */
    public static Path truthsBeside(Path out) {
        String name = out.getFileName().toString();
        String stem = name.endsWith(".jsonl") ? name.substring(0, name.length() - ".jsonl".length()) : name;
        return out.resolveSibling(stem + ".truths.json");
    }

    static void lines(List<Event> events, Path out) throws IOException {
        try (BufferedWriter writer = Files.newBufferedWriter(out, StandardCharsets.UTF_8)) {
            for (Event event : events) {
                writer.write(event.json());
                writer.write('\n');
            }
        }
    }
}
