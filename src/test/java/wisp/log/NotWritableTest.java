package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A user who may not write. Root may write anywhere, so under root the attempt is made by a process that has become the
 * user "nobody" (65534) by means of util-linux's setpriv, with a copy of the class path that this user can read.
 */
class NotWritableTest {
    private static final boolean ROOT = "root".equals(System.getProperty("user.name"));

    private Path folder;

    @BeforeEach
    void makeAPublicPlace() throws IOException {
        folder = Files.createTempDirectory("wisp-not-writable");
        allow(folder, "rwxr-xr-x");
    }

    @AfterEach
    void removeIt() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
                allow(each, "rwx------");
                Files.delete(each);
            }
        }
    }

    @Test
    void aFolderThatCannotBeMadeIsRefused() throws Exception {
        Path data = Files.createDirectory(folder.resolve("locked"));
        allow(data, "r-xr-xr-x");
        assertEquals(
                "The data folder " + data.resolve("wisp") + " cannot be made (" + data.resolve("wisp")
                        + "). Choose a folder that this user may write to.",
                openAsAnother(data.resolve("wisp")));
    }

    @Test
    void aReadOnlyFolderIsRefused() throws Exception {
        Path data = Files.createDirectory(folder.resolve("locked"));
        allow(data, "r-xr-xr-x");
        assertEquals(refusal(data), openAsAnother(data));
        assertEquals(0, data.toFile().list().length);
    }

    @Test
    void aLogThatOnlyAnotherMayWriteIsRefusedAndLeft() throws Exception {
        Path data = Files.createDirectory(folder.resolve("locked"));
        try (SqliteLog log = SqliteLog.open(data, Notes.CLOCK)) {
            log.append(Notes.notes("n", 3), true);
        }
        allow(data.resolve(SqliteLog.FILE), "r--r--r--");
        allow(data, "r-xr-xr-x");
        assertEquals(refusal(data), openAsAnother(data));
        allow(data, "rwxr-xr-x");
        allow(data.resolve(SqliteLog.FILE), "rw-r--r--");
        try (SqliteLog log = SqliteLog.open(data, Notes.CLOCK)) {
            assertEquals(3, log.verify().events());
        }
    }

    private static String refusal(Path data) {
        return data.resolve(SqliteLog.FILE) + " cannot be written: the folder or the file is read-only, or belongs to"
                + " somebody else. It was left as it is. Give this user the right to write there, or choose another"
                + " data folder.";
    }

    private String openAsAnother(Path data) throws Exception {
        List<String> command = new ArrayList<>();
        if (ROOT) {
            command.addAll(List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups"));
        }
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                ROOT ? publicClassPath() : System.getProperty("java.class.path"),
                OpeningProcess.class.getName(),
                data.toString()));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said.strip();
    }

    private String publicClassPath() throws IOException {
        Path classes = Files.createDirectory(folder.resolve("classes"));
        List<String> copied = new ArrayList<>();
        for (String each : System.getProperty("java.class.path").split(File.pathSeparator)) {
            Path from = Path.of(each);
            boolean needed = Files.isDirectory(from)
                    || Stream.of(
                                    "jooq",
                                    "sqlite",
                                    "jackson",
                                    "slf4j",
                                    "logback",
                                    "reactive",
                                    "r2dbc",
                                    "canonical",
                                    "junit",
                                    "opentest")
                            .anyMatch(part -> from.getFileName().toString().contains(part));
            if (needed && Files.exists(from)) {
                copied.add(copy(from, classes.resolve(copied.size() + "-" + from.getFileName()))
                        .toString());
            }
        }
        return copied.stream().collect(Collectors.joining(File.pathSeparator));
    }

    private static Path copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            all.forEach(each -> {
                try {
                    Path target = to.resolve(from.relativize(each).toString());
                    Files.copy(each, target);
                    allow(target, Files.isDirectory(each) ? "rwxr-xr-x" : "rw-r--r--");
                } catch (IOException failed) {
                    throw new UncheckedIOException(failed);
                }
            });
        }
        return to;
    }

    private static void allow(Path path, String permissions) throws IOException {
        Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(permissions));
    }
}
