package wisp.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The envelope of CloudEvents 1.0: what is required, what may come along, what is refused. */
class EnvelopeTest {
    private static ObjectNode note() {
        return Sent.json("noted", "{'text':'x'}");
    }

    @Test
    void aSoundEnvelopeIsRead() {
        ObjectNode sent = note().put("recordedtime", "2026-03-01T08:00:00Z").put("recordedby", "Stock person");
        Event event = Sent.READER.read(sent).event();
        assertEquals(
                new Event(
                        "phone",
                        "1",
                        "calf-1",
                        OffsetDateTime.parse("2026-03-01T07:30:00+01:00"),
                        true,
                        OffsetDateTime.parse("2026-03-01T08:00:00Z"),
                        "Stock person",
                        new Noted("x", null),
                        sent.toString()),
                event);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "id|It is missing. Give it as text; every event needs one.",
                "source|It is missing. Give it as text; every event needs one.",
                "subject|It is missing. Give it as text; every event needs one.",
                "type|It is missing. Give it as text; every event needs one.",
                "time|It is missing. Give it as text; every event needs one.",
                "specversion|It is missing or not \"1.0\". Write \"1.0\"."
            })
    void aMissingAttributeIsNamed(String attribute, String expected) {
        assertEquals(attribute + ": " + expected, Sent.faults(note().without(attribute)));
        assertEquals(attribute + ": " + expected, Sent.faults(note().putNull(attribute)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"id", "source", "subject", "type", "time", "recordedtime", "recordedby"})
    void anAttributeThatIsNotTextIsNamed(String attribute) {
        String expected = attribute + ": It must be text that is not empty. Write it in quotation marks.";
        assertEquals(expected, Sent.faults(note().put(attribute, 7)));
        assertEquals(expected, Sent.faults(note().put(attribute, " ")));
    }

    @Test
    void anotherVersionOfTheSpecificationIsRefused() {
        assertEquals(
                "specversion: It is missing or not \"1.0\". Write \"1.0\".",
                Sent.faults(note().put("specversion", "0.3")));
    }

    @Test
    void aNameHasALimitAndNoControlCharacters() {
        String expected = "id: It is too long or holds control characters. Keep it under 256 plain characters.";
        assertEquals("", Sent.faults(note().put("id", "x".repeat(256))));
        assertEquals(expected, Sent.faults(note().put("id", "x".repeat(257))));
        assertEquals(expected, Sent.faults(note().put("id", "a\u0000b")));
        assertEquals(expected, Sent.faults(note().put("id", "a\nb")));
    }

    @Test
    void anUnknownTypeGetsTheListOfTypes() {
        assertEquals(
                "type: There is no event \"calved\". Use one of: birth, cleanliness-scored, navel-treated,"
                        + " navel-checked, colostrum-fed, blood-tested, tag-fitted, tissue-sampled, sample-sent,"
                        + " sample-result, registered, castrated, disbudded, illness-found, recovered, treated,"
                        + " vaccinated, moved, weighed, weaned, left, died, pen-bedded, pen-cleaned, noted,"
                        + " farm-described, retracted, amended.",
                Sent.faults(note().put("type", "calved")));
    }

    @Test
    void theFarmHasItsOwnSubject() {
        assertEquals(
                "subject: The farm is described under another subject. Write farm.",
                Sent.faults(Sent.json("farm-described", "{}").put("subject", "calf-1")));
    }

    @Test
    void dataMustBeAJsonObject() {
        assertEquals(
                "data: It must be a JSON object. Write {\"field\": value, …}.", Sent.faults(note().put("data", "x")));
        ObjectNode weaned = Sent.json("weaned", "{}");
        assertEquals("", Sent.faults(weaned.without("data")));
        assertEquals("", Sent.faults(weaned.putNull("data")));
    }

    @Test
    void dataThatIsNotJsonIsRefused() {
        assertEquals(
                "datacontenttype: Data must be JSON, not text/xml. Send application/json.",
                Sent.faults(note().put("datacontenttype", "text/xml")));
        assertEquals("", Sent.faults(note().put("datacontenttype", "application/json; charset=utf-8")));
        assertEquals("", Sent.faults(note().put("datacontenttype", "application/vnd.farm+json")));
        assertEquals(
                "data_base64: Data must be JSON, not bytes. Send the fields in data.",
                Sent.faults(note().put("data_base64", "AA==")));
    }

    @Test
    void extensionAttributesAreKept() {
        ObjectNode sent =
                note().put("traceparent", "00-1-2-03").put("partition7", 12).put("sampled", true);
        Event event = Sent.READER.read(sent).event();
        assertEquals(sent.toString(), event.json());
    }

    @Test
    void anExtensionAttributeThatTheSpecificationDoesNotKnowIsRefused() {
        String expected = ": An attribute of the envelope may be text, true, false or a whole number of 32 bits. Write"
                + " it in quotation marks, or put it in data.";
        assertEquals("big" + expected, Sent.faults(note().put("big", 9_007_199_254_740_993L)));
        assertEquals("half" + expected, Sent.faults(note().put("half", 0.5)));
        ObjectNode nested = note();
        nested.putObject("nested").put("a", 1);
        assertEquals("nested" + expected, Sent.faults(nested));
    }

    @Test
    void anAttributesNameHoldsSmallLettersAndDigits() {
        assertEquals(
                "recorded_by: An attribute's name may hold only small letters and digits. Rename it or put it in data.",
                Sent.faults(note().put("recorded_by", "x")));
    }

    @Test
    void whatOnlyTheLogMaySayIsTakenOff() {
        Event event =
                Sent.READER.read(note().put("sequence", 5).put("hash", "ab")).event();
        assertEquals(note().toString(), event.json());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "[1]|It is not a JSON object. Send one CloudEvents object for each event.",
                "\"text\"|It is not a JSON object. Send one CloudEvents object for each event.",
                "null|It is not a JSON object. Send one CloudEvents object for each event."
            })
    void whatIsNotAnObjectIsRefused(String text, String expected) {
        assertEquals(expected, Sent.said(Sent.READER.read(text)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "{", "{\"id\":1} {\"id\":2}", "{\"id\":\"1\",\"id\":\"2\"}", "{'id':'1'}", "{\"a\":NaN}"})
    void whatIsNotOneJsonTextIsRefused(String text) {
        EventReader.Reading reading = Sent.READER.read(text);
        assertFalse(reading.sound());
        assertEquals(List.of(""), reading.faults().stream().map(Fault::field).toList());
    }

    @Test
    void aSyntaxErrorIsNamedWithItsColumn() {
        String said = Sent.said(Sent.READER.read("{\"id\": }"));
        assertTrue(said.startsWith("It is not JSON at column 8: "), said);
        assertTrue(said.endsWith(" Send one CloudEvents object."), said);
    }

    @Test
    void halfACharacterIsRefused() {
        String expected = "It holds half of a character (a lone surrogate). Send whole characters.";
        assertEquals(expected, Sent.faults(Sent.json("noted", "{'text':'\\ud83d'}")));
        assertEquals(expected, Sent.faults(note().put("id", "\udc04")));
        assertEquals("", Sent.faults(Sent.json("noted", "{'text':'\\ud83d\\udc04'}")));
    }
}
