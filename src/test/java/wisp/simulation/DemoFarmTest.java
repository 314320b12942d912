package wisp.simulation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.event.EventReader;

class DemoFarmTest {
    private static final Path KEPT = Path.of(System.getProperty("wisp.basedir", "."), "demo-data");

    @Test
    void theDemoThatIsKeptIsTheDemoThatIsMade(@TempDir Path made) throws IOException {
        DemoFarm.write(made);
        for (String file : List.of("demo.jsonl", "demo.truths.json")) {
            assertArrayEquals(
                    Files.readAllBytes(made.resolve(file)),
                    Files.readAllBytes(KEPT.resolve(file)),
                    file + " differs from what the model makes: run wisp.simulation.DemoFarm to make it again.");
        }
    }

    @Test
    void everyLineOfTheDemoIsTakenWhenOffered() throws IOException {
        Model last = DemoFarm.parts().get(2).model();
        EventReader reader = SeasonTest.reader(last);
        List<String> lines = Files.readAllLines(KEPT.resolve("demo.jsonl"));
        for (String line : lines) {
            EventReader.Reading reading = reader.read(line);
            assertTrue(reading.sound(), () -> line + " " + reading.faults());
        }
        assertTrue(lines.get(0).contains("\"farm-described\""));
        assertTrue(lines.get(lines.size() - 1).contains("\"time\":\"2026-05-20T18:00:00+01:00\""));
    }

    @Test
    void theLastSeasonDiffersAsItsReadmeSays() {
        Model before = DemoFarm.parts().get(1).model();
        Model last = DemoFarm.parts().get(2).model();
        assertEquals(30, before.navelCare().medianMinutes());
        assertEquals(16, last.navelCare().medianMinutes());
        Place boxesBefore = before.places().get(1);
        Place boxesLast = last.places().get(1);
        assertEquals("north boxes", boxesLast.name());
        // Worked out apart from the code: mean of 1 / (1 + exp(-(d + 0.14 k - 1.6))) over k = 0 … n - 1.
        assertEquals(0.1212, before.cleanliness().dirty(boxesBefore), 0.0005);
        assertEquals(0.4120, last.cleanliness().dirty(boxesLast), 0.0005);
    }
}
