package wisp.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The chain's head is noted outside, and what the chain alone cannot see shows against it. */
class VerifyTest {
    private static final String LINE = """
            {"specversion":"1.0","id":"%d","source":"shed","type":"noted","subject":"A",\
            "time":"2026-03-0%dT08:00:00Z","recordedtime":"2026-03-0%dT09:00:00Z","data":{"text":"%s"}}
            """;

    @TempDir
    private Path folder;

    private Path data;
    private String head;

    @BeforeEach
    void threeDays() throws IOException {
        data = recorded("data", "clean", 3);
        head = Spoken.by("verify", "--data", data, "--head").exits(0).out().strip();
    }

    private Path recorded(String name, String text, int days) throws IOException {
        StringBuilder lines = new StringBuilder();
        for (int day = 1; day <= days; day++) {
            lines.append(LINE.formatted(day, day, day, text));
        }
        Path file = Files.writeString(folder.resolve(name + ".jsonl"), lines);
        Spoken.by("import", "--data", folder.resolve(name), file).exits(0);
        return folder.resolve(name);
    }

    private Spoken against(Path log) {
        return Spoken.by("verify", "--data", log, "--head", head);
    }

    @Test
    void theHeadIsPrintedAlone() {
        assertTrue(head.matches("3:[0-9a-f]{64}"), head);
    }

    @Test
    void aLogThatWentOnPassesThroughTheHead() throws IOException {
        Files.writeString(folder.resolve("more.jsonl"), LINE.formatted(4, 4, 4, "clean"));
        Spoken.by("import", "--data", data, folder.resolve("more.jsonl")).exits(0);
        String said = against(data).exits(0).out();
        assertTrue(said.startsWith("All 4 events are as they were written. Head "), said);
        assertTrue(said.strip().endsWith(". The chain passes through the head noted at 3."), said);
    }

    @Test
    void aChainWrittenAnewShows() throws IOException {
        Path rewritten = recorded("rewritten", "forged", 4);
        Spoken.by("verify", "--data", rewritten).exits(0);
        against(rewritten).exits(1).saysOnlyOneLineWith("Event 3 has the hash ");
    }

    @Test
    void aTailCutOffShows() throws IOException {
        Path cut = recorded("cut", "clean", 2);
        Spoken.by("verify", "--data", cut).exits(0);
        against(cut).exits(1).saysOnlyOneLineWith("The log ends at event 2, and event 3 was noted: ");
    }

    @Test
    void theHeadOfEachDayIsPrintedAndEachIsPassed() {
        String[] lines = Spoken.by("verify", "--data", data, "--days")
                .exits(0)
                .out()
                .strip()
                .split("\\R");
        assertEquals(4, lines.length);
        for (int day = 1; day <= 3; day++) {
            assertTrue(lines[day].matches("2026-03-0" + day + " " + day + ":[0-9a-f]{64}"), lines[day]);
            Spoken.by("verify", "--data", data, "--head", lines[day].substring(11))
                    .exits(0);
        }
        assertEquals("2026-03-03 " + head, lines[3]);
    }

    @Test
    void whatIsNoHeadIsWrongUsage() {
        String said =
                Spoken.by("verify", "--data", data, "--head", "3").exits(2).err();
        assertTrue(said.startsWith("\"3\" is not a head: write it as verify --head printed it, SEQUENCE:HASH."), said);
    }
}
