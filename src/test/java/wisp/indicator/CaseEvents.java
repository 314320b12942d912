package wisp.indicator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import wisp.event.Event;
import wisp.log.MemoryLog;
import wisp.log.StoredEvent;
import wisp.testing.Events;

/**
 * Reads a case's {@code events.csv}. The first line is {@code subject,time,type,data} or
 * {@code subject,time,recorded,type,data}; every other line is an event in order of arrival, and data is the rest of
 * it, a YAML flow without its braces. A time is local ({@code 2026-03-01 07:30}), a date alone, or an exact age of
 * the calf as first recorded ({@code +24h1s}). {@code retracted} and {@code amended} name the event that they mean by
 * its line ({@code line: 2}, the first event standing in line 1); {@code sent-again} offers that event to the log once
 * more.
 */
public final class CaseEvents {
    private static final Pattern AGE = Pattern.compile("(\\d+)(d|h|min|s)");

    private final Events events = Events.london();
    private final List<StoredEvent> byLine = new ArrayList<>();
    private final List<Event> offered = new ArrayList<>();
    private final Map<String, OffsetDateTime> born = new HashMap<>();

    private CaseEvents() {}

    /** The events as the log keeps them. */
    public static List<StoredEvent> read(Path csv) throws IOException {
        List<String> lines = Files.readAllLines(csv);
        boolean recorded = lines.get(0).equals("subject,time,recorded,type,data");
        if (!recorded && !lines.get(0).equals("subject,time,type,data")) {
            throw new IllegalArgumentException(csv + " begins with " + lines.get(0));
        }
        CaseEvents reader = new CaseEvents();
        for (String line : lines.subList(1, lines.size())) {
            List<String> cells = new ArrayList<>(List.of(line.split(",", recorded ? 5 : 4)));
            String when = recorded ? cells.remove(2) : "";
            reader.take(cells.get(0), cells.get(1), when, cells.get(2), cells.size() < 4 ? "" : cells.get(3));
        }
        return reader.kept();
    }

    private void take(String subject, String time, String recorded, String type, String data) {
        events.recordedAt(recorded.isEmpty() ? null : time(subject, recorded));
        String when = time(subject, time);
        Map<?, ?> fields = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString("{" + data + "}");
        if (fields.containsKey("zone")) {
            events.in(fields.get("zone").toString());
        }
        if (type.equals("sent-again")) {
            offered.add(line(fields).event());
            byLine.add(line(fields));
            return;
        }
        StoredEvent stored = switch (type) {
            case "retracted" -> events.retract(line(fields), when);
            case "amended" -> amended(subject, when, fields);
            default -> events.add(type, subject, when, data);
        };
        if (type.equals("birth")) {
            born.putIfAbsent(subject, stored.event().time());
        }
        byLine.add(stored);
        offered.add(stored.event());
    }

    private StoredEvent amended(String subject, String when, Map<?, ?> fields) {
        String newTime = time(subject, fields.get("time").toString());
        return events.amend(line(fields), when, newTime, fields.get("fields").toString());
    }

    private StoredEvent line(Map<?, ?> fields) {
        return byLine.get((Integer) fields.get("line") - 1);
    }

    private String time(String subject, String text) {
        if (!text.startsWith("+")) {
            return text;
        }
        Duration age = Duration.ZERO;
        Matcher parts = AGE.matcher(text);
        while (parts.find()) {
            long count = Long.parseLong(parts.group(1));
            age = age.plus(
                    switch (parts.group(2)) {
                        case "d" -> Duration.ofHours(24 * count);
                        case "h" -> Duration.ofHours(count);
                        case "min" -> Duration.ofMinutes(count);
                        default -> Duration.ofSeconds(count);
                    });
        }
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(born.get(subject).plus(age));
    }

    private List<StoredEvent> kept() {
        Instant later = Instant.parse("2050-01-01T00:00:00Z");
        try (MemoryLog log = new MemoryLog(Clock.fixed(later, ZoneOffset.UTC))) {
            log.append(offered, true);
            return log.read(0, Integer.MAX_VALUE);
        }
    }
}
