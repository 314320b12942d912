package wisp.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.event.Event;
import wisp.event.EventReader;
import wisp.log.MemoryLog;

class IcarTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private final MemoryLog log = new MemoryLog(Imports.CLOCK);

    private ExportReport export(Path file) {
        return Export.write(ExportFormat.ICAR, file, log, ExportListener.silent());
    }

    private static Event event(String id, String type, String data) {
        EventReader.Reading reading = Imports.READER.read("{\"specversion\":\"1.0\",\"id\":\"" + id
                + "\",\"source\":\"book\",\"type\":\"" + type + "\",\"subject\":\"c1\","
                + "\"time\":\"2026-03-01T08:00:00+01:00\",\"data\":" + data + "}");
        assertEquals(List.of(), reading.faults());
        return reading.event();
    }

    @Test
    void whatHasNoPlaceInTheStandardIsCountedAndListed() {
        log.append(EveryType.events(), true);
        ExportReport report = export(folder.resolve("all.json"));
        assertEquals(9, report.written());
        assertEquals(
                log.last(),
                report.written()
                        + report.notExported().values().stream()
                                .mapToLong(count -> count)
                                .sum());
        assertEquals(1, report.notExported().get("moved (retracted)"));
        assertEquals(1, report.notExported().get("navel-treated"));
        assertEquals(
                Map.of(
                        "birth breed", 1L,
                        "birth sire", 1L,
                        "birth keep_entire", 1L,
                        "illness-found temperature_c", 1L,
                        "treated condition", 1L,
                        "treated dose", 1L,
                        "treated dose_unit", 1L),
                report.fieldsLeftOut());
        assertTrue(
                report.sentence()
                        .startsWith("9 events written. Not written, as the format has no place for them: "
                                + "1 amended, 1 blood-tested, 1 castrated, "),
                report.sentence());
    }

    @Test
    void everyResourceWrittenIsValidByTheStandardsOwnSchemas() throws IOException {
        String schemas = System.getProperty("icar.schemas");
        assumeTrue(
                schemas != null,
                "The standard's schemas are not part of this project: give their folder as -Dicar.schemas=FOLDER.");
        log.append(EveryType.events(), true);
        Path file = folder.resolve("all.json");
        export(file);
        SchemaRegistry registry = SchemaRegistry.withDefaultDialect(
                SpecificationVersion.DRAFT_2020_12,
                builder -> builder.schemaLoader(loader -> loader.fetchRemoteResources())
                        .schemaRegistryConfig(SchemaRegistryConfig.builder()
                                .formatAssertionsEnabled(true)
                                .build()));
        int checked = 0;
        for (JsonNode resource : JSON.readTree(file.toFile())) {
            List<Error> errors = schema(
                            registry,
                            Path.of(schemas),
                            resource.get("resourceType").asText())
                    .validate(resource);
            assertEquals(List.of(), errors, resource.toString());
            checked++;
        }
        assertEquals(9, checked);
        JsonNode wrong = JSON.readTree("{\"resourceType\":\"WeightEvent\",\"eventDateTime\":\"yesterday\"}");
        assertFalse(schema(registry, Path.of(schemas), "WeightEvent")
                .validate(wrong)
                .isEmpty());
    }

    private static Schema schema(SchemaRegistry registry, Path schemas, String type) {
        Path file = schemas.resolve("resources").resolve("icar" + type + "Resource.json");
        return registry.getSchema(SchemaLocation.of(file.toUri().toString()));
    }

    @Test
    void whatTheStandardHoldsComesBackAsItWas() throws IOException {
        log.append(EveryType.events(), true);
        Path file = folder.resolve("all.json");
        export(file);
        try (MemoryLog back = new MemoryLog(Imports.CLOCK)) {
            ImportReport report = Imports.run(back, Imports.WHOLE, file);
            assertEquals(List.of(), Imports.sentences(report));
            List<String> told = back.read(0, 100).stream()
                    .map(s -> s.event().id() + " " + s.event().type().wireName() + " "
                            + s.event().subject() + " " + s.event().time().toInstant() + " "
                            + data(s.event()))
                    .toList();
            assertEquals(
                    List.of(
                            "e1 birth c1 2026-02-28T23:30:00Z {\"alive\":true,\"dam\":\"D, the \\\"old\\\" one\","
                                    + "\"dam_parity\":3,\"ease\":2,\"litter_size\":2,\"pen\":\"A\",\"sex\":\"female\","
                                    + "\"weight_kg\":41.25}",
                            "e2 birth c2 2026-03-01T00:30:00Z {\"alive\":false,\"breed\":\"AA\",\"pen\":\"A\","
                                    + "\"sex\":\"unknown\",\"sire\":\"S\"}",
                            "e15 illness-found c1 2026-03-01T03:30:00Z {\"condition\":\"pneumonia\",\"severity\":2,"
                                    + "\"signs\":\"coughs;\\nlies\"}",
                            "e17 treated c1 2026-03-01T05:30:00Z {\"batch\":\"B1\",\"dose\":5,\"dose_unit\":\"ml\","
                                    + "\"given_by\":\"Ann\",\"meat_withdrawal_days\":28,\"medicine\":\"M\","
                                    + "\"route\":\"under the skin\"}",
                            "e18 treated c1 2026-03-01T06:30:00Z {\"medicine\":\"M\"}",
                            "e19 vaccinated c1 2026-03-01T07:30:00Z {\"batch\":\"B2\",\"vaccine\":\"V\"}",
                            "e21 weighed c1 2026-03-02T09:00:00Z {\"weight_kg\":61}",
                            "e23 left c1 2026-03-01T01:30:00Z {\"reason\":\"sold\"}",
                            "e24 died c2 2026-03-01T02:30:00Z {\"cause\":\"bloat\",\"euthanised\":true}"),
                    told.stream().filter(line -> !line.startsWith("e20")).toList());
        }
    }

    private static String data(Event event) {
        try {
            return JSON.readTree(event.json()).get("data").toString();
        } catch (IOException notJson) {
            throw new AssertionError(notJson);
        }
    }

    @Test
    void aRetractedCorrectionNoLongerCounts() throws IOException {
        log.append(
                List.of(
                        event("w", "weighed", "{\"weight_kg\":60}"),
                        event("a1", "amended", amend(61)),
                        event("a2", "amended", amend(62)),
                        event("r", "retracted", "{\"event_source\":\"book\",\"event_id\":\"a2\"}"),
                        event("d", "moved", "{\"pen\":\"B\"}"),
                        event("r1", "retracted", "{\"event_source\":\"book\",\"event_id\":\"d\"}"),
                        event("r2", "retracted", "{\"event_source\":\"book\",\"event_id\":\"r1\"}")),
                true);
        Path file = folder.resolve("some.json");
        ExportReport report = export(file);
        assertEquals(2, report.written());
        JsonNode written = JSON.readTree(file.toFile());
        assertEquals(61, written.get(0).path("weight").path("measurement").intValue());
        assertEquals("B", written.get(1).path("animalSetId").textValue());
    }

    private static String amend(int weight) {
        return "{\"event_source\":\"book\",\"event_id\":\"w\",\"time\":\"2026-03-01T09:00:00Z\","
                + "\"data\":{\"weight_kg\":"
                + weight + "}}";
    }

    @Test
    void theDateMarkOfAnEventWithoutAnHourIsSaidToBeLeftOut() {
        log.append(List.of(event("x", "weighed", "{\"weight_kg\":60,\"time_known\":false}")), true);
        assertEquals(
                Map.of("weighed time_known", 1L),
                export(folder.resolve("one.json")).fieldsLeftOut());
    }
}
