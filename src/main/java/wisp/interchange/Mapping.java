package wisp.interchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How the columns of somebody's own spreadsheet become events, as a mapping file says it. Every column of the
 * spreadsheet is either used or named under {@code ignore}.
 */
public final class Mapping {
    private final CsvFormat format;
    private final String source;
    private final ZoneId zone;
    private final Boolean decimalComma;
    private final List<String> dates;
    private final Times.AmbiguousHour ambiguousHour;
    private final Set<String> ignored;
    private final Repeat repeat;
    private final List<EventTemplate> events;

    Mapping(
            CsvFormat format,
            String source,
            ZoneId zone,
            Boolean decimalComma,
            List<String> dates,
            Times.AmbiguousHour ambiguousHour,
            Set<String> ignored,
            Repeat repeat,
            List<EventTemplate> events) {
        this.format = format;
        this.source = source;
        this.zone = zone;
        this.decimalComma = decimalComma;
        this.dates = dates;
        this.ambiguousHour = ambiguousHour;
        this.ignored = ignored;
        this.repeat = repeat;
        this.events = events;
    }

    /**
     * Reads a mapping file.
     *
     * @throws MappingRefused where it is wrong, with every fault in it
     */
    public static Mapping read(Path file) {
        String name = String.valueOf(file.getFileName());
        try {
            return read(name, Files.readString(file));
        } catch (IOException unreadable) {
            throw new MappingRefused(List.of(name + ": It cannot be read as text in UTF-8. Check the file's name and"
                    + " that you may read it, and save it in UTF-8."));
        }
    }

    static Mapping read(String name, String text) {
        List<Yaml.Flaw> faults = new ArrayList<>();
        Yaml top = Yaml.read(name, text, faults);
        Mapping mapping = top == null ? null : MappingReader.read(top);
        if (!faults.isEmpty()) {
            throw new MappingRefused(faults.stream()
                    .sorted(Comparator.comparingInt(Yaml.Flaw::line))
                    .map(Yaml.Flaw::sentence)
                    .distinct()
                    .toList());
        }
        return mapping;
    }

    CsvFormat format() {
        return format;
    }

    Set<String> ignored() {
        return ignored;
    }

    Optional<Repeat> repeat() {
        return Optional.ofNullable(repeat);
    }

    List<EventTemplate> events() {
        return events;
    }

    /** The columns that the mapping needs; {@code header} are those there are. */
    Set<String> columns(Set<String> header) {
        Set<String> columns = new LinkedHashSet<>();
        events.forEach(event -> columns.addAll(event.columns(header)));
        if (repeat != null) {
            columns.remove(repeat.as());
            if (!repeat.count().matches("\\d+")) {
                columns.add(repeat.count());
            }
        }
        return columns;
    }

    /** What a fault in an event's field is called: with the columns that fill it. */
    String naming(String field) {
        return events.stream()
                .map(event -> event.naming(field))
                .filter(name -> name.contains(" (column "))
                .findFirst()
                .orElse(Column.ofField(field));
    }

    /** Who the mapping says has written the files; null where it says nothing. */
    String source() {
        return source;
    }

    /** Whether any event's animal is found by its tag number. */
    public boolean byTag() {
        return events.stream().anyMatch(EventTemplate::byTag);
    }

    CsvReading reading(Path file, CsvFile csv, ImportOptions options, TagMatching matching) {
        return new MappedReading(
                this,
                matching,
                source == null ? "csv:" + file.getFileName() : source,
                new Times(zone == null ? options.zone() : zone, dates, ambiguousHour),
                decimalComma == null ? csv.delimiter() == ';' : decimalComma);
    }
}
