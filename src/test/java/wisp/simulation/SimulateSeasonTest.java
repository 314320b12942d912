package wisp.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.event.Event;

class SimulateSeasonTest {
    @TempDir
    private Path folder;

    @Test
    void aLineIsWrittenForEachEvent() throws IOException {
        Path out = folder.resolve("season.jsonl");
        int written = SimulateSeason.write(StandardModel.model(), 30, 4, out);
        assertEquals(
                Season.simulate(StandardModel.model(), 30, 4).stream()
                        .map(Event::json)
                        .toList(),
                Files.readAllLines(out));
        assertEquals(written, Files.readAllLines(out).size());
    }

    @Test
    void theTruthsStandBesideWithASentenceEach() throws IOException {
        Path out = folder.resolve("season.jsonl");
        SimulateSeason.write(StandardModel.model(), 30, 4, out);
        JsonNode json =
                new ObjectMapper().readTree(folder.resolve("season.truths.json").toFile());
        assertEquals(4, json.get("seed").asLong());
        assertEquals(30, json.get("calves").asInt());
        assertEquals(
                1.2,
                json.at("/truths/navel-infection_hazard_ratio_navel_delay_doubled/value")
                        .asDouble());
        assertEquals(0.4, json.at("/model/illnesses/0/recurrence").asDouble());
        json.get("truths")
                .forEach(truth -> assertTrue(truth.get("means").asText().endsWith("."), truth.toString()));
        assertEquals(Truths.of(StandardModel.model()).size(), json.get("truths").size(), "two truths share a name");
    }

    @Test
    void aNameWithoutTheEndingKeepsItsWhole() {
        assertEquals(Path.of("a", "b.truths.json"), SimulateSeason.truthsBeside(Path.of("a", "b.jsonl")));
        assertEquals(Path.of("b.json.truths.json"), SimulateSeason.truthsBeside(Path.of("b.json")));
    }

    @Test
    void aFolderThatIsNotThereIsTheDisksOwnError() {
        Path out = folder.resolve("none").resolve("season.jsonl");
        assertThrows(NoSuchFileException.class, () -> SimulateSeason.write(StandardModel.model(), 1, 1, out));
    }
}
