package wisp.indicator;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import wisp.cohort.Herd;
import wisp.log.StoredEvent;

/**
 * Every folder of {@code cases} is a boundary of a definition: {@code events.csv} with a handful of calves (see
 * {@link CaseEvents}), {@code indicator.yaml} with the figure's id under {@code shipped} and what is asked
 * ({@code season}, all where not said; {@code from}, {@code to}, {@code as_of}, {@code by}, {@code pen} …), and
 * {@code expected.json}, in which numbers may be written as an {@link Expression}. Adding a case needs no Java.
 */
class BoundaryCasesTest {
    private static final Path CASES = Path.of("src", "test", "resources", "cases");
    private static final Set<String> ALWAYS = Set.of("numerator", "denominator", "value", "pending", "excluded");
    private static final Set<String> ASKED =
            Set.of("shipped", "season", "from", "to", "as_of", "by", "pen", "sex", "parity", "breed");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Definitions DEFINITIONS = Definitions.load(null);

    static Stream<String> cases() throws IOException {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.map(folder -> folder.getFileName().toString()).sorted().toList().stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFigureIsAsExpected(String name) throws IOException {
        Path folder = CASES.resolve(name);
        Map<?, ?> asked = (Map<?, ?>) new Load(LoadSettings.builder().build())
                .loadFromString(Files.readString(folder.resolve("indicator.yaml")));
        assertTrue(ASKED.containsAll(asked.keySet()), () -> "indicator.yaml asks for " + asked.keySet());
        Indicator indicator =
                DEFINITIONS.indicator(asked.get("shipped").toString()).orElseThrow();
        Selection selection = selection(asked);
        List<StoredEvent> events = CaseEvents.read(folder.resolve("events.csv"));

        Herd atOnce = herd(selection);
        atOnce.apply(events);
        JsonNode actual = figure(indicator, atOnce, selection);
        Herd oneByOne = herd(selection);
        events.forEach(event -> oneByOne.apply(List.of(event)));

        JsonNode expected = JSON.readTree(folder.resolve("expected.json").toFile());
        List<Executable> checks = new ArrayList<>();
        ALWAYS.forEach(key -> checks.add(() -> assertTrue(expected.has(key), "expected.json has no " + key)));
        checks.add(() -> assertEquals(actual, figure(indicator, oneByOne, selection), "event by event"));
        compare("", expected, actual, checks);
        assertAll(name, checks);
    }

    @Test
    void thereAreAtLeastSixtyCases() throws IOException {
        assertTrue(cases().count() >= 60);
    }

    private static Herd herd(Selection selection) {
        return selection.asOf() == null ? Herd.following() : Herd.asOf(selection.asOf());
    }

    private static JsonNode figure(Indicator indicator, Herd herd, Selection selection) {
        return EstimateJson.of(new Figures(DEFINITIONS).of(indicator, herd.cohort(), selection), selection);
    }

    private static Selection selection(Map<?, ?> asked) {
        Object by = asked.get("by");
        return new Selection(
                asked.get("season") == null ? Selection.ALL : text(asked, "season"),
                asked.get("from") == null ? null : LocalDate.parse(text(asked, "from")),
                asked.get("to") == null ? null : LocalDate.parse(text(asked, "to")),
                asked.get("as_of") == null ? null : Instant.parse(text(asked, "as_of")),
                by == null ? null : Stratum.named(by.toString()).orElseThrow(),
                text(asked, "pen"),
                text(asked, "sex"),
                text(asked, "parity"),
                text(asked, "breed"));
    }

    private static String text(Map<?, ?> asked, String key) {
        return asked.get(key) == null ? null : asked.get(key).toString();
    }

    private static void compare(String path, JsonNode expected, JsonNode actual, List<Executable> checks) {
        for (Iterator<String> names = expected.fieldNames(); names.hasNext(); ) {
            String key = names.next();
            String at = path + "/" + key;
            JsonNode want = expected.get(key);
            JsonNode got = actual.get(key);
            if (key.equals("strata")) {
                compareStrata(at, want, got, checks);
            } else if (want.isObject() && !key.equals("excluded")) {
                checks.add(() -> assertNotNull(got, at));
                if (got != null) {
                    compare(at, want, got, checks);
                }
            } else if (got != null && got.isNumber() && !want.isNull()) {
                double number = want.isNumber() ? want.doubleValue() : Expression.value(want.textValue());
                checks.add(() -> assertEquals(number, got.doubleValue(), 1e-9 * Math.max(1, Math.abs(number)), at));
            } else {
                checks.add(() -> assertEquals(want, got, at));
            }
        }
    }

    private static void compareStrata(String at, JsonNode want, JsonNode got, List<Executable> checks) {
        List<String> wanted = want.findValuesAsText("name");
        checks.add(() -> assertEquals(wanted, names(got), at));
        for (int i = 0; i < Math.min(want.size(), got.size()); i++) {
            compare(at + "/" + i, want.get(i), got.get(i), checks);
        }
    }

    private static List<String> names(JsonNode strata) {
        List<String> names = new ArrayList<>();
        strata.forEach(stratum -> names.add(stratum.get("name").textValue()));
        return names;
    }
}
