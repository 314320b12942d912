package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SeasonSentenceTest {
    private static final Clock NOW = Clock.fixed(Instant.parse("2026-11-01T00:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    @Test
    void nothingRecorded() {
        assertEquals("No calf is recorded.", season(0, 0, 0));
    }

    @Test
    void oneCalfThatLives() {
        // Wilson 1927 for 0 of 1: z² / (1 + z²) = 0.793
        assertEquals(
                "In 2026 one calf was born: none of 1 was born dead or died within 24 h (so few that anything from 0 to 79 %"
                        + " fits), and none of 1 died between 24 h and 60 d (so few that anything from 0 to 79 % fits).",
                season(1, 0, 0));
    }

    @Test
    void oneCalfThatIsBornDead() {
        assertEquals(
                "In 2026 one calf was born: 1 of 1 was born dead or died within 24 h (so few that anything from 21 to 100 %"
                        + " fits).",
                season(1, 1, 0));
    }

    @Test
    void fiveCalves() {
        // Wilson 1927 for 1 of 5: 3.6 to 62.4; for 1 of 4: 4.6 to 69.9
        assertEquals(
                "In 2026 5 calves were born: 1 of 5 was born dead or died within 24 h (so few that anything from 4 to 62 %"
                        + " fits), and 1 of 4 died between 24 h and 60 d (so few that anything from 5 to 70 % fits).",
                season(5, 1, 1));
    }

    @Test
    void aHundredCalves() {
        // Wilson 1927 for 0 of 100: 0 to 3.70
        assertEquals(
                "In 2026 100 calves were born: 0.0 % were born dead or died within 24 h (0 of 100; allowing for chance 0.0"
                        + " to 3.7 %), and 0.0 % died between 24 h and 60 d (0 of 100; allowing for chance 0.0 to 3.7 %).",
                season(100, 0, 0));
    }

    @Test
    void manyCalves() {
        // Wilson 1927 for 600 of 12,000: 4.62 to 5.40; for 570 of 11,400: 4.61 to 5.42
        assertEquals(
                "In 2026 12,000 calves were born: 5.00 % were born dead or died within 24 h (600 of 12,000; allowing for"
                        + " chance 4.62 to 5.40 %), and 5.00 % died between 24 h and 60 d (570 of 11,400; allowing for"
                        + " chance 4.61 to 5.42 %).",
                season(12_000, 600, 570));
    }

    @Test
    void aCalfBornAnHourAgoHasNoFigureYet() {
        try (RunningSite site = RunningSite.over(folder, NOW)) {
            site.post("/api/v1/events", "application/json", Wire.birth("1", "A"));
            assertEquals(
                    "In 2026 one calf was born; no figure of deaths can be given yet.",
                    answer(Wire.spaced(site.get("/").body())));
        }
    }

    /** The sentence of a season in which so many of the calves are born dead, and so many others die at 10 days. */
    private String season(int calves, int dead, int died) {
        try (RunningSite site = RunningSite.over(folder, NOW)) {
            StringBuilder lines = new StringBuilder();
            for (int i = 0; i < calves; i++) {
                String data = "{\"alive\":" + (i >= dead) + "}";
                lines.append(Wire.event("b" + i, "birth", "c" + i, "2026-03-01T08:00:00Z", data))
                        .append('\n');
                if (i >= dead && i < dead + died) {
                    lines.append(Wire.event("d" + i, "died", "c" + i, "2026-03-11T08:00:00Z", "{}"))
                            .append('\n');
                }
            }
            if (calves > 0) {
                lines.append(Wire.event("n", "noted", "farm", "2026-10-01T08:00:00Z", "{\"text\":\"later\"}"));
            }
            assertEquals(
                    201,
                    site.post("/api/v1/events", "application/x-ndjson", lines.toString())
                            .statusCode());
            return answer(Wire.spaced(site.get("/").body()));
        }
    }

    private static String answer(String page) {
        Matcher answer = Pattern.compile("<p class=\"answer\">(.*?)</p>").matcher(page);
        assertEquals(true, answer.find(), page);
        return ListBehind.unlinked(answer.group(1));
    }
}
