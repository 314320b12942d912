package wisp.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Times of events: how they are written (RFC 3339 section 5.6) and which cannot be. The clock says 12:00 UTC. */
class EventTimesTest {
    private static ObjectNode note(String time) {
        return Sent.json("noted", "{'text':'x'}").put("time", time);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-01T07:30:00Z, 2026-03-01T07:30:00Z",
        "2026-03-01t07:30:00z, 2026-03-01T07:30:00Z",
        "2026-03-01T07:30:00.5Z, 2026-03-01T07:30:00.5Z",
        "2026-03-01T07:30:00.123456789+01:00, 2026-03-01T07:30:00.123456789+01:00",
        "2026-03-01T07:30:00-00:00, 2026-03-01T07:30:00Z",
        "2026-03-01T00:00:00+05:45, 2026-03-01T00:00:00+05:45",
        "2026-02-28T20:00:00-11:00, 2026-02-28T20:00:00-11:00",
        "2024-02-29T23:59:59+00:00, 2024-02-29T23:59:59Z"
    })
    void aTimeWithItsOffsetIsRead(String text, String expected) {
        assertEquals(
                OffsetDateTime.parse(expected),
                Sent.READER.read(note(text)).event().time());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-03-01",
                "2026-03-01T07:30:00",
                "2026-03-01T07:30Z",
                "2026-03-01 07:30:00Z",
                "01/03/2026 07:30",
                "2026-03-01T07:30:00+0100",
                "2026-03-01T07:30:00+01",
                "2026-03-01T07:30:00.Z",
                "2026-03-01T07:30:00.1234567890Z",
                "2026-3-1T07:30:00Z",
                "20260301T073000Z",
                "1772350200",
                "2026-03-01T07:30:00Z[Europe/London]"
            })
    void whatIsNoTimeWithAnOffsetIsRefused(String text) {
        assertEquals(
                "time: \"" + text + "\" is not a time with an offset. Write it as 2026-03-01T07:30:00+00:00, the offset"
                        + " being that of the clock on the wall.",
                Sent.faults(note(text)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-02-29T07:30:00Z",
                "2026-02-30T07:30:00Z",
                "2026-13-01T07:30:00Z",
                "2026-03-00T07:30:00Z",
                "2026-03-01T24:00:00Z",
                "2026-03-01T25:00:00Z",
                "2026-03-01T07:60:00Z",
                "2026-03-01T07:30:61Z",
                "2026-03-01T07:30:00+25:00"
            })
    void aTimeThatTheCalendarDoesNotHaveIsRefused(String text) {
        assertEquals(
                "time: \"" + text + "\" is no day or time of the calendar. Check day, month and hour.",
                Sent.faults(note(text)));
    }

    @Test
    void aTimeInTheFutureIsRefusedButForThePhonesClock() {
        assertEquals("", Sent.faults(note("2026-03-01T12:02:00Z")));
        assertEquals("", Sent.faults(note("2026-03-01T13:02:00+01:00")));
        assertEquals(
                "time: It lies in the future. (2026-03-01T12:02:01Z) Check the date, the hour and the offset.",
                Sent.faults(note("2026-03-01T12:02:01Z")));
    }

    @Test
    void aRecordedTimeInTheFutureIsRefused() {
        assertEquals(
                "recordedtime: It lies in the future. (2026-03-01T13:00Z) Check the date, the hour and the offset.",
                Sent.faults(note("2026-03-01T07:00:00Z").put("recordedtime", "2026-03-01T13:00:00Z")));
    }

    @Test
    void whatWasRecordedBeforeItHappenedIsRefused() {
        assertEquals(
                "time: It was recorded before it happened. (2026-03-01T09:00Z) Check the date, the hour and the"
                        + " offset.",
                Sent.faults(note("2026-03-01T09:00:00Z").put("recordedtime", "2026-03-01T08:00:00Z")));
    }

    @Test
    void anAmendmentThatMovesAnEventIntoTheFutureIsRefused() {
        assertEquals(
                "data.time: It lies in the future. (2027-03-01T07:00Z) Check the date, the hour and the offset.",
                Sent.faults(
                        "amended", "{'event_source':'phone','event_id':'7','time':'2027-03-01T07:00:00Z','data':{}}"));
    }

    @Test
    void whatTheLogTookOnceIsReadWithoutAskingTheClockOrTheConditions() {
        ObjectNode old =
                Sent.json("illness-found", "{'condition':'long-forgotten'}").put("time", "2099-01-01T00:00:00Z");
        assertTrue(EventReader.recorded().read(old).sound());
    }

    @Test
    void theDataOfAnAmendmentIsHeldAgainstTheAmendedType() {
        EventReader.AmendedReading sound =
                EventReader.readData(EventType.WEIGHED, "{\"weight_kg\":50,\"time_known\":false}");
        assertEquals(new Weighed(50), sound.data());
        assertEquals(false, sound.timeKnown());
        assertEquals(List.of(), sound.faults());
        EventReader.AmendedReading wrong = EventReader.readData(EventType.WEIGHED, "{\"score\":1}");
        assertEquals(
                List.of("data.data.weight_kg", "data.data.score"),
                wrong.faults().stream().map(Fault::field).toList());
        assertThrows(IllegalArgumentException.class, () -> EventReader.readData(EventType.WEIGHED, "{"));
    }

    @Test
    void aFaultyTimeReadsAsNullAndIsToldOnce() {
        List<String> told = new ArrayList<>();
        assertNull(Rfc3339.read("soon", (problem, mend) -> told.add(problem)));
        assertEquals(List.of("\"soon\" is not a time with an offset."), told);
    }
}
