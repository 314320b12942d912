package wisp.house;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Holds the direction of packages: data flows one way, and none may use one to its right. */
class ArchitectureTest {
    private static final JavaClasses WISP = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("wisp");

    /** What each package may use; statistics and chart stand by themselves. */
    private static final Map<String, Set<String>> MAY_USE = mayUse();

    private static Map<String, Set<String>> mayUse() {
        Map<String, Set<String>> arrows = new LinkedHashMap<>();
        arrows.put("statistics", Set.of());
        arrows.put("chart", Set.of());
        arrows.put("event", Set.of());
        arrows.put("simulation", Set.of("event"));
        arrows.put("log", Set.of("event"));
        arrows.put("interchange", Set.of("event", "log"));
        arrows.put("tag", Set.of());
        arrows.put("history", Set.of("event", "log", "tag"));
        arrows.put("backup", Set.of("event", "log", "history"));
        arrows.put("cohort", Set.of("event", "log", "history"));
        arrows.put("indicator", Set.of("event", "history", "cohort", "statistics"));
        arrows.put("question", Set.of("event", "history", "cohort", "indicator", "statistics"));
        arrows.put("due", Set.of("event", "history", "cohort", "indicator", "statistics", "tag"));
        arrows.put("calendar", Set.of("event", "history", "cohort", "indicator", "due"));
        arrows.put("sample", Set.of("event", "log", "history", "cohort", "tag"));
        arrows.put("medicine", Set.of("event", "history", "cohort", "indicator"));
        arrows.put("records", Set.of("event", "log", "history", "cohort", "indicator"));
        Set<String> answers = Set.of("question", "due", "calendar", "sample", "medicine", "tag", "statistics", "chart");
        arrows.put("report", and(answers, "event", "log", "history", "cohort", "indicator", "records"));
        arrows.put("site", and(arrows.get("report"), "report"));
        arrows.put("cli", and(arrows.get("site"), "site", "backup", "interchange", "simulation"));
        return arrows;
    }

    private static Set<String> and(Set<String> some, String... others) {
        Set<String> all = new TreeSet<>(some);
        all.addAll(List.of(others));
        return all;
    }

    @Test
    void everyPackageHasItsPlace() {
        Set<String> found = new TreeSet<>();
        WISP.forEach(type -> found.add(packageOf(type)));
        assertTrue(MAY_USE.keySet().containsAll(found), found::toString);
    }

    @Test
    void noPackageUsesOneToItsRight() {
        List<String> wrong = new ArrayList<>();
        for (JavaClass type : WISP) {
            String from = packageOf(type);
            for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                String to = packageOf(dependency.getTargetClass());
                boolean ours = dependency.getTargetClass().getPackageName().startsWith("wisp");
                if (ours && !from.equals(to) && !MAY_USE.get(from).contains(to)) {
                    wrong.add(dependency.getDescription());
                }
            }
        }
        assertTrue(wrong.isEmpty(), () -> String.join("\n", wrong));
    }

    @Test
    void thereIsNoCircle() {
        slices().matching("wisp.(*)..").should().beFreeOfCycles().check(WISP);
    }

    @Test
    void noClassIsDead() {
        // beside the programs: a log without a disk, for whoever builds on Wisp, held to the same promises
        Set<String> entrances = Set.of("wisp.cli.Wisp", "wisp.simulation.DemoFarm", "wisp.log.MemoryLog");
        List<String> dead = new ArrayList<>();
        for (JavaClass type : WISP) {
            boolean named =
                    !type.getSimpleName().isEmpty() && !type.getSimpleName().equals("package-info");
            boolean used = type.getDirectDependenciesToSelf().stream()
                    .anyMatch(dependency ->
                            !outermost(dependency.getOriginClass()).equals(outermost(type)));
            if (named && !used && outermost(type).equals(type) && !entrances.contains(type.getName())) {
                dead.add(type.getName());
            }
        }
        // asked for by the statistics' own users, not by other classes yet
        dead.removeIf(name -> name.startsWith("wisp.statistics.") || name.startsWith("wisp.chart."));
        assertEquals(List.of(), dead);
    }

    private static JavaClass outermost(JavaClass type) {
        return type.getEnclosingClass().map(ArchitectureTest::outermost).orElse(type);
    }

    private static String packageOf(JavaClass type) {
        String name = type.getPackageName();
        return name.startsWith("wisp.") ? name.substring(5).split("\\.")[0] : name;
    }
}
