package wisp.site;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wisp.event.Died;
import wisp.event.FarmDescribed;
import wisp.history.LifeEvent;
import wisp.indicator.Conditions;
import wisp.indicator.EventFields;
import wisp.tag.TagNumber;

/** An event in the stock person's words. */
final class EventWords {
    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("cleanliness-scored", "cleanliness scored"),
            Map.entry("navel-treated", "navel treated"),
            Map.entry("navel-checked", "navel looked at"),
            Map.entry("colostrum-fed", "colostrum"),
            Map.entry("blood-tested", "blood tested"),
            Map.entry("tag-fitted", "tag fitted"),
            Map.entry("tissue-sampled", "tissue sample taken"),
            Map.entry("sample-sent", "sample sent"),
            Map.entry("sample-result", "sample result"),
            Map.entry("illness-found", "illness found"));

    /** Fields whose unit is better read behind the value. */
    private static final Map<String, String> UNITS = Map.of(
            "weight_kg", "kg",
            "volume_l", "l",
            "concentration_percent", "%",
            "brix_percent", "% Brix",
            "serum_brix_percent", "% serum Brix",
            "serum_protein_g_dl", "g/dl serum protein",
            "igg_g_l", "g/l IgG",
            "temperature_c", "°C");

    /** What is said where no is not the word. */
    private static final Map<String, String> NOT =
            Map.of("euthanised", "not euthanised", "keep_entire", "not to be kept entire", "both_in", "not both in");

    private EventWords() {}

    /** What happened, such as {@code navel treated}. */
    static String of(LifeEvent event) {
        String name = event.type().wireName();
        if (name.equals("birth")) {
            return Boolean.FALSE.equals(EventFields.of(event.data()).get("alive")) ? "born dead" : "born";
        }
        return NAMES.getOrDefault(name, name);
    }

    /** What happened where it decided a figure: of a death its recorded cause too. */
    static String deciding(LifeEvent event, Conditions conditions) {
        return event.data() instanceof Died died ? "died: " + cause(died, conditions) : of(event);
    }

    /** A death's recorded cause in words. */
    static String cause(Died died, Conditions conditions) {
        boolean none = died.cause() == null || died.cause().isBlank();
        return none ? "cause not recorded" : conditions.named(died.cause());
    }

    /** Its details, such as {@code iodine tincture, 10 %, dip}. */
    static String details(LifeEvent event) {
        Map<String, Object> fields = EventFields.of(event.data());
        Object unit = fields.remove("dose_unit");
        if (saysStrength(fields.get("product"), fields.get("concentration_percent"))) {
            fields.remove("concentration_percent");
        }
        return fields.entrySet().stream()
                .filter(field -> !field.getKey().equals("alive"))
                .map(field -> field(field.getKey(), field.getValue())
                        + (unit != null && field.getKey().equals("dose") ? " " + unit : ""))
                .collect(Collectors.joining(", "));
    }

    /** Whether a product's own name has its strength, as in {@code iodine tincture 10 %}. */
    private static boolean saysStrength(Object product, Object percent) {
        return product != null
                && percent instanceof Double strength
                && Pattern.compile("(?<![\\d.,])" + Pattern.quote(number(strength)) + "(\\.0+)?\\s*%")
                        .matcher(product.toString())
                        .find();
    }

    private static String number(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }

    /** The unit of a field, such as {@code kg}; empty where it has none. */
    static String unit(String name) {
        return UNITS.getOrDefault(name, name.endsWith("_days") ? "days" : name.endsWith("_cm") ? "cm" : "");
    }

    private static String field(String name, Object value) {
        if (name.equals("number") || name.equals("tag_number")) {
            return TagNumber.read(value.toString()).shown();
        }
        if (value instanceof List<?> seasons) {
            return name + " "
                    + seasons.stream()
                            .map(one -> one instanceof FarmDescribed.Season season
                                    ? season.name() + " from " + Shown.day(season.from()) + " to "
                                            + Shown.day(season.to().minusDays(1))
                                    : one.toString())
                            .collect(Collectors.joining("; "));
        }
        String text = value instanceof Double number ? number(number) : value.toString();
        if (UNITS.containsKey(name)) {
            return text + " " + UNITS.get(name);
        }
        String words = name.replace('_', ' ');
        if (value instanceof Boolean yes) {
            return yes ? words : NOT.getOrDefault(name, "no " + words);
        }
        if (name.equals("tag_lost")) {
            return text + " tag lost";
        }
        boolean bare = value instanceof String
                && !name.equals("dam")
                && !name.equals("sire")
                && !name.equals("batch")
                && !name.equals("given_by");
        return bare ? text : words + " " + text;
    }
}
