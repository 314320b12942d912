package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wisp.log.Appended.Outcome.ACCEPTED;
import static wisp.log.Appended.Outcome.DUPLICATE;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.event.Event;
import wisp.event.EventType;

/** A log that was written under each schema is opened as it was; a file in the resources is never written again. */
class EarlierSchemasTest {
    // Written by schema 1 on the day it came to be; the head was noted then.
    private static final String HEAD_1 = "1e4a58ead3e7614ad2a2cf9dd29222963d20fc9f05476998d01c4706a2f58ab8";

    @TempDir
    private Path folder;

    @Test
    void aLogOfSchema1OpensWithItsHashes() throws Exception {
        try (InputStream fixture = getClass().getResourceAsStream("schema-1.db")) {
            Files.copy(fixture, folder.resolve(SqliteLog.FILE));
        }
        try (SqliteLog log = SqliteLog.open(folder, Notes.CLOCK)) {
            assertEquals(new Verification(8, HEAD_1, 0, ""), log.verify());
            List<StoredEvent> events = log.read(0, 100);
            assertEquals(
                    List.of(
                            EventType.FARM_DESCRIBED,
                            EventType.BIRTH,
                            EventType.NAVEL_TREATED,
                            EventType.COLOSTRUM_FED,
                            EventType.NOTED,
                            EventType.ILLNESS_FOUND,
                            EventType.AMENDED,
                            EventType.RETRACTED),
                    events.stream().map(e -> e.event().type()).toList());
            assertEquals(
                    "{\"data\":{\"alive\":true,\"dam\":\"cow-12\",\"ease\":2,\"pen\":\"P1\",\"sex\":\"male\","
                            + "\"weight_kg\":41.5},\"id\":\"2\",\"recordedby\":\"Stock person\","
                            + "\"recordedtime\":\"2026-03-06T08:00:00.000Z\",\"source\":\"herd-book\","
                            + "\"specversion\":\"1.0\",\"subject\":\"calf-1\",\"time\":\"2026-03-01T05:10:00+00:00\","
                            + "\"type\":\"birth\"}",
                    events.get(1).event().json());
            Event known = events.get(4).event();
            assertEquals(
                    List.of(DUPLICATE, ACCEPTED),
                    log.append(List.of(known, Notes.note("new", "x")), true).outcomes());
            assertEquals(9, log.verify().events());
        }
    }
}
