package wisp.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Keeps the sources readable: short methods and files, narrow lines, a sentence on every public type. */
class TidyTest {
    private static final Path MAIN = Path.of("src/main/java");
    private static final int LINES_OF_A_FILE = 300;
    private static final int LINES_OF_A_METHOD = 60;
    private static final int COLUMNS = 120;

    /** Split, so that this file does not find itself. */
    private static final Pattern UNFINISHED = Pattern.compile("TO" + "DO|FIX" + "ME|@Dis" + "abled|net\\.jq" + "wik");

    @Test
    void filesAreShort() throws IOException {
        List<String> long300 = new ArrayList<>();
        for (Path root : List.of(MAIN, Path.of("src/test/java"), Path.of("src/bench/java"))) {
            for (Path file : sources(root)) {
                int lines = Files.readAllLines(file).size();
                if (lines > LINES_OF_A_FILE) {
                    long300.add(file + ": " + lines + " lines");
                }
            }
        }
        assertEquals(List.of(), long300);
    }

    @Test
    void linesAreNarrow() throws IOException {
        List<String> wide = new ArrayList<>();
        for (Path root : List.of(MAIN, Path.of("src/bench/java"))) {
            for (Path file : sources(root)) {
                List<String> lines = Files.readAllLines(file);
                for (int i = 0; i < lines.size(); i++) {
                    if (lines.get(i).length() > COLUMNS) {
                        wide.add(file + ":" + (i + 1));
                    }
                }
            }
        }
        assertEquals(List.of(), wide);
    }

    @Test
    void nothingIsLeftUnfinishedOrSwitchedOff() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path root : List.of(MAIN, Path.of("src/test/java"), Path.of("src/bench/java"))) {
            for (Path file : sources(root)) {
                if (UNFINISHED.matcher(Files.readString(file)).find()) {
                    found.add(file.toString());
                }
            }
        }
        assertEquals(List.of(), found);
    }

    @Test
    void methodsAreShortAndPublicTypesExplained() throws IOException {
        List<String> untidy = new ArrayList<>();
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            var units = files.getJavaFileObjectsFromPaths(sources(MAIN));
            JavacTask task = (JavacTask) compiler.getTask(null, files, null, List.of("-proc:none"), null, units);
            DocTrees trees = DocTrees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                new Scan(unit, trees, untidy).scan(unit, null);
            }
        }
        assertTrue(untidy.isEmpty(), () -> String.join("\n", untidy));
    }

    /** Walks one file and notes long methods and public types without Javadoc. */
    private static final class Scan extends TreePathScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final DocTrees trees;
        private final List<String> untidy;

        Scan(CompilationUnitTree unit, DocTrees trees, List<String> untidy) {
            this.unit = unit;
            this.trees = trees;
            this.untidy = untidy;
        }

        @Override
        public Void visitClass(ClassTree type, Void nothing) {
            Set<Modifier> modifiers = type.getModifiers().getFlags();
            boolean open = modifiers.contains(Modifier.PUBLIC);
            if (open && trees.getDocComment(getCurrentPath()) == null) {
                untidy.add(file() + ": the public type " + type.getSimpleName() + " has no Javadoc");
            }
            return super.visitClass(type, nothing);
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            SourcePositions positions = trees.getSourcePositions();
            LineMap lines = unit.getLineMap();
            long first = positions.getStartPosition(unit, method);
            long last = positions.getEndPosition(unit, method);
            if (first >= 0 && last > first) {
                long length = lines.getLineNumber(last) - lines.getLineNumber(first) + 1;
                if (length > LINES_OF_A_METHOD) {
                    untidy.add(file() + ": " + method.getName() + " has " + length + " lines");
                }
            }
            return super.visitMethod(method, nothing);
        }

        private String file() {
            return unit.getSourceFile().getName();
        }
    }

    private static List<Path> sources(Path root) throws IOException {
        if (!Files.isDirectory(root)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
    }
}
