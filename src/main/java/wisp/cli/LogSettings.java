package wisp.cli;

import java.util.List;
import java.util.Map;

/** How the environment asks for the server's log; a word that means nothing there would silence it unseen. */
final class LogSettings {
    private static final Map<String, List<String>> KNOWN = Map.of(
            "WISP_LOG_FORMAT", List.of("text", "json"),
            "WISP_LOG_LEVEL", List.of("TRACE", "DEBUG", "INFO", "WARN", "ERROR"));

    private LogSettings() {}

    /** Refuses what {@code logback.xml} does not know. */
    static void check(Map<String, String> environment) {
        KNOWN.forEach((name, words) -> {
            String said = environment.get(name);
            if (said != null && !words.contains(said)) {
                throw new Refusals(
                        name + " is \"" + said + "\": set it to " + String.join(", ", words) + ", or leave it unset.");
            }
        });
    }
}
