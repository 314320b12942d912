package wisp.promise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * One command of the program, run as a process of its own.
 *
 * @param code its exit code
 * @param said all that it printed
 */
record Command(int code, String said) {

    static Command run(Object... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "wisp.cli.Wisp"));
        for (Object argument : arguments) {
            command.add(argument.toString());
        }
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(1, TimeUnit.MINUTES));
        return new Command(process.exitValue(), said.strip());
    }

    /** What it printed, where it was to succeed. */
    static String done(Object... arguments) throws IOException, InterruptedException {
        Command ran = run(arguments);
        assertEquals(0, ran.code(), ran.said());
        return ran.said();
    }
}
