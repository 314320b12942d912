package wisp.indicator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class IndicatorSentenceTest {
    private static final Path GOLDEN = Path.of("src", "test", "resources", "sentences", "shipped.txt");

    @Test
    void everyShippedRuleReadsAsItStandsInTheGoldenFile() throws IOException {
        String sentences = Definitions.load(null).indicators().stream()
                .map(indicator -> indicator.id() + "\n    " + IndicatorSentence.of(indicator) + "\n")
                .sorted()
                .collect(Collectors.joining());
        assertEquals(Files.readString(GOLDEN), sentences);
    }
}
