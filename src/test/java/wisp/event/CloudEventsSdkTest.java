package wisp.event;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.cloudevents.CloudEvent;
import io.cloudevents.SpecVersion;
import io.cloudevents.core.builder.CloudEventBuilder;
import io.cloudevents.jackson.JsonFormat;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the CloudEvents project's own library writes, Wisp reads, and the other way round. */
class CloudEventsSdkTest {
    private static final JsonFormat SDK = new JsonFormat();

    @Test
    void anEventThatTheSdkWritesIsRead() {
        CloudEvent sent = CloudEventBuilder.v1()
                .withId("A234-1234-1234")
                .withSource(URI.create("https://parlour.example/gate"))
                .withType("weighed")
                .withSubject("calf-1")
                .withTime(OffsetDateTime.parse("2026-03-01T07:30:00+01:00"))
                .withData("application/json", "{\"weight_kg\":44.5}".getBytes(StandardCharsets.UTF_8))
                .withExtension("recordedby", "Scales")
                .withExtension("partition", 3)
                .withExtension("sampled", true)
                .build();
        EventReader.Reading reading = Sent.READER.read(new String(SDK.serialize(sent), StandardCharsets.UTF_8));
        assertEquals(List.of(), reading.faults());
        Event event = reading.event();
        assertEquals("A234-1234-1234", event.id());
        assertEquals("https://parlour.example/gate", event.source());
        assertEquals("calf-1", event.subject());
        assertEquals(sent.getTime(), event.time());
        assertEquals("Scales", event.recordedBy());
        assertEquals(new Weighed(44.5), event.data());
    }

    @Test
    void anEventThatWispKeepsIsReadByTheSdk() {
        ObjectNode json = Sent.json("illness-found", "{'condition':'diarrhoea','temperature_c':39.8}")
                .put("recordedtime", "2026-03-01T08:00:00.000Z")
                .put("recordedby", "Stock person")
                .put("partition", 3);
        Event event = Sent.READER.read(json).event();
        CloudEvent read = SDK.deserialize(CanonicalJson.of(event.json()).getBytes(StandardCharsets.UTF_8));
        assertEquals(SpecVersion.V1, read.getSpecVersion());
        assertEquals(event.id(), read.getId());
        assertEquals(URI.create(event.source()), read.getSource());
        assertEquals("illness-found", read.getType());
        assertEquals(event.subject(), read.getSubject());
        assertEquals(event.time(), read.getTime());
        assertEquals(Set.of("recordedtime", "recordedby", "partition"), read.getExtensionNames());
        assertEquals("2026-03-01T08:00:00.000Z", read.getExtension("recordedtime"));
        assertEquals(
                "{\"condition\":\"diarrhoea\",\"temperature_c\":39.8}",
                new String(read.getData().toBytes(), StandardCharsets.UTF_8));
    }

    static java.util.stream.Stream<Arguments> good() {
        return EventDataTest.good();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("good")
    void everyTypeGoesThroughTheSdkAndBackUnchanged(String type, String data) {
        ObjectNode json = Sent.json(type, data).put("traceparent", "00-1-2-03");
        Event first = Sent.READER.read(json).event();
        CloudEvent through = SDK.deserialize(first.json().getBytes(StandardCharsets.UTF_8));
        Event again = Sent.READER
                .read(new String(SDK.serialize(through), StandardCharsets.UTF_8))
                .event();
        assertEquals(first.data(), again.data());
        assertEquals(first.time(), again.time());
        assertEquals(
                List.of(first.source(), first.id(), first.subject()),
                List.of(again.source(), again.id(), again.subject()));
    }
}
