package wisp.indicator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every file of {@code definitions/bad} is a definition with a mistake, and so is every data folder there that needs
 * more than one file. The whole message stands beside it in a text file of the same name.
 */
class WrongDefinitionsTest {
    private static final Path BAD = Path.of("src", "test", "resources", "definitions", "bad");

    static Stream<Path> mistakes() throws IOException {
        try (Stream<Path> files = Files.list(BAD)) {
            return files.filter(file -> !file.toString().endsWith(".txt")).sorted().toList().stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mistakes")
    void theMessageSaysWhereWhatAndTheMend(Path mistake) throws IOException {
        String name = mistake.getFileName().toString();
        WrongDefinitions wrong = assertThrows(WrongDefinitions.class, () -> read(mistake, name));
        Path expected = BAD.resolve(name.replace(".yaml", "") + ".txt");
        assertEquals(Files.readString(expected).strip(), wrong.getMessage());
    }

    private static Definitions read(Path mistake, String name) throws IOException {
        return Files.isDirectory(mistake)
                ? Definitions.load(mistake)
                : Definitions.only(name, Files.readString(mistake));
    }
}
