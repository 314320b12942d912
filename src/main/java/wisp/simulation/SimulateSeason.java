package wisp.simulation;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
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
        int written = lines(to -> Season.inOrder(model, calves, seed, to), out);
        ObjectNode json = new JsonMapper().createObjectNode();
        json.put("about", "Invented data. What is built into the simulated season beside this file.");
        json.setAll(Truths.json(model, calves, seed));
        Files.writeString(truthsBeside(out), Truths.text(json));
        return written;
    }

    /** {@code season.truths.json} for {@code season.jsonl}; a name without that ending has it appended. */
    public static Path truthsBeside(Path out) {
        String name = out.getFileName().toString();
        String stem = name.endsWith(".jsonl") ? name.substring(0, name.length() - ".jsonl".length()) : name;
        return out.resolveSibling(stem + ".truths.json");
    }

    /**
     * Writes events as they come, one a line.
     *
     * @return how many there were
     */
    static int lines(Consumer<Consumer<Event>> events, Path out) throws IOException {
        int[] written = {0};
        try (BufferedWriter writer = Files.newBufferedWriter(out, StandardCharsets.UTF_8)) {
            events.accept(event -> {
                line(event, writer);
                written[0]++;
            });
        } catch (UncheckedIOException disk) {
            throw disk.getCause();
        }
        return written[0];
    }

    private static void line(Event event, Writer writer) {
        try {
            writer.write(event.json());
            writer.write('\n');
        } catch (IOException disk) {
            throw new UncheckedIOException(disk);
        }
    }
}
