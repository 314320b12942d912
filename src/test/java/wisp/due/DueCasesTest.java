package wisp.due;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.indicator.CaseEvents;
import wisp.indicator.Definitions;

/**
 * Every folder of {@code due} is a boundary of what is due: {@code events.csv} (see {@link CaseEvents}) and
 * {@code expected.txt}. That says {@code at} which moment it is judged, and {@code as-of} which one is known; then, a
 * line each, {@code calf step: state}, with {@code closes}, {@code opens}, {@code never closes}, {@code late}, {@code
 * in time},
 * {@code unlisted}, {@code says} some words or {@code never says} them; {@code absent} for a step that does not concern
 * the calf; and {@code calf only} with the steps that a morning's list holds for it.
 */
class DueCasesTest {
    private static final Path CASES = Path.of("src", "test", "resources", "due");
    private static final Due DUE = new Due(Definitions.load(null));

    static Stream<String> cases() throws IOException {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.map(folder -> folder.getFileName().toString()).sorted().toList().stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void eachStepStandsAsExpected(String name) throws IOException {
        List<String> lines =
                new ArrayList<>(Files.readAllLines(CASES.resolve(name).resolve("expected.txt")));
        Instant asOf = lines.get(0).startsWith("as-of ")
                ? Instant.parse(lines.remove(0).substring(6))
                : null;
        Instant at = Instant.parse(lines.remove(0).substring(3));
        Herd herd = asOf == null ? Herd.following() : Herd.asOf(asOf);
        herd.apply(CaseEvents.read(CASES.resolve(name).resolve("events.csv")));
        List<Executable> checks = new ArrayList<>();
        lines.forEach(line -> check(line, herd.cohort(), at, checks));
        assertFalse(checks.isEmpty());
        assertAll(name, checks);
    }

    @Test
    void thereAreAtLeastFortyCases() throws IOException {
        assertTrue(cases().count() >= 40);
    }

    private static void check(String line, Cohort cohort, Instant at, List<Executable> checks) {
        String calf = line.substring(0, line.indexOf(' '));
        int row = cohort.rowOf(calf);
        List<DueItem> items = DUE.of(cohort.lives().get(row), row, at);
        String rest = line.substring(calf.length() + 1);
        if (rest.startsWith("only")) {
            Set<String> wanted = new TreeSet<>(List.of(rest.substring(4).strip().split(",")));
            wanted.remove("");
            Set<String> listed = items.stream()
                    .filter(DueItem::listed)
                    .map(DueItem::step)
                    .collect(Collectors.toCollection(TreeSet::new));
            checks.add(() -> assertEquals(wanted, listed, line));
            return;
        }
        String step = rest.substring(0, rest.indexOf(':'));
        List<DueItem> of =
                items.stream().filter(item -> item.step().equals(step)).toList();
        String[] parts = rest.substring(step.length() + 2).split(", (?=closes|opens|never|late|in time|unlisted|says)");
        if (parts[0].equals("absent")) {
            checks.add(() -> assertEquals(List.of(), of, line));
            return;
        }
        checks.add(() -> assertEquals(1, of.size(), line));
        if (of.size() == 1) {
            checks.add(() -> assertEquals(parts[0], of.get(0).state().word(), line));
            for (int i = 1; i < parts.length; i++) {
                String part = parts[i];
                checks.add(() -> part(part, of.get(0), line));
            }
        }
    }

    private static void part(String part, DueItem item, String line) {
        String said = item.title() + " " + item.why() + " " + item.rule().limit() + " "
                + item.rule().basis().source() + " " + String.join(" ", item.ways()) + " "
                + String.join(" ", item.cautions());
        if (part.startsWith("closes ")) {
            assertEquals(Instant.parse(whole(part.substring(7))), item.span().closes(), line);
        } else if (part.startsWith("opens ")) {
            assertEquals(Instant.parse(whole(part.substring(6))), item.span().opens(), line);
        } else if (part.equals("never closes")) {
            assertNull(item.span().closes(), line);
        } else if (part.startsWith("never says ")) {
            assertFalse(said.contains(part.substring(11)), () -> line + " but says: " + said);
        } else if (part.startsWith("says ")) {
            assertTrue(said.contains(part.substring(5)), () -> line + " but says: " + said);
        } else if (part.equals("unlisted")) {
            assertFalse(item.listed(), line);
        } else {
            assertNotNull(item.done(), line);
            assertEquals(part.equals("late"), item.doneLate(), line);
        }
    }

    private static String whole(String moment) {
        return moment.length() == 17 ? moment.replace("Z", ":00Z") : moment;
    }
}
