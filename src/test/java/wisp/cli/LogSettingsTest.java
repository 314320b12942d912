package wisp.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;

class LogSettingsTest {
    @Test
    void aWordThatWouldSilenceTheLogIsRefused() {
        Refusals format =
                assertThrows(Refusals.class, () -> LogSettings.check(Map.of("WISP_LOG_FORMAT", "JSON", "HOME", "/")));
        assertEquals("WISP_LOG_FORMAT is \"JSON\": set it to text, json, or leave it unset.", format.getMessage());
        Refusals level = assertThrows(Refusals.class, () -> LogSettings.check(Map.of("WISP_LOG_LEVEL", "")));
        assertEquals(
                "WISP_LOG_LEVEL is \"\": set it to TRACE, DEBUG, INFO, WARN, ERROR, or leave it unset.",
                level.getMessage());
    }

    @Test
    void whatIsKnownAndWhatIsUnsetPasses() {
        assertDoesNotThrow(() -> LogSettings.check(Map.of("WISP_LOG_FORMAT", "json", "WISP_LOG_LEVEL", "DEBUG")));
        assertDoesNotThrow(() -> LogSettings.check(Map.of()));
    }
}
