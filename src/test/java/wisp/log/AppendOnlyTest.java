package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No statement in the code could change or remove an event. */
class AppendOnlyTest {
    private static final Path SOURCES = Path.of("src", "main");

    private static final Pattern IN_SQL = Pattern.compile(
            "(?i)\\bUPDATE\\s+\"?event\\b|\\bDELETE\\s+FROM\\b|\\bREPLACE\\s+INTO\\b|\\bOR\\s+REPLACE\\b|\\bTRUNCATE\\s+(?!ON\\s)"
                    + "|\\bDROP\\s+T|\\bALTER\\s+TABLE\\s+\"?event\\b(?!\\s+ENABLE\\s+ALWAYS\\s+TRIGGER\\b)");
    private static final Pattern IN_JOOQ = Pattern.compile(
            "\\.(deleteFrom|delete|update|truncate|truncateTable|mergeInto|onConflict\\w*|onDuplicateKey\\w*|dropTable"
                    + "|alterTable)\\(");

    @Test
    void noStatementChangesOrRemovesAnEvent() throws IOException {
        List<String> found = new ArrayList<>();
        List<Path> files;
        try (Stream<Path> all = Files.walk(SOURCES)) {
            files = all.filter(f -> f.toString().matches(".*\\.(java|sql)")).toList();
        }
        assertTrue(files.stream().anyMatch(f -> f.endsWith("EventTable.java")), "the event table's code is looked at");
        for (Path file : files) {
            String text = Files.readString(file).replaceAll("(?m)^\\s*(--|//|/?\\*).*$", "");
            if (IN_SQL.matcher(text).find()
                    || text.contains("import org.jooq") && IN_JOOQ.matcher(text).find()) {
                found.add(file.toString());
            }
        }
        assertEquals(List.of(), found);
    }
}
