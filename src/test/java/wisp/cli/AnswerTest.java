package wisp.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.simulation.SimulateSeason;
import wisp.simulation.StandardModel;

class AnswerTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    @Test
    void theAnswerIsPrintedAsJson() throws IOException {
        Path season = folder.resolve("season.jsonl");
        SimulateSeason.write(StandardModel.model(), 40, 5, season);
        String data = folder.resolve("data").toString();
        assertEquals(0, run("import", season.toString(), "--data", data), err::toString);
        out.getBuffer().setLength(0);
        assertEquals(0, run("answer", "navels", "--season", "2024-25", "--data", data), err::toString);
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertEquals("2024-25", json.get("season").asText());
        assertEquals(6, json.get("classes").size());
    }

    @Test
    void aQuestionThatThereIsNotIsWrongUsage() {
        assertEquals(2, run("answer", "hooves", "--data", folder.toString()));
        assertTrue(err.toString().startsWith("There is no question hooves. Choose among: "), err.toString());
    }

    private int run(String... arguments) {
        return Wisp.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
    }
}
