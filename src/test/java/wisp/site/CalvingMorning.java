package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/**
 * An invented dairy herd in England in the middle of calving, at 07:40 on 14 April 2026: something of every kind is
 * due.
 */
final class CalvingMorning {
    static final Instant NOW = Instant.parse("2026-04-14T06:40:00Z");

    private final List<String> lines = new ArrayList<>();

    private CalvingMorning() {}

    /** Serves it from an empty folder. */
    static RunningSite serve(Path folder) {
        RunningSite site = RunningSite.over(folder, Clock.fixed(NOW, ZoneOffset.UTC));
        assertEquals(
                201,
                site.post("/api/v1/events", "application/x-ndjson", new CalvingMorning().events())
                        .statusCode());
        return site;
    }

    private String events() {
        add(
                "farm-described",
                "farm",
                "2025-08-01T00:00:00+01:00",
                "{\"name\":\"Reedholm Farm (invented)\",\"zone\":\"Europe/London\",\"jurisdiction\":\"england\","
                        + "\"enterprise\":\"dairy\",\"seasons\":[{\"name\":\"2025-26\",\"from\":\"2025-08-01\","
                        + "\"to\":\"2026-08-01\"}]}");
        born("26-101", "2026-04-14T06:15:00+01:00", "female", "box 1", 41.0);
        born("26-102", "2026-04-14T02:05:00+01:00", "male", "box 2", 44.0);
        add("navel-treated", "26-102", "2026-04-14T02:20:00+01:00", "{\"product\":\"iodine\",\"method\":\"dip\"}");
        add("colostrum-fed", "26-102", "2026-04-14T02:50:00+01:00", "{\"volume_l\":2,\"method\":\"bottle\"}");
        born("26-100", "2026-04-13T04:30:00+01:00", "female", "box 2", 40.0);
        cared("26-100", "2026-04-13T04:50:00+01:00");
        born("26-099", "2026-04-12T05:00:00+01:00", "male", "straw yard", 43.0);
        cared("26-099", "2026-04-12T05:25:00+01:00");
        tagged("26-099", "2026-04-12T16:00:00+01:00", "UK 123456 100099", "left");
        born("26-096", "2026-04-07T05:00:00+01:00", "male", "straw yard", 43.0);
        cared("26-096", "2026-04-07T05:20:00+01:00");
        tagged("26-096", "2026-04-08T08:00:00+01:00", "UK 123456 500096", "left");
        tagged("26-096", "2026-04-08T08:01:00+01:00", "UK 123456 500096", "right");
        add("navel-checked", "26-096", "2026-04-09T08:00:00+01:00", "{\"finding\":\"normal\"}");
        born("26-092", "2026-04-05T05:00:00+01:00", "male", "straw yard", 43.0);
        cared("26-092", "2026-04-05T05:20:00+01:00");
        tagged("26-092", "2026-04-06T08:00:00+01:00", "UK 123456 100092", "left");
        tagged("26-092", "2026-04-06T08:01:00+01:00", "UK 123456 100092", "right");
        add("navel-checked", "26-092", "2026-04-07T08:00:00+01:00", "{\"finding\":\"normal\"}");
        add("navel-checked", "26-092", "2026-04-12T08:00:00+01:00", "{\"finding\":\"thickened\"}");
        born("26-081", "2026-03-22T05:00:00Z", "female", "calf house", 39.0);
        cared("26-081", "2026-03-22T05:20:00Z");
        tagged("26-081", "2026-03-23T08:00:00Z", "UK 123456 400081", "left");
        add("navel-checked", "26-081", "2026-03-24T08:00:00Z", "{\"finding\":\"normal\"}");
        add("navel-checked", "26-081", "2026-03-29T08:00:00+01:00", "{\"finding\":\"normal\"}");
        born("26-078", "2026-03-18T05:00:00Z", "female", "calf house", 39.0);
        cared("26-078", "2026-03-18T05:20:00Z");
        tagged("26-078", "2026-03-19T08:00:00Z", "UK 123456 100078", "left");
        tagged("26-078", "2026-03-19T08:01:00Z", "UK 123456 100078", "right");
        add("navel-checked", "26-078", "2026-03-20T08:00:00Z", "{\"finding\":\"normal\"}");
        add("navel-checked", "26-078", "2026-03-25T08:00:00Z", "{\"finding\":\"normal\"}");
        add("tissue-sampled", "26-078", "2026-03-19T08:01:00Z", "{\"tag_number\":\"S 78\"}");
        add("sample-sent", "26-078", "2026-03-20T08:01:00Z", "{\"laboratory\":\"the laboratory\"}");
        return String.join("\n", lines);
    }

    private void born(String calf, String time, String sex, String pen, double weight) {
        add(
                "birth",
                calf,
                time,
                "{\"alive\":true,\"sex\":\"" + sex + "\",\"pen\":\"" + pen + "\",\"weight_kg\":" + weight + "}");
    }

    private void cared(String calf, String time) {
        add("navel-treated", calf, time, "{\"product\":\"iodine\",\"method\":\"dip\"}");
        add("colostrum-fed", calf, time, "{\"volume_l\":4.5,\"method\":\"tube\"}");
        add(
                "blood-tested",
                calf,
                time.replaceFirst("-\\d\\dT", "-%02dT".formatted(day(time) + 1)),
                "{\"serum_brix_percent\":9}");
    }

    private static int day(String time) {
        return Integer.parseInt(time.substring(8, 10));
    }

    private void tagged(String calf, String time, String number, String ear) {
        String role = ear.equals("left") ? "primary" : "secondary";
        add(
                "tag-fitted",
                calf,
                time,
                "{\"number\":\"" + number + "\",\"ear\":\"" + ear + "\",\"role\":\"" + role + "\"}");
    }

    private void add(String type, String subject, String time, String data) {
        lines.add("{\"specversion\":\"1.0\",\"id\":\"m" + lines.size() + "\",\"source\":\"book\",\"type\":\"" + type
                + "\",\"subject\":\"" + subject + "\",\"time\":\"" + time + "\",\"data\":" + data + "}");
    }
}
