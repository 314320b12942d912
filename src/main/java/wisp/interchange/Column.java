package wisp.interchange;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A column of Wisp's own CSV: one for each attribute of the envelope and one for each field that any event's data has.
 *
 * @param name as it stands in the header
 * @param kind what its cells hold
 * @param data true for a field of the data, false for an attribute
 */
record Column(String name, Kind kind, boolean data) {

    /** What a cell holds. */
    enum Kind {
        TEXT,
        NUMBER,
        FLAG,
        /** True, false, or a product's name. */
        RELIEF,
        TIME,
        JSON
    }

    /** The whole event as JSON, written only where the other columns cannot hold all of it. */
    static final String JSON = "json";

    /** In CSV the columns of an amendment's own time and data, as {@code time} is the envelope's. */
    static final Map<String, String> AMENDED = Map.of("amended_time", "time", "amended_data", "data");

    static final List<Column> ATTRIBUTES =
            attributes("time", "type", "subject", "id", "source", "recordedtime", "recordedby");

    static final List<Column> DATA = Stream.of(
                    data(Kind.FLAG, "time_known alive"),
                    data(Kind.TEXT, "sex dam sire breed pen"),
                    data(Kind.NUMBER, "ease litter_size dam_parity weight_kg"),
                    data(Kind.FLAG, "keep_entire"),
                    data(Kind.NUMBER, "score"),
                    data(Kind.TEXT, "product"),
                    data(Kind.NUMBER, "concentration_percent"),
                    data(Kind.TEXT, "method finding"),
                    data(Kind.NUMBER, "volume_l brix_percent serum_protein_g_dl serum_brix_percent igg_g_l"),
                    data(Kind.TEXT, "number ear role tag_number laboratory result test document"),
                    data(Kind.FLAG, "both_in"),
                    data(Kind.RELIEF, "anaesthetic pain_relief"),
                    data(Kind.TEXT, "condition"),
                    data(Kind.NUMBER, "severity temperature_c"),
                    data(Kind.TEXT, "signs medicine"),
                    data(Kind.NUMBER, "dose"),
                    data(Kind.TEXT, "dose_unit route batch"),
                    data(Kind.NUMBER, "meat_withdrawal_days"),
                    data(Kind.TEXT, "given_by vaccine reason cause"),
                    data(Kind.FLAG, "euthanised"),
                    data(Kind.TEXT, "material"),
                    data(Kind.NUMBER, "depth_cm"),
                    data(Kind.TEXT, "text tag_lost name zone jurisdiction enterprise"),
                    data(Kind.JSON, "seasons"),
                    data(Kind.TEXT, "event_source event_id"),
                    data(Kind.TIME, "amended_time"),
                    data(Kind.JSON, "amended_data"))
            .flatMap(List::stream)
            .toList();

    /** Every column in the order of the header. */
    static final List<Column> ALL = Stream.of(ATTRIBUTES, DATA, List.of(new Column(JSON, Kind.JSON, false)))
            .flatMap(List::stream)
            .toList();

    static final Map<String, Column> BY_NAME =
            ALL.stream().collect(Collectors.toUnmodifiableMap(Column::name, Function.identity()));

    /** The field of the event's data, or the attribute, that the column holds. */
    String field() {
        return AMENDED.getOrDefault(name, name);
    }

    /** The column of an event's field as a fault names it, {@code data.score} being {@code score}. */
    static String ofField(String field) {
        if (!field.startsWith("data.")) {
            return field;
        }
        String own = field.substring("data.".length());
        return AMENDED.entrySet().stream()
                .filter(entry -> own.equals(entry.getValue()) || own.startsWith(entry.getValue() + "."))
                .findFirst()
                .map(entry -> entry.getKey() + own.substring(entry.getValue().length()))
                .orElse(own);
    }

    private static List<Column> attributes(String... names) {
        return Arrays.stream(names)
                .map(name -> new Column(name, name.endsWith("time") ? Kind.TIME : Kind.TEXT, false))
                .toList();
    }

    private static List<Column> data(Kind kind, String names) {
        return Arrays.stream(names.split(" "))
                .map(name -> new Column(name, kind, true))
                .toList();
    }
}
