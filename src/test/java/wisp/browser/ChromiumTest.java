package wisp.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChromiumTest {
    @TempDir
    private Path folder;

    @Test
    void itIsFoundWhereBothProgramsAre() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        Path browser = program(folder.resolve("chromium"));
        Path driver = program(other.resolve("chromedriver"));
        assertEquals(Optional.of(new Chromium(browser, driver)), Chromium.in(List.of(folder, other)));
    }

    @Test
    void aBrowserWithoutItsDriverIsNotEnough() throws IOException {
        program(folder.resolve("chromium"));
        assertEquals(Optional.empty(), Chromium.in(List.of(folder)));
    }

    @Test
    void aFileThatCannotBeRunIsNoProgram() throws IOException {
        Files.writeString(folder.resolve("chromium"), "");
        program(folder.resolve("chromedriver"));
        assertEquals(Optional.empty(), Chromium.in(List.of(folder)));
    }

    @Test
    void whatIsMissingIsSaidInOneLine() {
        assertEquals(
                "The browser tests need Chromium and its driver: on Debian or Ubuntu run \"apt-get install chromium"
                        + " chromium-driver\" as root, elsewhere put chromium and chromedriver on the PATH.",
                Chromium.MISSING);
    }

    private static Path program(Path file) throws IOException {
        Files.writeString(file, "#!/bin/sh\n");
        assertEquals(true, file.toFile().setExecutable(true));
        return file;
    }
}
