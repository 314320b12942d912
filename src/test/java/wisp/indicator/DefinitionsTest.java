package wisp.indicator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wisp.event.FarmDescribed.Enterprise;

/** Every folder of {@code definitions/good} is a data folder; what it adds and replaces stands in its expected.txt. */
class DefinitionsTest {
    private static final Path GOOD = Path.of("src", "test", "resources", "definitions", "good");

    /** The ids that other programs may rely on. */
    private static final List<String> FIXED = List.of(
            "stillbirth",
            "perinatal-mortality",
            "preweaning-mortality",
            "preweaning-mortality-rate",
            "tagged-inside-limit",
            "tissue-sampled-inside-limit",
            "registered-inside-limit",
            "castrated-inside-limit",
            "ring-window",
            "dirty-calves",
            "colostrum-in-time",
            "passive-transfer");

    static Stream<Path> dataFolders() throws IOException {
        try (Stream<Path> folders = Files.list(GOOD)) {
            return folders.sorted().toList().stream();
        }
    }

    @Test
    void everyFixedFigureIsShipped() {
        Definitions definitions = Definitions.load(null);
        for (String id : FIXED) {
            assertTrue(definitions.indicator(id).isPresent(), id);
        }
        for (String condition : definitions.conditions().keys()) {
            for (String kind : List.of("-rate", "-risk-21d", "-risk-60d", "-case-fatality")) {
                assertTrue(definitions.indicator(condition + kind).isPresent(), condition + kind);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dataFolders")
    void aDataFolderAddsAndReplacesById(Path folder) throws IOException {
        Definitions shipped = Definitions.load(null);
        String changed = Definitions.load(folder).indicators().stream()
                .filter(indicator -> !shipped.indicator(indicator.id())
                        .map(IndicatorSentence::of)
                        .equals(Optional.of(IndicatorSentence.of(indicator))))
                .map(indicator -> indicator.id() + ": " + IndicatorSentence.of(indicator) + "\n")
                .sorted()
                .collect(Collectors.joining());
        assertEquals(Files.readString(folder.resolve("expected.txt")), changed);
    }

    @Test
    void aFileOfTheDataFolderReplacesWhatIsShippedAndLeavesTheRest() {
        Definitions definitions = Definitions.load(GOOD.resolve("override-and-add"));
        Indicator stillbirth = definitions.indicator("stillbirth").orElseThrow();
        assertEquals(2, stillbirth.version());
        assertEquals("analytics/indicators/stillbirth.yaml", stillbirth.file());
        assertEquals(0.05, stillbirth.target().value());
        Jurisdiction england = definitions.jurisdiction("GB-ENG").orElseThrow();
        Law law = england.on(LocalDate.parse("2026-03-01"), Enterprise.DAIRY).orElseThrow();
        assertEquals(3, law.day("tags").orElseThrow().byDay());
        assertTrue(law.castration().isEmpty());
        assertEquals(
                Definitions.load(null).indicators().size() + 1,
                definitions.indicators().size());
    }

    @Test
    void aTargetOfAFileForEveryConditionBelongsToTheIdItNames() {
        Definitions definitions = Definitions.load(null);
        assertEquals(
                0.25,
                definitions
                        .indicator("diarrhoea-risk-60d")
                        .orElseThrow()
                        .target()
                        .value());
        assertEquals(null, definitions.indicator("bloat-risk-60d").orElseThrow().target());
    }
}
